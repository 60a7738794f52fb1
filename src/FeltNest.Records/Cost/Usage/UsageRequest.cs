using FeltNest.Cost.Sheet;
using FeltNest.Layout;

namespace FeltNest.Cost.Usage;

/// <summary>What was to be used, and what was.</summary>
/// <param name="Layout">The layout that was cut.</param>
/// <param name="Rolls">What the rolls gave.</param>
/// <param name="Costs">Normal losses and the standard price, or null for the layout alone.</param>
internal sealed record UsageRequest(RollLayout Layout, IReadOnlyList<ActualRoll> Rolls, CostInputs? Costs)
{
    /// <summary>File of the layout, for messages; null where it came from none.</summary>
    public string? LayoutFile { get; init; }

    /// <summary>File of what the rolls gave, for messages; null where it came from none.</summary>
    public string? ActualsFile { get; init; }

    /// <summary>File of the costs, for messages; null where it came from none.</summary>
    public string? CostsFile { get; init; }
}
