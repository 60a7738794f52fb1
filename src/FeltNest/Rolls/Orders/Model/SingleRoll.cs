using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>One roll in the model: strikes of every choice, whether it is begun, and what remains.</summary>
internal sealed class SingleRoll : RollUnit
{
    private readonly Unknown[] strikes;
    private readonly LinearSum[] counted;
    private readonly LinearSum[] pieces;
    private readonly Unknown begins;

    private SingleRoll(Unknown[] strikes, LinearSum[] counted, LinearSum[] pieces, Unknown begins) =>
        (this.strikes, this.counted, this.pieces, this.begins) = (strikes, counted, pieces, begins);

    /// <inheritdoc/>
    public override IReadOnlyList<LinearSum> Strikes => counted;

    /// <inheritdoc/>
    public override IReadOnlyList<LinearSum> Pieces => pieces;

    /// <summary>Adds a roll to a model.</summary>
    public static SingleRoll In(MixedModel model, StockRoll roll, CutChoice[] choices, OrderRequest question)
    {
        OrderRules rules = question.Rules;
        double clear = question.ClearM(roll);
        double price = (double)roll.PricePerMetre;
        Unknown begun = model.Choice();
        Unknown[] strikes = [.. choices.Select(c => model.Whole(0, c.Most))];
        LinearSum[] pieces = new LinearSum[choices.Length];
        LinearSum cut = new();
        for (int i = 0; i < choices.Length; i++)
        {
            (CutChoice choice, Unknown struck) = (choices[i], strikes[i]);
            Unknown piece = model.Choice();
            model.AtMost(new LinearSum().Add(struck).Add(piece, -choice.Most), 0);
            model.AtLeast(new LinearSum().Add(struck).Add(piece, -choice.Least), 0);
            model.AtMost(new LinearSum().Add(piece).Add(begun, -1), 0);
            cut.Add(struck, choice.Die.Shape.FeedMm / 1000).Add(piece, choice.Die.Shape.OverMm / 1000);
            pieces[i] = Of(piece);
        }

        SingleRoll unit = new(strikes, [.. strikes.Select(Of)], pieces, begun) { Rolls = [roll], Choices = choices };
        model.AtMost(new LinearSum().Add(cut).Add(begun, -clear), 0);
        unit.Begun.Add(begun);
        unit.Cost.Add(begun, price * roll.LengthM);
        if (rules.RemnantValuePercent > 0 || question.Orders.Any(o => o.ReserveBalls > 0))
        {
            // What remains keeps its far end; it goes back to stock when it is long enough.
            double most = roll.LengthM - (rules.EndLossMm / 1000);
            Unknown kept = model.Number(most);
            Unknown keeps = model.Choice();
            model.AtMost(new LinearSum().Add(kept).Add(cut).Add(begun, -most), 0);
            model.AtMost(new LinearSum().Add(kept).Add(keeps, -most), 0);
            model.AtLeast(new LinearSum().Add(kept).Add(keeps, -rules.LeastRemnantM), 0);
            unit.Kept.Add(kept);
            unit.Cost.Add(kept, -price * rules.RemnantValuePercent / 100);
        }

        return unit;
    }

    /// <inheritdoc/>
    public override IEnumerable<(Unknown Variable, double Value)> At(IReadOnlyList<int[]> cuts)
    {
        yield return (begins, cuts[0].Any(n => n > 0) ? 1 : 0);
        for (int i = 0; i < strikes.Length; i++)
        {
            yield return (strikes[i], cuts[0][i]);
            yield return (pieces[i].Terms[0].Variable, cuts[0][i] > 0 ? 1 : 0);
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<int[]> Cuts(MixedModel model)
    {
        int[] found = [.. strikes.Select(model.WholeOf)];
        return found.Any(n => n > 0) ? [found] : [];
    }
}
