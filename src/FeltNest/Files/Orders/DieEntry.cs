using FeltNest.Rolls.Orders;

namespace FeltNest.Files.Orders;

/// <summary>A line of a list of dies.</summary>
/// <param name="Die">The die.</param>
/// <param name="LayoutFile">File of the layout it cuts.</param>
internal sealed record DieEntry(CutDie Die, string LayoutFile)
{
    /// <summary>Band of the layout that it cuts, counted from 1; null where it cuts all of it.</summary>
    public required int? Band { get; init; }
}
