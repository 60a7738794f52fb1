using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Files.Balls;
using FeltNest.Files.Dies;
using FeltNest.Files.Presses;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Panel;
using FeltNest.Rolls;
using FeltNest.Tests.Files;
using FeltNest.Tests.Layout;

namespace FeltNest.Tests.Die;

/// <summary>Dies, layouts and presses to test with.</summary>
internal static class DieCases
{
    private static readonly Lazy<RollLayout> Lay = new(() =>
    {
        BallSpec ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;
        LayoutPart part = CoverPart.Of(ball, PanelFlattener.Flatten(ball));
        return LayoutSearch.Run(new LayoutRequest
        {
            Part = part,
            RollWidthMm = 300,
            Trims = EdgeTrims.Both(15),
            GapMm = 4,
            Rules = new LayoutRules(null, 0, RowRule.Same, false),
            Effort = 1,
            Seed = 1,
        });
    });

    /// <summary>The order of the demo.</summary>
    public static DieOrder Order { get; } = DieOrderReader.Read(RepositoryFile.PathOf("shapes", "demo", "dies", "gang-die.json"));

    /// <summary>The beam press of the demo.</summary>
    public static PressSpec Beam { get; } = PressReader.Read(RepositoryFile.PathOf("shapes", "demo", "presses", "beam-press.json"));

    private static readonly Lazy<DieDesign> Found = new(() => DieDesigner.Run(new GangRequest(Lay.Value, 0, Order, Beam, null)));

    /// <summary>A die for panels of a type 2 ball on a narrow roll.</summary>
    public static DieDesign Panels => Found.Value;

    /// <summary>The layout of that die.</summary>
    public static RollLayout PanelLay => Lay.Value;

    /// <summary>The order with its force measured.</summary>
    public static DieOrder Measured(double nPerMm) =>
        Order with { Force = Order.Force with { Basis = ForceBasis.Measured, NPerMmPerPly = nPerMm } };

    /// <summary>Two rows of 40 x 20 plates, 44 apart along the roll and 24 across, the upper row 22 further on: gap 4 everywhere, all
    /// parallel.</summary>
    public static RollLayout Plates { get; } = Of(
        44, new PlacedPanel { Part = 0, XMm = 0, YMm = 25, AngleDeg = 0 }, new PlacedPanel { Part = 0, XMm = 22, YMm = 49, AngleDeg = 0 });

    /// <summary>Plates of 40 x 20 and of 30 x 20 in turn in one row: gap 4.</summary>
    public static RollLayout TwoParts { get; } = new()
    {
        Parts = [
            Plates.Parts[0],
            new LayoutPart
            {
                Name = "short plate",
                Ball = null,
                Outline = Outline.From([new(-15, -10), new(15, -10), new(15, 10), new(-15, 10)]),
                Arcs = null,
                MassPerAreaGsm = null,
                WarpAngleDeg = null,
            },
        ],
        RollWidthMm = 50,
        Trims = EdgeTrims.Both(15),
        GapMm = 4,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Bands = [new LayoutBand
        {
            YFromMm = 15,
            YToMm = 35,
            Repeat = new LayoutRepeat(
                78,
                [
                    new PlacedPanel { Part = 0, XMm = 22, YMm = 25, AngleDeg = 0 },
                    new PlacedPanel { Part = 1, XMm = 61, YMm = 25, AngleDeg = 0 },
                ]),
        }],
        Search = Shapes.ByHand(leastGapMm: 4),
    };

    /// <summary>Plates laid as bricks without a gap: two rows, the upper half a plate further on.</summary>
    public static RollLayout Bricks { get; } = Of(
        40, new PlacedPanel { Part = 0, XMm = 20, YMm = 25, AngleDeg = 0 },
        new PlacedPanel { Part = 0, XMm = 40, YMm = 45, AngleDeg = 0 }) with
    {
        RollWidthMm = 70,
        GapMm = 0,
        Bands = [new LayoutBand
        {
            YFromMm = 15,
            YToMm = 55,
            Repeat = new LayoutRepeat(
                40,
                [
                    new PlacedPanel { Part = 0, XMm = 20, YMm = 25, AngleDeg = 0 },
                    new PlacedPanel { Part = 0, XMm = 40, YMm = 45, AngleDeg = 0 },
                ]),
        }],
    };

    /// <summary>Plates with a round end and a hollow one that take each other up, 40 apart without a gap.</summary>
    public static RollLayout RoundEnds { get; } = Bricks with
    {
        RollWidthMm = 50,
        Parts = [Round()],
        Bands = [new LayoutBand
        {
            YFromMm = 15,
            YToMm = 35,
            Repeat = new LayoutRepeat(40, [new PlacedPanel { Part = 0, XMm = 20, YMm = 25, AngleDeg = 0 }]),
        }],
    };

    /// <summary>A die with common cuts: a centre bevel, which such cuts want.</summary>
    public static DieDesign Common(RollLayout layout, bool dieView = false) => DieDesigner.Run(new GangRequest(
        layout, 0, Order with { CommonCut = true, DieView = dieView, Rule = Order.Rule with { Bevel = RuleBevel.Centre } }, Press(200, 200),
        null));

    // The hollow end is the round one moved; chords of both are the same chords.
    private static LayoutPart Round()
    {
        ArcOutline arcs = ArcOutline.From([new(-20, -10, 0), new(20, -10, Math.PI / 3), new(20, 10, 0), new(-20, 10, -Math.PI / 3)]);
        Point2[] end =
        [
            .. Enumerable.Range(0, 41).Select(k => EdgePiece.Of(new ArcVertex(20, -10, Math.PI / 3), new(20, 10)).At(k / 40.0)),
        ];
        return new LayoutPart
        {
            Name = "round end",
            Ball = null,
            Outline = Outline.From([.. end, .. end.Reverse().Select(p => new Point2(p.X - 40, p.Y))]),
            Arcs = arcs,
            MassPerAreaGsm = null,
            WarpAngleDeg = null,
        };
    }

    /// <summary>A layout of the plate by hand on a roll of 74 mm with trims of 15.</summary>
    public static RollLayout Of(double repeat, params PlacedPanel[] panels)
    {
        Outline plate = Outline.From([new(-20, -10), new(20, -10), new(20, 10), new(-20, 10)]);
        LayoutPart part = new()
        {
            Name = "plate",
            Ball = null,
            Outline = plate,
            Arcs = null,
            MassPerAreaGsm = null,
            WarpAngleDeg = null,
        };
        return new RollLayout
        {
            Parts = [part],
            RollWidthMm = 74,
            Trims = EdgeTrims.Both(15),
            GapMm = 4,
            Rules = new LayoutRules(null, 0, RowRule.Same, false),
            Bands = [new LayoutBand { YFromMm = 15, YToMm = 59, Repeat = new LayoutRepeat(repeat, panels) }],
            Search = Shapes.ByHand(leastGapMm: 4),
        };
    }

    /// <summary>A press with a bed of so many mm and no margin.</summary>
    public static PressSpec Press(double length, double width, double kn = 600, double feed = 0.4) =>
        new()
        {
            Name = "P",
            RatedForceKn = kn,
            AllowedSharePercent = 80,
            Bed = new PressBed { LengthMm = length, WidthMm = width, MarginMm = 0 },
            DaylightMm = null,
            StrokesPerMinute = 10,
            ChangeOverMinutes = 10,
            Hours = null,
            MostPlies = 1,
            FeedToleranceMm = feed,
            GuideToleranceMm = 0.5,
            Dies = [],
        };
}
