using Google.OrTools.Graph;

namespace FeltNest.Layout.Rows.Mixed;

/// <summary>Chooses the kind of every row, from the lower edge up, so that a given count of rows needs the least width.</summary>
/// <remarks>A layered network, one layer a row and one node a kind (or a pair of kinds), an arc the step between two kinds; one unit of flow from the lower to the upper edge is
/// a row sequence. Least-cost flow with whole capacities has whole optima (L. R. Ford and D. R. Fulkerson, <i>Flows in Networks</i>, 1962), so the answer is
/// the optimum for the kinds and the pitch given. Rows next but one can meet too: nodes are then pairs of neighbouring kinds, and triples that meet are left out.</remarks>
internal sealed class RowSequenceModel
{
    // Widths become whole numbers of this many mm for the flow solver.
    private const double Unit = 1e-4;

    private readonly double[] bottoms, tops;
    private readonly double[,] steps;
    private readonly Func<int, int, int, bool> meets;

    /// <summary>A model for one pitch.</summary>
    /// <param name="bottoms">How far each kind reaches below its row line, mm.</param>
    /// <param name="tops">How far above.</param>
    /// <param name="steps">Least step from a row of one kind to the next row of another; infinite where not allowed.</param>
    /// <param name="meets">True where the first and third of three kinds in sequence would overlap.</param>
    internal RowSequenceModel(double[] bottoms, double[] tops, double[,] steps, Func<int, int, int, bool> meets)
    {
        this.bottoms = bottoms;
        this.tops = tops;
        this.steps = steps;
        this.meets = meets;
    }

    /// <summary>The sequence of <paramref name="rows"/> kinds that needs the least width, and that width; null when none exists.</summary>
    internal (int[] Kinds, double Width)? Least(int rows)
    {
        if (Solve(rows, pairs: false) is not { } first)
        {
            return null;
        }

        bool clear = true;
        for (int i = 0; i + 2 < rows; i++)
        {
            clear &= !meets(first.Kinds[i], first.Kinds[i + 1], first.Kinds[i + 2]);
        }

        return clear ? first : Solve(rows, pairs: true);
    }

    private (int[] Kinds, double Width)? Solve(int rows, bool pairs)
    {
        int kinds = bottoms.Length, states = pairs && rows > 1 ? kinds * kinds : kinds, layers = pairs && rows > 1 ? rows - 1 : rows;
        int source = layers * states, sink = source + 1;
        using MinCostFlow flow = new();
        List<(int Layer, int State)> arcs = [];
        for (int s = 0; s < states; s++)
        {
            if (double.IsInfinity(Enter(s)))
            {
                continue;
            }

            Add(source, s, Enter(s), 0, s);
            Add(((layers - 1) * states) + s, sink, tops[pairs && rows > 1 ? s % kinds : s], -1, s);
            for (int next = 0; next < states; next++)
            {
                double step = Between(s, next);
                for (int layer = 0; layer + 1 < layers && !double.IsInfinity(step); layer++)
                {
                    Add((layer * states) + s, ((layer + 1) * states) + next, step, layer + 1, next);
                }
            }
        }

        flow.SetNodeSupply(source, 1);
        flow.SetNodeSupply(sink, -1);
        if (arcs.Count == 0 || flow.Solve() != MinCostFlowBase.Status.OPTIMAL)
        {
            return null;
        }

        int[] chosen = new int[layers];
        for (int arc = 0; arc < arcs.Count; arc++)
        {
            if (arcs[arc].Layer >= 0 && flow.Flow(arc) > 0)
            {
                chosen[arcs[arc].Layer] = arcs[arc].State;
            }
        }

        int[] sequence = pairs && rows > 1 ? [chosen[0] / kinds, .. chosen.Select(c => c % kinds)] : chosen;
        double width = bottoms[sequence[0]] + tops[sequence[^1]];
        for (int i = 0; i + 1 < rows; i++)
        {
            width += steps[sequence[i], sequence[i + 1]];
        }

        return (sequence, width);

        void Add(int from, int to, double cost, int layer, int state)
        {
            flow.AddArcWithCapacityAndUnitCost(from, to, 1, (long)Math.Round(cost / Unit));
            arcs.Add((layer, state));
        }

        double Enter(int s) => pairs && rows > 1 ? bottoms[s / kinds] + steps[s / kinds, s % kinds] : bottoms[s];

        double Between(int s, int next) => !pairs || rows == 1 ? steps[s, next]
            : s % kinds != next / kinds || meets(s / kinds, s % kinds, next % kinds) ? double.PositiveInfinity : steps[s % kinds, next % kinds];
    }
}
