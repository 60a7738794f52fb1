using FeltNest.Geometry;
using FeltNest.Layout.Rows;

namespace FeltNest.Layout.Check;

/// <summary>What a layout request must satisfy before any search.</summary>
public static class LayoutLimits
{
    /// <summary>Shortest length that is sound input, mm: below it no felt part can be handled.</summary>
    public const double LeastLengthMm = 0.1;

    /// <summary>Greatest length that is sound input, mm.</summary>
    public const double MostLengthMm = 100_000;

    /// <summary>Highest effort.</summary>
    public const int MostEffort = 1000;

    /// <summary>Most bands with a repeat of their own.</summary>
    public const int MostBands = 4;

    /// <summary>Most panels a die may be limited to.</summary>
    public const int MostDiePanels = 10_000;

    /// <summary>Most layers of cloth.</summary>
    public const int MostPlies = 20;

    /// <summary>Refuses a request that makes no sense or has no answer.</summary>
    /// <exception cref="InputException">A number out of its range.</exception>
    /// <exception cref="NoAnswerException">The part fits at no allowed tilt, or the row rule asks for tilts the warp angle forbids.</exception>
    public static void Require(LayoutRequest request)
    {
        Within("width", request.RollWidthMm, LeastLengthMm, MostLengthMm, "mm");
        Within("edge", request.Trims.LowerMm, 0, MostLengthMm, "mm");
        Within("edge", request.Trims.UpperMm, 0, MostLengthMm, "mm");
        Within("gap", request.GapMm, 0, MostLengthMm, "mm");
        Within("warp-tolerance", request.Rules.WarpToleranceDeg, 0, 90, "degrees");
        Within("effort", request.Effort, 1, MostEffort, string.Empty);
        if (request.Rules.WarpAngleDeg is { } angle)
        {
            Within("warp-angle", angle, -360, 360, "degrees");
        }

        if (request.UsableWidthMm <= 0)
        {
            throw new InputException(null, "edge", FormattableString.Invariant(
                $"edge trims of {request.Trims.LowerMm:0.###} and {request.Trims.UpperMm:0.###} mm leave nothing of a {request.RollWidthMm:0.###} mm roll"));
        }

        TiltRange tilts = TiltRange.Of(request.Rules);
        if (request.Rules is { Rows: RowRule.Alternate } && !tilts.IsFree && !AllowsMirror(tilts))
        {
            throw new NoAnswerException(FormattableString.Invariant(
                $"rows alternate needs tilts +a and -a, but the warp angle {request.Rules.WarpAngleDeg:0.###} with tolerance {request.Rules.WarpToleranceDeg:0.###} degrees allows no such pair: use rows same, or a warp angle within the tolerance of 0 or 90"));
        }

        (double height, double tilt) = tilts.IsFree
            ? OutlineWidth.Least(request.Part.Outline, 0, Math.PI)
            : OutlineWidth.Least(request.Part.Outline, tilts.Least, tilts.Most);
        if (height > request.UsableWidthMm)
        {
            // Rounded up, so that the width named does work.
            double works = Math.Ceiling((height + request.Trims.TotalMm) * 100) / 100;
            throw new NoAnswerException(FormattableString.Invariant(
                $"the panel needs {height:0.###} mm across (tilted {double.RadiansToDegrees(tilt):0.#} degrees), the usable width is {request.UsableWidthMm:0.###} mm: the least roll width that works is {works:0.##} mm"));
        }
    }

    private static bool AllowsMirror(TiltRange tilts) =>
        new[] { 0, Math.PI / 2, -Math.PI / 2, Math.PI, -Math.PI }.Any(axis => tilts.Least <= axis + 1e-12 && axis - 1e-12 <= tilts.Most);

    private static void Within(string field, double value, double least, double most, string unit)
    {
        if (!(value >= least && value <= most))
        {
            throw new InputException(null, field, FormattableString.Invariant($"{value:0.######} is outside {least:0.###} to {most:0.###} {unit}").TrimEnd());
        }
    }
}
