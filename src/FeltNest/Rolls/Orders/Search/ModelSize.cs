using FeltNest.Rolls.Orders.Model;

namespace FeltNest.Rolls.Orders.Search;

/// <summary>How large the model of a question would be, counted before it is built.</summary>
internal static class ModelSize
{
    /// <summary>Most variables of a question that is settled in one model: a larger one is planned by patterns, which come nearer to the
    /// best in less time.</summary>
    public const int Most = 1500;

    // Variables of a roll, and of each order and die on it.
    private const int OfRoll = 3;
    private const int OfChoice = 2;

    // So many patterns are no more work than one variable: they have no row of their own.
    private const int PatternsOfOne = 3;

    /// <summary>Variables of the rolls, orders and dies; counted no further than is needed to know that they are too many.</summary>
    public static int Of(OrderRequest question)
    {
        int counted = 0;
        foreach ((StockRoll kind, int rolls) in LikeRolls.Sorted(question).Select(alike => (alike[0], alike.Count))
            .Concat(question.Offers.Select(o => (o.Roll, FeltRows.MostRolls(o.Roll, question)))))
        {
            CutChoice[] choices = CutChoice.On(kind, question);
            int single = choices.Length == 0 ? 0 : rolls * (OfRoll + (OfChoice * choices.Length));
            counted += rolls > 1 && LikeRolls.CountOf(choices, question.ClearM(kind)) is { } patterns ? patterns / PatternsOfOne : single;
            if (counted > Most)
            {
                break;
            }
        }

        return counted;
    }
}
