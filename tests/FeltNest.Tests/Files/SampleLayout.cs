using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Quality;
using FeltNest.Yield;

namespace FeltNest.Tests.Files;

/// <summary>Small layouts made by hand, whose figures are plain arithmetic.</summary>
public static class SampleLayout
{
    /// <summary>A 40 x 10 plate with round ends, radius 5: area 300 + 25 pi.</summary>
    public static LayoutPart Part { get; } = MakePart();

    /// <summary>Two rows of the plate, 50 apart along and 15 across, the upper row turned by a half-turn; roll 60 wide, trim 15.</summary>
    public static RollLayout OneRepeat { get; } = new(
        [Part], 60, 15, 5, new LayoutRules(null, 0, RowRule.Same, false),
        [new LayoutBand(15, 45, new LayoutRepeat(50, [new PlacedPanel(0, 0, 20, 0), new PlacedPanel(0, 12.345678901234567, 35, 180)]))],
        new SearchRecord(3, 7, false, "by hand", new GridProof(0.25, 0.5), 88.125, 5, null));

    /// <summary>The same two rows as bands of their own repeats, in two classes.</summary>
    public static RollLayout TwoBands { get; } = OneRepeat with
    {
        Rules = new LayoutRules(30, 45, RowRule.Any, false)
        {
            Bands = 2,
            Forbidden = [new ForbiddenStrip(0, 2)],
            Die = new DieLimit(4, null, 300),
            LeastRepeatMm = 40,
            Plies = new Plies(2, true),
        },
        Bands =
        [
            new LayoutBand(15, 25, new LayoutRepeat(50, [new PlacedPanel(0, 0, 20, 0)])),
            new LayoutBand(25, 45, new LayoutRepeat(60, [new PlacedPanel(0, 0, 35, 5)])),
        ],
        Search = new SearchRecord(1, 5, true, "by hand", null, 0, 5, 41.5)
        {
            UpperBoundPercent = 91.5,
            Loss = new LossSplit(6.5, 10.25, 2, 0.5, 1.25),
            Methods = [new MethodReach("by hand", 36.5, 2), new MethodReach("rows", 36, 1)],
            RuleCosts = [new RuleCost("one way", 37, "half-turns allowed")],
        },
    };

    /// <summary>Yield figures of <see cref="OneRepeat"/> by plain arithmetic.</summary>
    public static YieldFigures Yields { get; } = MakeYields();

    private static LayoutPart MakePart()
    {
        ArcOutline arcs = ArcOutline.From(
            [new ArcVertex(-15, -5, 0), new ArcVertex(15, -5, Math.PI), new ArcVertex(15, 5, 0), new ArcVertex(-15, 5, Math.PI)]);
        return new LayoutPart("Plate", "Ball", arcs.ContainingPolygon(0.01), arcs, 800, null);
    }

    private static YieldFigures MakeYields()
    {
        double area = 2 * (300 + (25 * Math.PI));
        double good = 100 * area / (50 * 60);
        // 2 panels in 50 mm: 40 a metre, 20 pairs; panels reach from y = 15 to y = 40 of the usable 15 to 45.
        const double unused = 100 * 5.0 / 60;
        const double trim = 100 * 30.0 / 60;
        return new YieldFigures(
            40, 20, good, 100 - good, new FeltUsage(50, 3, 2.4), new WasteAccount(good, 100 - good - unused - trim, unused, trim));
    }
}
