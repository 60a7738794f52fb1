using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>Rolls that are alike and take few strikes, in the model: how many of them are cut by each pattern.</summary>
/// <remarks>Patterns as variables after P. Gilmore and R. Gomory, Operations Research 9 (1961) 849-859: no roll of such a kind is told from
/// another, and the bound is far sharper. All patterns are listed, none is generated.</remarks>
internal sealed class LikeRolls : RollUnit
{
    // Most patterns of one kind of roll: above it the rolls stand in the model one by one.
    private const int MostPatterns = 3000;

    private readonly Unknown[] counts;
    private readonly IReadOnlyList<int[]> patterns;
    private readonly LinearSum[] strikes;
    private readonly LinearSum[] pieces;

    private LikeRolls(Unknown[] counts, IReadOnlyList<int[]> patterns, int choices)
    {
        (this.counts, this.patterns) = (counts, patterns);
        strikes = [.. Enumerable.Range(0, choices).Select(i => Sum(pattern => pattern[i]))];
        pieces = [.. Enumerable.Range(0, choices).Select(i => Sum(pattern => pattern[i] > 0 ? 1 : 0))];
    }

    /// <inheritdoc/>
    public override IReadOnlyList<LinearSum> Strikes => strikes;

    /// <inheritdoc/>
    public override IReadOnlyList<LinearSum> Pieces => pieces;

    /// <summary>Adds rolls that are alike to a model; null where they have too many patterns.</summary>
    public static LikeRolls? In(MixedModel model, IReadOnlyList<StockRoll> rolls, CutChoice[] choices, OrderRequest question)
    {
        OrderRules rules = question.Rules;
        StockRoll roll = rolls[0];
        if (Patterns(choices, question.ClearM(roll)) is not { } patterns)
        {
            return null;
        }

        Unknown[] counts = [.. patterns.Select(_ => model.Whole(0, rolls.Count))];
        LikeRolls unit = new(counts, patterns, choices.Length) { Rolls = rolls, Choices = choices };
        double price = (double)roll.PricePerMetre;
        for (int p = 0; p < counts.Length; p++)
        {
            double left = roll.LengthM - (rules.EndLossMm / 1000) - MetresOf(patterns[p], choices);
            double kept = left >= rules.LeastRemnantM ? left : 0;
            unit.Begun.Add(counts[p]);
            unit.Kept.Add(counts[p], kept);
            unit.Cost.Add(counts[p], price * (roll.LengthM - (kept * rules.RemnantValuePercent / 100)));
        }

        model.AtMost(unit.Begun, rolls.Count);
        return unit;
    }

    /// <summary>Rolls in stock that are alike stand together, in the order of the first of each.</summary>
    public static List<List<StockRoll>> Sorted(OrderRequest question)
    {
        List<List<StockRoll>> all = [];
        foreach (StockRoll roll in question.Rolls)
        {
            if (all.Find(one => question.AreAlike(one[0], roll)) is { } group)
            {
                group.Add(roll);
            }
            else
            {
                all.Add([roll]);
            }
        }

        return all;
    }

    /// <summary>Patterns of one kind of roll; null where there are too many to list.</summary>
    public static int? CountOf(CutChoice[] choices, double clear) => Patterns(choices, clear)?.Count;

    /// <inheritdoc/>
    public override IEnumerable<(Unknown Variable, double Value)> At(IReadOnlyList<int[]> cuts) =>
        counts.Select((count, p) => (count, (double)cuts.Count(cut => cut.SequenceEqual(patterns[p]))));

    /// <inheritdoc/>
    public override IEnumerable<int[]> Cuts(MixedModel model) =>
        patterns.SelectMany((pattern, p) => Enumerable.Repeat(pattern, model.WholeOf(counts[p])));

    private static double MetresOf(int[] pattern, CutChoice[] choices) =>
        pattern.Zip(choices, (strikes, choice) => choice.Die.Shape.MetresOf(strikes)).Sum();

    // Every way to cut a roll, or null where there are too many.
    private static List<int[]>? Patterns(CutChoice[] choices, double clear)
    {
        List<int[]> found = [];
        int[] pattern = new int[choices.Length];
        return Fill(0, clear) ? found : null;

        bool Fill(int at, double left)
        {
            if (at == choices.Length)
            {
                if (pattern.Any(n => n > 0))
                {
                    found.Add([.. pattern]);
                }

                return found.Count <= MostPatterns;
            }

            CutChoice choice = choices[at];
            int most = Math.Min(choice.Most, choice.Die.Shape.StrikesIn(left));
            bool few = true;
            for (int n = 0; few && n <= most; n = n == 0 ? choice.Least : n + 1)
            {
                pattern[at] = n;
                few = Fill(at + 1, left - choice.Die.Shape.MetresOf(n));
            }

            pattern[at] = 0;
            return few;
        }
    }

    private LinearSum Sum(Func<int[], int> of)
    {
        LinearSum sum = new();
        for (int p = 0; p < patterns.Count; p++)
        {
            if (of(patterns[p]) is > 0 and int factor)
            {
                sum.Add(counts[p], factor);
            }
        }

        return sum;
    }
}
