using FeltNest.Cost.Compare;

namespace FeltNest.Cost.Families;

/// <summary>One ball on one width: the way to cut it that costs least in a year.</summary>
public sealed record FamilyPair
{
    /// <summary>Place of the ball in the family.</summary>
    public required int Ball { get; init; }

    /// <summary>Place of the width among those asked.</summary>
    public required int Width { get; init; }

    /// <summary>Layout, account and cost sheet.</summary>
    public required LayChoice Way { get; init; }

    /// <summary>Felt, strikes and all else but the die, money for a thousand good balls.</summary>
    public required decimal RunningPerThousandBalls { get; init; }

    /// <summary>The same for the balls of a year, to the cent.</summary>
    public required decimal RunningPerYear { get; init; }

    /// <summary>Its dies, or null where none is priced.</summary>
    public required DieOutlay? Dies { get; init; }

    /// <summary>Money a year, without keeping the width in stock.</summary>
    public decimal PerYear => RunningPerYear + (Dies?.PerYear ?? 0);
}
