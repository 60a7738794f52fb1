using System.Globalization;
using FeltNest.Files.Dxf;
using FeltNest.Files.Outlines;
using FeltNest.Files.Svg;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;

namespace FeltNest.Files.Layouts;

/// <summary>Reads a die that is there already from a drawing with one closed loop a cavity, as it lies on the felt: x along the feed, y
/// across, seen from the nap side.</summary>
internal static class DrawnDie
{
    // Cavities of the greatest die that is read.
    private const int MostCavities = 1000;

    /// <summary>Whether a file is a drawing.</summary>
    public static bool IsDrawing(string path) => Path.GetExtension(path).ToLowerInvariant() is ".svg" or ".dxf";

    /// <summary>The layout that the die cuts: its cavities once a feed, on the narrowest roll that holds them. Each cavity is a part of its
    /// own, just as drawn.</summary>
    /// <param name="path">The drawing.</param>
    /// <param name="feedMm">Length of roll after which the die strikes again, mm.</param>
    /// <param name="trims">Edge trims of the roll.</param>
    /// <param name="notes">Told what was assumed and healed.</param>
    /// <exception cref="InputException">No sound drawing, a loop that is no outline, or cavities that overlap at this feed.</exception>
    public static RollLayout Read(string path, double feedMm, EdgeTrims trims, List<string> notes)
    {
        ImportedOutline[] cavities = Cavities(path, notes);
        double low = cavities.Min(c => c.Raw.MinY);
        double high = cavities.Max(c => c.Raw.MaxY);
        RollLayout die = Laid(cavities, feedMm, trims, low, high - low + trims.TotalMm);
        CheckVerdict verdict = LayoutCheck.Verify(die);
        if (!verdict.Passed)
        {
            throw new InputException(path, null, string.Create(
                CultureInfo.InvariantCulture,
                $"its {cavities.Length} cavities do not clear each other when struck again after {feedMm:0.###} mm: "
                    + $"{OneLine.Of(verdict.Violations[0])}"));
        }

        notes.Add(string.Create(
            CultureInfo.InvariantCulture,
            $"{cavities.Length} cavities of {die.Parts.Average(p => p.AreaMm2):0.0} mm2 on average, {high - low:0.00} mm across, struck "
                + $"every {feedMm:0.###} mm"));
        return die;
    }

    private static ImportedOutline[] Cavities(string path, List<string> notes)
    {
        InputText text = InputText.OfFile(path);
        IReadOnlyList<IReadOnlyList<ArcVertex>> loops = text.Ending == ".svg"
            ? SvgOutline.ReadAll(text, notes)
            : DxfOutline.ReadAll(text, notes);
        if (loops.Count > MostCavities)
        {
            throw new InputException(path, null, $"holds {loops.Count} closed loops: a die of at most {MostCavities} cavities is read");
        }

        return [.. loops.Select(loop => DrawnOutline.Of(path, loop, []))];
    }

    // The cavities once a feed on a roll of a width, the lowest of them at the lower trim.
    private static RollLayout Laid(ImportedOutline[] cavities, double feedMm, EdgeTrims trims, double low, double width) => new()
    {
        Parts = [.. cavities.Select(Part)],
        RollWidthMm = width,
        Trims = trims,
        GapMm = 0,
        Rules = new LayoutRules(null, 0, RowRule.Any, false),
        Bands = [new LayoutBand
        {
            YFromMm = trims.LowerMm,
            YToMm = width - trims.UpperMm,
            Repeat = new LayoutRepeat(feedMm, [.. cavities.Select((c, i) => Placed(c, i, low, trims))]),
        }],
        Search = new SearchRecord
        {
            Seed = 1,
            Effort = 1,
            CutShort = false,
            Method = "as drawn",
            ProvedOnGrid = null,
            PlaneUtilisationPercent = 0,
            LeastGapMm = 0,
            FreerRowsPanelsPerMetre = null,
        },
    };

    private static LayoutPart Part(ImportedOutline cavity, int number) => new()
    {
        Name = $"cavity {number + 1}",
        Ball = null,
        Outline = cavity.Centred,
        Arcs = cavity.CentredArcs,
        MassPerAreaGsm = null,
        WarpAngleDeg = null,
    };

    private static PlacedPanel Placed(ImportedOutline cavity, int number, double low, EdgeTrims trims)
    {
        Point2 at = cavity.RawArcs?.Centroid ?? cavity.Raw.Centroid;
        return new PlacedPanel { Part = number, XMm = at.X, YMm = at.Y - low + trims.LowerMm, AngleDeg = 0 };
    }
}
