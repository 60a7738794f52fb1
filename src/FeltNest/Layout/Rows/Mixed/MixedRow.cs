using FeltNest.Geometry;

namespace FeltNest.Layout.Rows.Mixed;

/// <summary>One row of a lay whose rows move on their own.</summary>
internal sealed record MixedRow
{
    /// <summary>Which tilt parameter turns it.</summary>
    public required int Tilt { get; init; }

    /// <summary>Factor of that parameter: -1 for a mirrored tilt.</summary>
    public required double Factor { get; init; }

    /// <summary>Fixed turn added, radians.</summary>
    public required double Turn { get; init; }

    /// <summary>Where its first panel starts, mm.</summary>
    public required Point2 At { get; init; }

    /// <summary>Panels of the row in a repeat, evenly spaced.</summary>
    public required int Copies { get; init; }
}
