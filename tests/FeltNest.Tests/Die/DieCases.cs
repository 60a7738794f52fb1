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
using FeltNest.Panel;
using FeltNest.Rolls;
using FeltNest.Tests.Files;

namespace FeltNest.Tests.Die;

/// <summary>Dies, layouts and presses to test with.</summary>
internal static class DieCases
{
    private static readonly Lazy<RollLayout> Lay = new(() =>
    {
        BallSpec ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;
        LayoutPart part = CoverPart.Of(ball, PanelFlattener.Flatten(ball));
        return LayoutSearch.Run(new LayoutRequest(part, 300, 15, 4, new LayoutRules(null, 0, RowRule.Same, false), 1, 1));
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
    public static RollLayout Plates { get; } = Of(44, new PlacedPanel(0, 0, 25, 0), new PlacedPanel(0, 22, 49, 0));

    /// <summary>Plates of 40 x 20 and of 30 x 20 in turn in one row: gap 4.</summary>
    public static RollLayout TwoParts { get; } = new(
        [
            Plates.Parts[0],
            new LayoutPart("short plate", null, Outline.From([new(-15, -10), new(15, -10), new(15, 10), new(-15, 10)]), null, null, null),
        ], 50, 15, 4, new LayoutRules(null, 0, RowRule.Same, false),
        [new LayoutBand(15, 35, new LayoutRepeat(78, [new PlacedPanel(0, 22, 25, 0), new PlacedPanel(1, 61, 25, 0)]))],
        new SearchRecord(1, 1, false, "by hand", null, 0, 4, null));

    /// <summary>Plates laid as bricks without a gap: two rows, the upper half a plate further on.</summary>
    public static RollLayout Bricks { get; } = Of(40, new PlacedPanel(0, 20, 25, 0), new PlacedPanel(0, 40, 45, 0)) with
    {
        RollWidthMm = 70,
        GapMm = 0,
        Bands = [new LayoutBand(15, 55, new LayoutRepeat(40, [new PlacedPanel(0, 20, 25, 0), new PlacedPanel(0, 40, 45, 0)]))],
    };

    /// <summary>Plates with a round end and a hollow one that take each other up, 40 apart without a gap.</summary>
    public static RollLayout RoundEnds { get; } = Bricks with
    {
        RollWidthMm = 50,
        Parts = [Round()],
        Bands = [new LayoutBand(15, 35, new LayoutRepeat(40, [new PlacedPanel(0, 20, 25, 0)]))],
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
        return new LayoutPart(
            "round end", null, Outline.From([.. end, .. end.Reverse().Select(p => new Point2(p.X - 40, p.Y))]), arcs, null, null);
    }

    /// <summary>A layout of the plate by hand on a roll of 74 mm with trims of 15.</summary>
    public static RollLayout Of(double repeat, params PlacedPanel[] panels)
    {
        Outline plate = Outline.From([new(-20, -10), new(20, -10), new(20, 10), new(-20, 10)]);
        LayoutPart part = new("plate", null, plate, null, null, null);
        return new RollLayout(
            [part], 74, 15, 4, new LayoutRules(null, 0, RowRule.Same, false), [new LayoutBand(15, 59, new LayoutRepeat(repeat, panels))],
            new SearchRecord(1, 1, false, "by hand", null, 0, 4, null));
    }

    /// <summary>A press with a bed of so many mm and no margin.</summary>
    public static PressSpec Press(double length, double width, double kn = 600, double feed = 0.4) =>
        new("P", kn, 80, new PressBed(length, width, 0), null, 10, 10, null, 1, feed, 0.5, []);
}
