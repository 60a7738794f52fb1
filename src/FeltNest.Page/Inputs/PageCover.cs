using System.Globalization;
using FeltNest.Ball.Ranges;
using FeltNest.Files.Balls;

namespace FeltNest.Page.Inputs;

/// <summary>The ball as the page asks for it: one of the shelf, with what goes before its file. Lengths in mm.</summary>
internal sealed record PageCover
{
    /// <summary>Name of the ball's file, without ending.</summary>
    public required string Ball { get; init; }

    /// <summary>Diameter of the core, or null for the ball's own; so with the others.</summary>
    public required double? CoreMm { get; init; }

    /// <summary>Thickness of the cement.</summary>
    public required double? CementMm { get; init; }

    /// <summary>Thickness of the felt as cut.</summary>
    public required double? FeltMm { get; init; }

    /// <summary>Waist on the fitted sphere.</summary>
    public required double? WaistMm { get; init; }

    /// <summary>Most edge compression, per cent.</summary>
    public required double? EdgeLimitPercent { get; init; }

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
        value is { } number ? [new BallChange { Field = field, Value = number.ToString("R", CultureInfo.InvariantCulture) }] : [];
}
