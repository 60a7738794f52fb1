using FeltNest.Rolls.Orders.Model;

namespace FeltNest.Rolls.Orders.Search;

/// <summary>How large the model of a question would be, counted before it is built.</summary>
internal static class ModelSize
{
    /// <summary>Most variables a search is made with: above it the solver does not come past its first bound in any time a planner waits,
    /// and the plan of first fit stands.</summary>
    public const int Most = 1500;

    // Variables of a roll, and of each order and die on it.
    private const int OfRoll = 3;
    private const int OfChoice = 2;

    /// <summary>Variables of the rolls, orders and dies; counted no further than is needed to know that they are too many.</summary>
    public static int Of(OrderRequest question)
    {
        int counted = 0;
        foreach ((StockRoll kind, int rolls) in question.Rolls
            .Select(r => (r, 1))
            .Concat(question.Offers.Select(o => (o.Roll, FeltRows.MostRolls(o.Roll, question)))))
        {
            int choices = CutChoice.On(kind, question).Length;
            counted += choices == 0 ? 0 : rolls * (OfRoll + (OfChoice * choices));
            if (counted > Most)
            {
                break;
            }
        }

        return counted;
    }
}
