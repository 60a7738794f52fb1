using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Gang;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Die.SharedRule;
using FeltNest.Files.Dxf;
using FeltNest.Geometry;
using FeltNest.Rolls;

namespace FeltNest.Files.Dies;

/// <summary>Drawings for rule benders and board cutters: one cavity, the gang, and the slots of the board. The cutting edge alone lies on
/// layer EDGE.</summary>
internal static class DieDxf
{
    private const double Letters = 2.5;
    private const double LineStep = 4.5;

    /// <summary>One cavity of a part, in the part's frame.</summary>
    public static byte[] Cavity(DieDesign design, int part)
    {
        ArcOutline arcs = design.Edges[part]!.Arcs;
        ArcVertex[] edge = Seen(design, arcs.Vertices, 0);
        DxfText dxf = new(("EDGE", 1), ("CENTRE", 3), ("NOTE", 7));
        dxf.Polyline("EDGE", edge, true).Point("CENTRE", default);
        Notes(
            dxf, new Point2(edge.Min(v => v.X), edge.Min(v => v.Y) - 15), design,
            design.Letter(part) is { Length: > 0 } letter ? $"one cavity of part {letter}" : "one cavity", EdgeLine(design.Request.Order),
            "x right, y up, from the part's own origin (layer CENTRE)");
        return dxf.Finish();
    }

    /// <summary>All cavities in the die's frame with the board's outline.</summary>
    public static byte[] Gang(DieDesign design)
    {
        double length = design.Gang.BoardLengthMm;
        double width = design.Gang.BoardWidthMm;
        DxfText dxf = new(("EDGE", 1), ("BOARD", 5), ("CENTRE", 3), ("NOTE", 7));
        CommonCuts common = design.Gang.Common;
        foreach ((DieCavity cavity, int i) in design.Gang.Cavities.Select((c, i) => (c, i)))
        {
            if (!common.Has(i))
            {
                dxf.Polyline("EDGE", Seen(design, Placed(cavity, design.Edges[cavity.Placed.Part]!.Arcs.Vertices), length), true);
            }
        }

        foreach (RuleRun run in common.Runs)
        {
            dxf.Polyline("EDGE", Seen(design, run.Line, length), false);
        }

        dxf.Polyline("BOARD", [new(0, 0, 0), new(length, 0, 0), new(length, width, 0), new(0, width, 0)], true);
        foreach (DieCavity cavity in design.Gang.Cavities)
        {
            Point2 at = SeenAt(design, new Point2(cavity.Placed.XMm, cavity.Placed.YMm), length);
            dxf
                .Point("CENTRE", at)
                .Text(
                    "NOTE", at + new Point2(1, 1), Letters,
                    string.Create(CultureInfo.InvariantCulture, $"{cavity.Number}{design.Letter(cavity.Placed.Part)}"));
        }

        Notes(
            dxf, new Point2(0, -10), design, $"{design.Gang.Cavities.Count} cavities", EdgeLine(design.Request.Order),
            [BoardFrame(design.Request.Order), .. CommonWords(design)]);
        return dxf.Finish();
    }

    /// <summary>Centre lines of the slots, broken at bridges and corners, with bridges and the outlines of the ejection on layers of their
    /// own.</summary>
    public static byte[] Board(DieDesign design)
    {
        double length = design.Gang.BoardLengthMm;
        double width = design.Gang.BoardWidthMm;
        DieRule rule = design.Request.Order.Rule;
        double outside = rule.MiddleInWasteMm;
        DxfText dxf = new(("SLOT", 1), ("BRIDGE", 3), ("EJECT", 4), ("BOARD", 5), ("NOTE", 7));
        foreach ((DieCavity cavity, int i) in design.Gang.Cavities.Select((c, i) => (c, i)))
        {
            DieEdge edge = design.Edges[cavity.Placed.Part]!;
            (double, double)[]? own =
                design.Gang.Common.Has(i) ? [.. design.Gang.Common.Of(i).Where(r => r.Cavity == i).Select(r => (r.FromMm, r.ToMm))] : null;
            foreach ((IReadOnlyList<ArcVertex> run, bool bridge) in SlotRuns.Of(
                edge, design.Places[cavity.Placed.Part]!, design.Request.Order.Board, outside, own))
            {
                dxf.Polyline(bridge ? "BRIDGE" : "SLOT", Seen(design, Placed(cavity, run), length), false);
            }
        }

        dxf.Polyline("BOARD", [new(0, 0, 0), new(length, 0, 0), new(length, width, 0), new(0, width, 0)], true);
        foreach (IReadOnlyList<Point2> ring in design.Ejection.Rings)
        {
            dxf.Polyline("EJECT", Seen(design, [.. ring.Select(p => new ArcVertex(p.X, p.Y, 0))], length), true);
        }

        Notes(
            dxf, new Point2(0, -10), design, "slots of the board", SlotLine(design.Request.Order.Rule), BoardFrame(design.Request.Order),
            EjectionWords(design.Request.Order));
        return dxf.Finish();
    }

    private static void Notes(DxfText dxf, Point2 at, DieDesign design, string what, string line, params string[] more)
    {
        DieOrder order = design.Request.Order;
        string[] lines =
        [
            $"{order.Name}{(order.Title.Revision is { } r ? $" revision {r}" : string.Empty)}: {what}",
            $"lengths in mm, 1:1; {line}",
            order.DieView
                ? "DIE VIEW: seen from the die's edges, mirror image of the felt"
                : "PANEL VIEW: felt seen from the nap side; mirror for the die's side",
            .. more,
            SafetyWords.Trial,
            .. SafetyWords.Brief,
        ];
        for (int i = 0; i < lines.Length; i++)
        {
            dxf.Text("NOTE", at - new Point2(0, i * LineStep), Letters, lines[i]);
        }
    }

    private static string EdgeLine(DieOrder order) => $"line = cutting edge, panel inside, {BevelWords(order.Rule.Bevel)}";

    private static string SlotLine(DieRule rule)
    {
        string place = rule.MiddleInWasteMm switch
        {
            > 0 => string.Create(CultureInfo.InvariantCulture, $"{rule.MiddleInWasteMm:0.###} mm outside the cutting edge"),
            < 0 => string.Create(CultureInfo.InvariantCulture, $"{-rule.MiddleInWasteMm:0.###} mm inside the cutting edge"),
            _ => "straight under the cutting edge",
        };
        return string.Create(
            CultureInfo.InvariantCulture,
            $"SLOT, BRIDGE = middle line of the rule's body ({rule.ThicknessMm:0.##} mm), {place}; {BevelWords(rule.Bevel)}");
    }

    // Coordinates are those of what is seen: from the die's side the felt runs the other way.
    private static string BoardFrame(DieOrder order) =>
        $"x right, y up, from the board's lower left corner as drawn; feed and warp toward {order.SeenSign(true)}x; nap: "
            + $"{(order.Nap is { } nap ? $"toward {order.SeenSign(nap == NapDirection.Forward)}x" : "not stated")}";

    private static string EjectionWords(DieOrder order) => string.Create(
        CultureInfo.InvariantCulture,
        $"EJECT: outlines of {order.Ejection.Material}, {order.Ejection.ClearMm:0.##} mm off the faces of the rules, strips up to "
            + $"{EjectionPieces.StripMm} mm wide; placing it is for trial at the press");

    private static string[] CommonWords(DieDesign design) => design.Gang.Common.SharedMm > 0
        ?
        [
            string.Create(
                CultureInfo.InvariantCulture,
                $"COMMON CUT: {design.Gang.Common.SharedMm:0.0} mm of rule serve two cavities and are drawn once; where runs meet, open "
                    + $"polylines share the very end point; together they close every cavity"),
        ]
        : [];

    private static string BevelWords(RuleBevel bevel) => bevel switch
    {
        RuleBevel.SideWaste => "side bevel to the waste",
        RuleBevel.SidePanel => "side bevel to the panel",
        RuleBevel.LongCentre => "long centre bevel",
        _ => "centre bevel",
    };

    private static ArcVertex[] Placed(DieCavity cavity, IReadOnlyList<ArcVertex> chain) => [.. chain.Select(v =>
    {
        Point2 p = v.Point.Turned(double.DegreesToRadians(cavity.Placed.AngleDeg)) + new Point2(cavity.Placed.XMm, cavity.Placed.YMm);
        return new ArcVertex(p.X, p.Y, v.Turn);
    })];

    // From the die's side left and right change places, and arcs turn the other way.
    private static ArcVertex[] Seen(DieDesign design, IReadOnlyList<ArcVertex> chain, double length) =>
        [
            .. chain.Select(v =>
                SeenAt(design, v.Point, length) is var p && design.Request.Order.DieView ? new ArcVertex(p.X, p.Y, -v.Turn) : v),
        ];

    private static Point2 SeenAt(DieDesign design, Point2 p, double length) =>
        design.Request.Order.DieView ? new Point2(length - p.X, p.Y) : p;
}
