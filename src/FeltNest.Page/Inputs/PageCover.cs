using System.Globalization;
using FeltNest.Ball.Ranges;
using FeltNest.Files.Balls;

namespace FeltNest.Page.Inputs;

/// <summary>The ball as the page asks for it: one of the shelf, with what goes before its file. Lengths in mm.</summary>
/// <param name="Ball">Name of the ball's file, without ending.</param>
/// <param name="CoreMm">Diameter of the core, or null for the ball's own; so with the others.</param>
/// <param name="CementMm">Thickness of the cement.</param>
/// <param name="FeltMm">Thickness of the felt as cut.</param>
/// <param name="WaistMm">Waist on the fitted sphere.</param>
/// <param name="EdgeLimitPercent">Most edge compression, per cent.</param>
internal sealed record PageCover(string Ball, double? CoreMm, double? CementMm, double? FeltMm, double? WaistMm, double? EdgeLimitPercent)
{
    /// <summary>What goes before the ball's file.</summary>
    public IReadOnlyList<BallChange> Changes =>
    [
        .. Change(BallChange.CoreField, CoreMm),
        .. Change(BallChange.WaistField, WaistMm),
        .. Change(BallRanges.CementThickness.Field, CementMm),
        .. Change(BallRanges.MaxEdgeCompression.Field, EdgeLimitPercent),
        .. Change(BallRanges.FeltThickness.Field, FeltMm),
    ];

    private static IEnumerable<BallChange> Change(string field, double? value) =>
        value is { } number ? [new BallChange(field, number.ToString("R", CultureInfo.InvariantCulture))] : [];
}
