namespace FeltNest.Cost.Families;

/// <summary>Every ball of a family on every width, and the widths to stock.</summary>
public sealed record FamilyAnswer
{
    /// <summary>What was asked.</summary>
    public required FamilyRequest Question { get; init; }

    /// <summary>Every ball on every width where it has a layout: the balls in their order, the widths of each in theirs.</summary>
    public required IReadOnlyList<FamilyPair> Pairs { get; init; }

    /// <summary>Balls on widths without a layout, with the reason.</summary>
    public required IReadOnlyList<(int Ball, int Width, string Reason)> Unanswered { get; init; }

    /// <summary>The plans: with most widths of 1, 2 and so on, then with any number. A number of widths on which not every ball can be cut
    /// has none.</summary>
    public required IReadOnlyList<StockPlan> Plans { get; init; }

    /// <summary>The plan of any number of widths: none costs less.</summary>
    public StockPlan Best => Plans[^1];

    /// <summary>Of a family of two, both on every width where both can be cut; empty for another number.</summary>
    public IReadOnlyList<(FamilyPair First, FamilyPair Second)> Differences => Question.Balls.Count != 2
        ? []
        :
        [
            .. from first in Pairs
               from second in Pairs
               where first.Ball == 0 && second.Ball == 1 && first.Width == second.Width
               select (first, second),
        ];

    /// <summary>What a plan saves a year against the one of fewer widths before it, or null for the first.</summary>
    public decimal? Saves(StockPlan plan)
    {
        int at = Plans.ToList().IndexOf(plan);
        return at > 0 ? Plans[at - 1].Total - plan.Total : null;
    }
}
