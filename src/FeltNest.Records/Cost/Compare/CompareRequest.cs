using FeltNest.Cost.Sheet;
using FeltNest.Layout;

namespace FeltNest.Cost.Compare;

/// <summary>What is to be compared.</summary>
/// <param name="Lay">Part, gap and rules; its width and trims are those of each case.</param>
/// <param name="Cases">Widths or offers.</param>
/// <param name="Scan">True to lay parallel rows from one set of tables, for many widths; false to search each width by all ways.</param>
/// <param name="Costs">What the shop knows of its costs, or null.</param>
/// <param name="Kept">A die that is there already, or null.</param>
public sealed record CompareRequest(LayoutRequest Lay, IReadOnlyList<CompareCase> Cases, bool Scan, CostInputs? Costs, RollLayout? Kept)
{
    /// <summary>Balls that the felt is bought for, thousands; null where that is not known.</summary>
    public double? ThousandBalls { get; init; }
}
