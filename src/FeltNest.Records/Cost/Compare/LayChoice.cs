using FeltNest.Cost.Sheet;
using FeltNest.Layout;

namespace FeltNest.Cost.Compare;

/// <summary>One way to cut a felt: a layout, and how much of it a strike cuts.</summary>
public sealed record LayChoice
{
    /// <summary>The layout.</summary>
    public required RollLayout Layout { get; init; }

    /// <summary>Most panels of one layer a strike may cut, or null for one repeat.</summary>
    public required int? MostPanels { get; init; }

    /// <summary>The felt over a whole roll.</summary>
    public required FeltAccount Account { get; init; }

    /// <summary>The cost sheet, or null where no price is known.</summary>
    public required CostSheet? Sheet { get; init; }

    /// <summary>Felt bought for a thousand good balls, m2.</summary>
    public double SquareMetres => Account.PerThousandBalls.SquareMetres;
}
