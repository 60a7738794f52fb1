using FeltNest.Geometry;
using FeltNest.Panel.Wrap;

namespace FeltNest.Panel.Trace;

/// <summary>What was found in a picture of cut panels.</summary>
internal sealed record TracedPanel
{
    /// <summary>The outline, mm, in the frame of the picture: x to the right, y upwards; the mean where several panels lie in it.</summary>
    public required ArcOutline Outline { get; init; }

    /// <summary>The picture, true to scale.</summary>
    public required FlatPicture Flat { get; init; }

    /// <summary>What was found in it.</summary>
    public required FoundPanels Found { get; init; }

    /// <summary>Noise of the first panel's edge that was smoothed; null where it has corners and was kept as seen.</summary>
    public required EdgeSmoothing? Smoothing { get; init; }

    /// <summary>Standard deviation of several panels about the mean, rms and greatest, mm; null for one.</summary>
    public required (double RmsMm, double GreatestMm)? Spread { get; init; }

    /// <summary>Ink marks on the first panel, or null.</summary>
    public required InkMarks? Marks { get; init; }

    /// <summary>Angle from the warp to the picture's x, degrees, above -90 to 90; the outline's +u lies along x. Null without a line of
    /// ink.</summary>
    public double? WarpAngleDeg => Marks is { } marks
        ? Math.IEEERemainder(-Math.Atan2(marks.To.Y - marks.From.Y, marks.To.X - marks.From.X) * 180 / Math.PI, 180)
        : null;
}
