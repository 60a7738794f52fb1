using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Rolls;
using FeltNest.Rolls;
using FeltNest.Yield;

namespace FeltNest.Files.Dies;

/// <summary>Writes a gang die (schema feltnest/die/1) with its layout in it, so that it can be checked and planned with from the file
/// alone.</summary>
public static class DieWriter
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Write(DieDesign design)
    {
        (DieGang gang, DieOrder order) = (design.Gang, design.Request.Order);
        using JsonOutput json = new();
        json.Text("schema", SchemaName.Die)
            .Text("name", order.Name)
            .Text("revision", order.Title.Revision)
            .Text("replaces", order.Wishes.Replaces)
            .Text("napToward", order.Nap is { } nap ? NapWord.Of(nap) : null)
            .Objects(
                "cavities", gang.Cavities,
                (
                    item,
                    c) => item
                        .Number("number", c.Number)
                        .Number("panel", c.Placed.Part)
                        .Number("xMm", c.Placed.XMm)
                        .Number("yMm", c.Placed.YMm)
                        .Number("angleDeg", c.Placed.AngleDeg))
            .Number("feedMm", gang.FeedMm)
            .Number("ruleLengthMm", design.RuleLengthMm)
            .Number("edgeLengthMm", design.EdgeLengthMm)
            .Number("forceKn", design.Force.Kn)
            .Text("forceBasis", EnumWord.Of(order.Force.Basis))
            .Number("pressSharePercent", design.PressSharePercent)
            .Objects(
                "commonCuts", Shared(gang),
                (item, s) => item.Number("first", s.First).Number("second", s.Second).Number("lengthMm", s.LengthMm))
            .Number("leastRadiusMm", design.LeastRadiusMm)
            .Number("leastGapMm", design.LeastGapMm)
            .Arcs("arcs", design.Edges[design.Parts[0]]!.Arcs.Vertices)
            .Objects(
                "edges", design.Edges.Select((e, i) => (Edge: e, Part: i)).Where(e => e.Edge is not null),
                (item, e) => Edge(item, design, e.Edge!, e.Part))
            .Object("strike", strike => strike
                .Number("band", gang.Band + 1)
                .Number("repeats", gang.Repeats)
                .Objects("places", gang.Places, (item, p) => item.Number("xMm", p.X).Number("yMm", p.Y))
                .Number("originXMm", gang.Origin.X)
                .Number("originYMm", gang.Origin.Y)
                .Number("edgeLengthMm", gang.EdgeLengthMm)
                .Number("edgeWidthMm", gang.EdgeWidthMm))
            .Object("joint", joint => joint
                .Number("nominalMm", design.Joint.NominalMm)
                .Number("worstMm", design.Joint.WorstMm)
                .Number("acrossMm", design.Joint.AcrossMm)
                .Number("acrossWorstMm", design.Joint.AcrossWorstMm)
                .Number("bandMm", design.Joint.BandMm)
                .Number("bandWorstMm", design.Joint.BandWorstMm)
                .Number("feedToleranceMm", design.Joint.FeedToleranceMm)
                .Number("guideToleranceMm", design.Joint.GuideToleranceMm)
                .Number("edgeProfileMm", design.Joint.EdgeProfileMm))
            .Object("board", board => Board(board, design))
            .Object("rule", rule => rule
                .Number("thicknessMm", order.Rule.ThicknessMm)
                .Number("heightMm", order.Rule.HeightMm)
                .Text("bevel", EnumWord.Of(order.Rule.Bevel)))
            .Object("force", force => force
                .Number("nPerMmPerPly", order.Force.NPerMmPerPly)
                .Number("plies", order.Plies)
                .Number("closeAddedMm", design.Force.CloseAddedMm)
                .Number("lengthMm", design.Force.EdgeMm)
                .Number("ejectionPercent", order.Force.EjectionPercent)
                .Number("reservePercent", order.Force.ReservePercent)
                .Number("bareKn", design.Force.BareKn))
            .ObjectOrNull("press", design.Request.Press, Press)
            .ObjectOrNull("wear", order.Wear, (item, wear) => item
                .Number("price", (double)wear.Price)
                .Text("currency", wear.Currency)
                .Number("lifeStrikes", wear.LifeStrikes)
                .Number("reRules", wear.ReRules)
                .Number("reRulePrice", (double)wear.ReRulePrice))
            .Number("massKg", design.MassKg)
            .Number("panelProfileMm", order.Tolerances.PanelProfileMm)
            .Texts("notes", design.Notes.Select(n => n.Text))
            .Embedded("layout", LayoutWriter.Write(design.Request.Layout, YieldAccount.Of(design.Request.Layout)));
        return json.Finish();
    }

    // Two cavities may share more than one run: what counts is the pair.
    private static IEnumerable<(int First, int Second, double LengthMm)> Shared(DieGang gang) =>
        gang.Common.Runs.Where(r => r.Other is not null)
        .GroupBy(r => (gang.Cavities[r.Cavity].Number, gang.Cavities[r.Other!.Value].Number))
        .Select(g => (g.Key.Item1, g.Key.Item2, g.Sum(r => r.LengthMm)));

    private static void Edge(JsonOutput json, DieDesign design, DieEdge edge, int part) => json
        .Number("panel", part)
        .Text("letter", design.Letter(part) is { Length: > 0 } letter ? letter : null)
        .Number("deviationMm", edge.DeviationMm)
        .Number("offLayoutMm", edge.OffLayoutMm)
        .Number("corners", edge.Corners.Count)
        .Number("edgeLengthMm", edge.Arcs.Perimeter)
        .Number("ruleLengthMm", design.RingMm(part))
        .Arcs("arcs", edge.Arcs.Vertices)
        .Object(
            "ruleJoint",
            joint => joint
                .Number("x", design.Places[part]!.Joint.X)
                .Number("y", design.Places[part]!.Joint.Y)
                .Number("radiusMm", design.Places[part]!.JointRadiusMm))
        .Rows("bridges", design.Places[part]!.Bridges, b => [b.Place.X, b.Place.Y]);

    private static void Board(JsonOutput json, DieDesign design) => json
        .Number("lengthMm", design.Gang.BoardLengthMm)
        .Number("widthMm", design.Gang.BoardWidthMm)
        .Number("landMm", design.Request.Order.Board.LandMm)
        .Number("thicknessMm", design.Request.Order.Board.ThicknessMm)
        .Number("loadXMm", design.Gang.LoadCentre.X)
        .Number("loadYMm", design.Gang.LoadCentre.Y)
        .Number("onBedXMm", design.Gang.BoardCentreOnBed.X)
        .Number("onBedYMm", design.Gang.BoardCentreOnBed.Y)
        .Number("loadOffBedXMm", design.Gang.LoadOffBed.X)
        .Number("loadOffBedYMm", design.Gang.LoadOffBed.Y);

    private static void Press(JsonOutput json, PressSpec press) => json
        .Text("name", press.Name)
        .Number("ratedForceKn", press.RatedForceKn)
        .Number("allowedSharePercent", press.AllowedSharePercent)
        .Number("bedLengthMm", press.Bed.LengthMm)
        .Number("bedWidthMm", press.Bed.WidthMm)
        .Number("marginMm", press.Bed.MarginMm);
}
