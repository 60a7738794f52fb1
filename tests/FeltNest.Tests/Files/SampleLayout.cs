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
    public static RollLayout OneRepeat { get; } = new()
    {
        Parts = [Part],
        RollWidthMm = 60,
        Trims = EdgeTrims.Both(15),
        GapMm = 5,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Bands = [new LayoutBand
        {
            YFromMm = 15,
            YToMm = 45,
            Repeat = new LayoutRepeat(
                50,
                [
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
                    new PlacedPanel { Part = 0, XMm = 12.345678901234567, YMm = 35, AngleDeg = 180 },
                ]),
        }],
        Search = new SearchRecord
        {
            Seed = 3,
            Effort = 7,
            CutShort = false,
            Method = "by hand",
            ProvedOnGrid = new GridProof { AngleStepDeg = 0.25, PitchStepMm = 0.5 },
            PlaneUtilisationPercent = 88.125,
            LeastGapMm = 5,
            FreerRowsPanelsPerMetre = null,
        },
    };

    /// <summary>The same two rows as bands of their own repeats, in two classes.</summary>
    public static RollLayout TwoBands { get; } = OneRepeat with
    {
        Rules = new LayoutRules(30, 45, RowRule.Any, false)
        {
            Bands = 2,
            Forbidden = [new ForbiddenStrip { YFromMm = 0, YToMm = 2 }],
            Die = new DieLimit { MostPanels = 4, BedLengthMm = null, BedWidthMm = 300 },
            LeastRepeatMm = 40,
            Plies = new Plies(2, true),
        },
        Bands =
        [
            new LayoutBand
            {
                YFromMm = 15,
                YToMm = 25,
                Repeat = new LayoutRepeat(50, [new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 }]),
            },
            new LayoutBand
            {
                YFromMm = 25,
                YToMm = 45,
                Repeat = new LayoutRepeat(60, [new PlacedPanel { Part = 0, XMm = 0, YMm = 35, AngleDeg = 5 }]),
            },
        ],
        Search = new SearchRecord
        {
            Seed = 1,
            Effort = 5,
            CutShort = true,
            Method = "by hand",
            ProvedOnGrid = null,
            PlaneUtilisationPercent = 0,
            LeastGapMm = 5,
            FreerRowsPanelsPerMetre = 41.5,
            UpperBoundPercent = 91.5,
            Loss = new LossSplit
            {
                ShapePercent = 6.5,
                GapPercent = 10.25,
                TrimPercent = 2,
                EdgesPercent = 0.5,
                RowFitPercent = 1.25,
            },
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
        return new LayoutPart
        {
            Name = "Plate",
            Ball = "Ball",
            Outline = arcs.ContainingPolygon(0.01),
            Arcs = arcs,
            MassPerAreaGsm = 800,
            WarpAngleDeg = null,
        };
    }

    private static YieldFigures MakeYields()
    {
        double area = 2 * (300 + (25 * Math.PI));
        double good = 100 * area / (50 * 60);
        // 2 panels in 50 mm: 40 a metre, 20 pairs; panels reach from y = 15 to y = 40 of the usable 15 to 45.
        const double unused = 100 * 5.0 / 60;
        const double trim = 100 * 30.0 / 60;
        return new YieldFigures
        {
            PanelsPerMetre = 40,
            BallsPerMetre = 20,
            UtilisationPercent = good,
            WastePercent = 100 - good,
            PerThousandBalls = new FeltUsage { Metres = 50, SquareMetres = 3, Kilograms = 2.4 },
            Account = new WasteAccount
            {
                GoodPanelsPercent = good,
                BetweenPanelsPercent = 100 - good - unused - trim,
                UnusedEdgePercent = unused,
                EdgeTrimPercent = trim,
            },
        };
    }
}
