using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Families;

/// <summary>A family of balls, and the widths that may be stocked for it.</summary>
public sealed record FamilyRequest
{
    /// <summary>The balls.</summary>
    public required IReadOnlyList<FamilyBall> Balls { get; init; }

    /// <summary>The widths.</summary>
    public required IReadOnlyList<FamilyWidth> Widths { get; init; }

    /// <summary>True to lay parallel rows from one set of tables a ball; false to search each width by all ways.</summary>
    public required bool Scan { get; init; }

    /// <summary>What the shop knows of its costs; the balls of a year are those of the family.</summary>
    public required CostInputs Costs { get; init; }

    /// <summary>Plans are made for at most one width, two, and so on up to this number, and for any number.</summary>
    public required int MostWidths { get; init; }
}
