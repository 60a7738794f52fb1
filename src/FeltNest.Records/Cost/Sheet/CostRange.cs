using FeltNest.Cost.Offers;

namespace FeltNest.Cost.Sheet;

/// <summary>How far a figure may be off what is thought likely.</summary>
public readonly record struct CostRange
{
    /// <summary>The figure's place in the costs file, such as <c>roll.endLossMm</c>.</summary>
    public required string Field { get; init; }

    /// <summary>Least value thought possible.</summary>
    public required decimal Low { get; init; }

    /// <summary>Greatest value thought possible.</summary>
    public required decimal High { get; init; }

    /// <summary>How likely the values between are.</summary>
    public SpreadShape Shape { get; init; }
}
