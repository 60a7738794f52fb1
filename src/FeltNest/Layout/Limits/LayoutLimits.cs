using System.Globalization;
using FeltNest.Geometry;

namespace FeltNest.Layout.Limits;

/// <summary>What a layout request must satisfy before any search.</summary>
internal static class LayoutLimits
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
    public const int MostPlies = 100;

    /// <summary>Most rows over the cloth: ten times what the smallest panels of a ball make on the widest roll.</summary>
    public const int MostRows = 3000;

    /// <summary>Refuses a request that makes no sense or has no answer.</summary>
    /// <exception cref="InputException">A number out of its range.</exception>
    /// <exception cref="NoAnswerException">The part fits the cloth or the die bed at no allowed tilt, or the row rule asks for tilts the
    /// warp angle forbids.</exception>
    public static void Require(LayoutRequest request)
    {
        RequireRanges(request);
        TiltRange tilts = TiltRange.Of(request.Rules);
        RequireRowTilts(request, tilts);
        RequireStripes(request);
        RequireSecond(request);
        (double height, double tilt) = tilts.Flattest(request.Part.Outline);
        RequireThickness(request);
        RequireFreeCloth(request, height, tilt);
        if (request.Rules.Die is { } die)
        {
            RequireBed(request, die, tilts);
        }

        if (height > request.UsableWidthMm)
        {
            // Rounded up, so that the width named does work.
            double works = Math.Ceiling((height + request.Trims.TotalMm) * 100) / 100;
            throw new NoAnswerException(string.Create(
                CultureInfo.InvariantCulture,
                $"the panel needs {height:0.###} mm across (tilted {double.RadiansToDegrees(tilt):0.#} degrees), the usable width is "
                    + $"{request.UsableWidthMm:0.###} mm: the least roll width that works is {works:0.##} mm"));
        }
    }

    private static void RequireRanges(LayoutRequest request)
    {
        LayoutRules rules = request.Rules;
        InputException.RequireWithin(AskedFor.RollWidth, request.RollWidthMm, LeastLengthMm, MostLengthMm, "mm");
        InputException.RequireWithin(AskedFor.EdgeTrims, request.Trims.LowerMm, 0, MostLengthMm, "mm");
        InputException.RequireWithin(AskedFor.EdgeTrims, request.Trims.UpperMm, 0, MostLengthMm, "mm");
        InputException.RequireWithin(AskedFor.Gap, request.GapMm, 0, MostLengthMm, "mm");
        InputException.RequireWithin(AskedFor.WarpTolerance, rules.WarpToleranceDeg, 0, 90, "degrees");
        InputException.RequireWithin(AskedFor.Bands, rules.Bands, 1, MostBands, string.Empty);
        InputException.RequireWithin(AskedFor.Plies, rules.Plies.Count, 1, MostPlies, string.Empty);
        InputException.RequireWithin(AskedFor.LeastRepeat, rules.LeastRepeatMm, 0, MostLengthMm, "mm");
        InputException.RequireWithin(AskedFor.Effort, request.Effort, 1, MostEffort, string.Empty);
        if (rules.WarpAngleDeg is { } angle)
        {
            InputException.RequireWithin(AskedFor.WarpAngle, angle, -360, 360, "degrees");
        }

        if (request.UsableWidthMm <= 0)
        {
            throw new InputException(AskedFor.EdgeTrims, string.Create(
                CultureInfo.InvariantCulture,
                $"edge trims of {request.Trims.LowerMm:0.###} and {request.Trims.UpperMm:0.###} mm leave nothing of a "
                    + $"{request.RollWidthMm:0.###} mm roll"));
        }
    }

    private static void RequireRowTilts(LayoutRequest request, TiltRange tilts)
    {
        if (request.Rules is { Rows: RowRule.Alternate } && !tilts.IsFree && !AllowsMirror(tilts))
        {
            throw new NoAnswerException(string.Create(
                CultureInfo.InvariantCulture,
                $"rows alternate needs tilts +a and -a, but the warp angle {request.Rules.WarpAngleDeg:0.###} with tolerance "
                    + $"{request.Rules.WarpToleranceDeg:0.###} degrees allows no such pair: use rows same, or a warp angle within the "
                    + $"tolerance of 0 or 90"));
        }
    }

    // A row must lie between stripes and trims, and not more rows than a search can hold.
    private static void RequireFreeCloth(LayoutRequest request, double height, double tilt)
    {
        IReadOnlyList<(double Low, double High)> runs = FreeCloth.Of(request);
        double widest = runs.Count == 0 ? 0 : runs.Max(run => run.High - run.Low);
        if (request.Rules.Forbidden.Count > 0 && height > widest && height <= request.UsableWidthMm)
        {
            throw new NoAnswerException(string.Create(
                CultureInfo.InvariantCulture,
                $"the forbidden stripes leave no room: the panel needs {height:0.###} mm across (tilted "
                    + $"{double.RadiansToDegrees(tilt):0.#} degrees), the widest run of felt between stripes and trims is "
                    + $"{widest:0.###} mm"));
        }

        if (widest > MostRows * (height + request.GapMm))
        {
            throw new NoAnswerException(string.Create(
                CultureInfo.InvariantCulture,
                $"the panel needs {height:0.######} mm across: more than {MostRows} rows would lie over {widest:0.###} mm of felt, "
                    + $"which is the most that is searched; are its units right?"));
        }
    }

    private static void RequireSecond(LayoutRequest request)
    {
        if (request.Second is not { } second)
        {
            return;
        }

        if (request.Rules.Forbidden.Count > 0)
        {
            throw new InputException(
                AskedFor.SecondPart, "a second part and forbidden stripes cannot be asked for together: lay each run of felt by itself");
        }

        if (second.SharePercent is { } share && !(share > 0 && share < 100))
        {
            throw new InputException(
                AskedFor.SecondShare,
                FormattableString.Invariant($"{share:0.###} is not allowed: above 0 and below 100 per cent, or fill"));
        }
    }

    private static void RequireStripes(LayoutRequest request)
    {
        foreach (ForbiddenStrip strip in request.Rules.Forbidden)
        {
            if (!(strip.YFromMm >= 0 && strip.YFromMm < strip.YToMm && strip.YToMm <= request.RollWidthMm))
            {
                throw new InputException(AskedFor.ForbiddenStripes, string.Create(
                    CultureInfo.InvariantCulture,
                    $"{strip.YFromMm:0.###} to {strip.YToMm:0.###} mm is not a stripe of a {request.RollWidthMm:0.###} mm roll: from 0 "
                        + $"up to the width, the lower side first"));
            }
        }
    }

    // A gap wider than the part is thick leaves more web than part round every edge: nobody cuts that, a unit is wrong.
    private static void RequireThickness(LayoutRequest request)
    {
        double thickness = OutlineWidth.Least(request.Part.Outline, 0, Math.PI).Height;
        if (thickness < request.GapMm)
        {
            throw new InputException(AskedFor.Gap, string.Create(
                CultureInfo.InvariantCulture,
                $"{request.GapMm:0.###} mm swallows the part, which is only {thickness:0.###} mm across at its thinnest: at most "
                    + $"{thickness:0.###} mm is allowed"));
        }
    }

    private static void RequireBed(LayoutRequest request, DieLimit die, TiltRange tilts)
    {
        double length = die.BedLengthMm ?? double.PositiveInfinity;
        double width = die.BedWidthMm ?? double.PositiveInfinity;

        // Tilts a quarter of a degree apart: a bed that holds the panel only between two of them is no bed to build a die for.
        (double needLength, double needWidth) = tilts
            .Grid(0.25)
            .Select(t => request.Part.Outline.Turned(t))
            .Select(o => (o.MaxX - o.MinX, o.MaxY - o.MinY))
            .MinBy(need => Math.Max(need.Item1 / length, need.Item2 / width));
        if (!die.Holds(needLength, needWidth))
        {
            throw new NoAnswerException(string.Create(
                CultureInfo.InvariantCulture,
                $"a die bed of {length:0.###} x {width:0.###} mm holds no panel at an allowed tilt: the nearest needs "
                    + $"{needLength:0.###} mm along and {needWidth:0.###} mm across"));
        }
    }

    private static bool AllowsMirror(TiltRange tilts) =>
        new[] { 0, Math.PI / 2, -Math.PI / 2, Math.PI, -Math.PI }.Any(axis => tilts.Least <= axis + 1e-12 && axis - 1e-12 <= tilts.Most);
}
