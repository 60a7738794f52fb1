namespace FeltNest.Layout.Rows.Mixed;

/// <summary>Chooses the kind of every row, from the lower edge up, so that a given count of panels in a repeat needs the least
/// width.</summary>
/// <remarks>A layered network, one layer a count of panels and one node a kind (or a pair of kinds), an arc the step between two kinds,
/// over as many layers as the upper kind has panels in its row; a way from the lower to the upper edge is a row sequence. Layer by layer,
/// the shortest way is found exactly (R. Bellman, <i>Dynamic Programming</i>, 1957, from memory), so the answer is the optimum for the
/// kinds and the repeat given. Rows next but one can meet too: nodes are then pairs of neighbouring kinds, and triples that meet are left
/// out.</remarks>
internal sealed class RowSequenceModel
{
    private readonly int[] copies;
    private readonly double[] bottoms;
    private readonly double[] tops;
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

    /// <summary>The sequence of kinds with <paramref name="panels"/> panels that needs the least width, and that width; null when none
    /// exists.</summary>
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

        return clear ? first : Narrower(Solve(panels, pairs: true), Alone(panels));
    }

    // A row that holds all panels by itself is no pair.
    private (int[] Kinds, double Width)? Alone(int panels)
    {
        int kind = Enumerable.Range(0, copies.Length)
            .Where(k => copies[k] == panels)
            .DefaultIfEmpty(-1)
            .MinBy(k => k < 0 ? double.PositiveInfinity : bottoms[k] + tops[k]);
        return kind < 0 ? null : ([kind], bottoms[kind] + tops[kind]);
    }

    private static (int[] Kinds, double Width)? Narrower((int[] Kinds, double Width)? a, (int[] Kinds, double Width)? b) =>
        b is null || a?.Width <= b.Value.Width ? a : b;

    private (int[] Kinds, double Width)? Solve(int panels, bool pairs) => new Network(this, panels, pairs).Solve();

    // States are kinds, or pairs of a kind and the one above it; a state's layer is the count of panels up to and with its upper row.
    // Layers are settled in turn, so every least width is final when it is used.
    private sealed class Network
    {
        private readonly RowSequenceModel of;
        private readonly int panels;
        private readonly bool pairs;
        private readonly int kinds;
        private readonly int states;
        private readonly double[] least;
        private readonly int[] from;

        public Network(RowSequenceModel of, int panels, bool pairs)
        {
            (this.of, this.panels, this.pairs) = (of, panels, pairs);
            kinds = of.bottoms.Length;
            states = pairs ? kinds * kinds : kinds;
            least = new double[(panels + 1) * states];
            from = new int[least.Length];
            Array.Fill(least, double.PositiveInfinity);
            Array.Fill(from, -1);
        }

        public (int[] Kinds, double Width)? Solve()
        {
            Begin();
            (int State, int Next, double Step)[] moves =
            [
                ..
                from s in Enumerable.Range(0, states)
                from next in Enumerable.Range(0, states) select (s, next, Between(s, next)) into move
                where !double.IsInfinity(move.Item3) select move,
            ];
            for (int layer = 1; layer < panels; layer++)
            {
                foreach ((int state, int next, double step) in moves)
                {
                    int at = (layer * states) + state;
                    int onto = ((layer + of.copies[Upper(next)]) * states) + next;
                    if (onto < least.Length && least[at] + step < least[onto])
                    {
                        (least[onto], from[onto]) = (least[at] + step, at);
                    }
                }
            }

            int last = Enumerable.Range(panels * states, states).MinBy(node => least[node] + of.tops[Upper(node % states)]);
            return double.IsInfinity(least[last]) ? null : Walked(last);
        }

        private void Begin()
        {
            for (int s = 0; s < states; s++)
            {
                // A row that does not fit is no upper row of a pair, whatever step it would have.
                int first = pairs ? of.copies[s / kinds] + of.copies[Upper(s)] : of.copies[s];
                if (first <= panels && of.copies[Upper(s)] > 0 && !double.IsInfinity(Enter(s)))
                {
                    least[(first * states) + s] = Math.Min(least[(first * states) + s], Enter(s));
                }
            }
        }

        private (int[] Kinds, double Width) Walked(int node)
        {
            double width = least[node] + of.tops[Upper(node % states)];
            List<int> sequence = [];
            for (int at = node; at >= 0; at = from[at])
            {
                sequence.Add(Upper(at % states));
                if (pairs && from[at] < 0)
                {
                    sequence.Add(at % states / kinds);
                }
            }

            sequence.Reverse();
            return ([.. sequence], width);
        }

        private int Upper(int state) => pairs ? state % kinds : state;

        private double Enter(int s) => pairs ? of.bottoms[s / kinds] + of.steps[s / kinds, s % kinds] : of.bottoms[s];

        private double Between(int s, int next)
        {
            if (of.copies[Upper(s)] == 0 || of.copies[Upper(next)] == 0)
            {
                return double.PositiveInfinity;
            }

            if (!pairs)
            {
                return of.steps[s, next];
            }

            if (s % kinds != next / kinds || of.meets(s / kinds, s % kinds, next % kinds))
            {
                return double.PositiveInfinity;
            }

            return of.steps[s % kinds, next % kinds];
        }
    }
}
