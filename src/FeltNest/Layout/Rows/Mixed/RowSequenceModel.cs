using Google.OrTools.Graph;

namespace FeltNest.Layout.Rows.Mixed;

/// <summary>Chooses the kind of every row, from the lower edge up, so that a given count of panels in a repeat needs the least width.</summary>
/// <remarks>A layered network, one layer a count of panels and one node a kind (or a pair of kinds), an arc the step between two kinds, over as many layers as the upper kind has
/// panels in its row; one unit of flow from the lower to the upper edge is a row sequence. Least-cost flow with whole capacities has whole optima (L. R. Ford and D. R. Fulkerson,
/// <i>Flows in Networks</i>, 1962), so the answer is the optimum for the kinds and the repeat given. Rows next but one can meet too: nodes are then pairs of neighbouring
/// kinds, and triples that meet are left out.</remarks>
internal sealed class RowSequenceModel
{
    // Widths become whole numbers of this many mm for the flow solver.
    private const double Unit = 1e-4;

    private readonly int[] copies;
    private readonly double[] bottoms, tops;
    private readonly double[,] steps;
    private readonly Func<int, int, int, bool> meets;

    /// <summary>A model for one repeat.</summary>
    /// <param name="copies">How often each kind stands in a repeat; 0 where it does not fit.</param>
    /// <param name="bottoms">How far each kind reaches below its row line, mm.</param>
    /// <param name="tops">How far above.</param>
    /// <param name="steps">Least step from a row of one kind to the next row of another; infinite where not allowed.</param>
    /// <param name="meets">True where the first and third of three kinds in sequence would overlap.</param>
    internal RowSequenceModel(int[] copies, double[] bottoms, double[] tops, double[,] steps, Func<int, int, int, bool> meets)
    {
        this.copies = copies;
        this.bottoms = bottoms;
        this.tops = tops;
        this.steps = steps;
        this.meets = meets;
    }

    /// <summary>The sequence of kinds with <paramref name="panels"/> panels that needs the least width, and that width; null when none exists.</summary>
    internal (int[] Kinds, double Width)? Least(int panels)
    {
        if (Solve(panels, pairs: false) is not { } first)
        {
            return null;
        }

        bool clear = true;
        for (int i = 0; i + 2 < first.Kinds.Length; i++)
        {
            clear &= !meets(first.Kinds[i], first.Kinds[i + 1], first.Kinds[i + 2]);
        }

        return clear ? first : Solve(panels, pairs: true);
    }

    // States are kinds, or pairs of a kind and the one above it; a state's place is the count of panels up to and with its upper row.
    private (int[] Kinds, double Width)? Solve(int panels, bool pairs)
    {
        int kinds = bottoms.Length, states = pairs ? kinds * kinds : kinds;
        int source = (panels + 1) * states, sink = source + 1;
        using MinCostFlow flow = new();
        List<(int From, int To)> arcs = [];
        for (int s = 0; s < states; s++)
        {
            int first = pairs ? copies[s / kinds] + copies[Upper(s)] : copies[s];
            if (double.IsInfinity(Enter(s)) || first > panels)
            {
                continue;
            }

            Add(source, Node(first, s), Enter(s));
            Add(Node(panels, s), sink, tops[Upper(s)]);
            for (int next = 0; next < states; next++)
            {
                double step = Between(s, next);
                for (int at = first; at + copies[Upper(next)] <= panels && !double.IsInfinity(step); at++)
                {
                    Add(Node(at, s), Node(at + copies[Upper(next)], next), step);
                }
            }
        }

        flow.SetNodeSupply(source, 1);
        flow.SetNodeSupply(sink, -1);
        return arcs.Count == 0 || flow.Solve() != MinCostFlowBase.Status.OPTIMAL ? null : Walked();

        (int[] Kinds, double Width) Walked()
        {
            Dictionary<int, int> onward = [];
            for (int arc = 0; arc < arcs.Count; arc++)
            {
                if (flow.Flow(arc) > 0)
                {
                    onward[arcs[arc].From] = arcs[arc].To;
                }
            }

            List<int> sequence = [];
            for (int node = onward[source]; node != sink; node = onward[node])
            {
                int state = node % states;
                if (pairs && sequence.Count == 0)
                {
                    sequence.Add(state / kinds);
                }

                sequence.Add(Upper(state));
            }

            double width = bottoms[sequence[0]] + tops[sequence[^1]];
            for (int i = 0; i + 1 < sequence.Count; i++)
            {
                width += steps[sequence[i], sequence[i + 1]];
            }

            return ([.. sequence], width);
        }

        int Node(int count, int state) => (count * states) + state;

        int Upper(int state) => pairs ? state % kinds : state;

        void Add(int from, int to, double cost)
        {
            flow.AddArcWithCapacityAndUnitCost(from, to, 1, (long)Math.Round(cost / Unit));
            arcs.Add((from, to));
        }

        double Enter(int s) => pairs ? bottoms[s / kinds] + steps[s / kinds, s % kinds] : bottoms[s];

        double Between(int s, int next) => copies[Upper(next)] == 0 ? double.PositiveInfinity : !pairs ? steps[s, next]
            : s % kinds != next / kinds || meets(s / kinds, s % kinds, next % kinds) ? double.PositiveInfinity : steps[s % kinds, next % kinds];
    }
}
