using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Rolls;
using FeltNest.Rolls;
using FeltNest.Yield;
using static FeltNest.Files.Dies.DieDocument;
using static FeltNest.Files.Dies.DieRuleFields;

namespace FeltNest.Files.Dies;

/// <summary>Writes a gang die (schema feltnest/die/1) with its layout in it, so that it can be checked and planned with from the file
/// alone.</summary>
internal static class DieWriter
{
    // Long because it writes the fields of a document in their order.
    /// <summary>The file's bytes.</summary>
    public static byte[] Write(DieDesign design)
    {
        (DieGang gang, DieOrder order) = (design.Gang, design.Request.Order);
        using JsonOutput json = new(DieDocument.Document);
        json.Text(DieDocument.Name, order.Name)
            .Text(DieDocument.Revision, order.Title.Revision)
            .Text(DieDocument.Replaces, order.Wishes.Replaces)
            .Text(DieDocument.NapToward, order.Nap is { } nap ? NapWord.Of(nap) : null)
            .Objects(
                DieDocument.Cavities, gang.Cavities,
                (
                    item,
                    c) => item
                        .Number(CavityFields.Number, c.Number)
                        .Number(PlacedFields.Panel, c.Placed.Part)
                        .Number(PlacedFields.XMm, c.Placed.XMm)
                        .Number(PlacedFields.YMm, c.Placed.YMm)
                        .Number(PlacedFields.AngleDeg, c.Placed.AngleDeg))
            .Number(DieDocument.FeedMm, gang.FeedMm)
            .Number(DieDocument.RuleLengthMm, design.RuleLengthMm)
            .Number(DieDocument.EdgeLengthMm, design.EdgeLengthMm)
            .Number(DieDocument.ForceKn, design.Force.Kn)
            .Text(DieDocument.ForceBasis, EnumWord.Of(order.Force.Basis))
            .Number(DieDocument.PressSharePercent, design.PressSharePercent)
            .Objects(
                DieDocument.CommonCuts, Shared(gang),
                (
                    item,
                    s) => item
                        .Number(CommonCutFields.First, s.First)
                        .Number(CommonCutFields.Second, s.Second)
                        .Number(CommonCutFields.LengthMm, s.LengthMm))
            .Number(DieDocument.LeastRadiusMm, design.LeastRadiusMm)
            .Number(DieDocument.LeastGapMm, design.LeastGapMm)
            .Arcs(DieDocument.Arcs, design.Edges[design.Parts[0]]!.Arcs.Vertices)
            .Objects(
                DieDocument.Edges, design.Edges.Select((e, i) => (Edge: e, Part: i)).Where(e => e.Edge is not null),
                (item, e) => Edge(item, design, e.Edge!, e.Part))
            .Objects(DieDocument.Strips, design.Strips, StripWriter.Strip)
            .ObjectOrNull(DieDocument.Stock, design.Stock, (item, stock) => StripWriter.Stock(item, stock, order.Wishes.Quantity));
        Made(json, design);
        json.Number(DieDocument.MassKg, design.MassKg)
            .Number(DieDocument.PanelProfileMm, order.Tolerances.PanelProfileMm)
            .Number(DieDocument.PositionMm, order.Tolerances.PositionMm)
            .Texts(DieDocument.Notes, design.Notes.Select(n => n.Text))
            .Embedded(DieDocument.Layout, LayoutWriter.Write(design.Request.Layout, YieldAccount.Of(design.Request.Layout)));
        return json.Finish();
    }

    // Long because it writes the fields of a document in their order.
    // How it is struck, and what it is made and struck with.
    private static void Made(JsonOutput json, DieDesign design)
    {
        (DieGang gang, DieOrder order) = (design.Gang, design.Request.Order);
        json.Object(DieDocument.Strike, strike => strike
                .Number(StrikeFields.Band, gang.Band + 1)
                .Number(StrikeFields.Repeats, gang.Repeats)
                .Objects(StrikeFields.Places, gang.Places, (item, p) => item.Number(StruckFields.XMm, p.X).Number(StruckFields.YMm, p.Y))
                .Number(StrikeFields.OriginXMm, gang.Origin.X)
                .Number(StrikeFields.OriginYMm, gang.Origin.Y)
                .Number(StrikeFields.EdgeLengthMm, gang.EdgeLengthMm)
                .Number(StrikeFields.EdgeWidthMm, gang.EdgeWidthMm))
            .Object(DieDocument.Joint, joint => joint
                .Number(JointFields.NominalMm, design.Joint.NominalMm)
                .Number(JointFields.WorstMm, design.Joint.WorstMm)
                .Number(JointFields.AcrossMm, design.Joint.AcrossMm)
                .Number(JointFields.AcrossWorstMm, design.Joint.AcrossWorstMm)
                .Number(JointFields.BandMm, design.Joint.BandMm)
                .Number(JointFields.BandWorstMm, design.Joint.BandWorstMm)
                .Number(JointFields.FeedToleranceMm, design.Joint.FeedToleranceMm)
                .Number(JointFields.GuideToleranceMm, design.Joint.GuideToleranceMm)
                .Number(JointFields.EdgeProfileMm, design.Joint.EdgeProfileMm))
            .Object(DieDocument.Board, board => Board(board, design))
            .Object(DieDocument.Rule, rule => rule
                .Number(RuleFields.ThicknessMm, order.Rule.ThicknessMm)
                .Number(RuleFields.HeightMm, order.Rule.HeightMm)
                .Number(RuleFields.EjectionRoomMm, order.Ejection.RoomMm)
                .Text(RuleFields.Bevel, EnumWord.Of(order.Rule.Bevel)))
            .Object(DieDocument.Force, force => force
                .Number(ForceFields.NPerMmPerPly, order.Force.NPerMmPerPly)
                .Number(ForceFields.Plies, order.Plies)
                .Number(ForceFields.CloseAddedMm, design.Force.CloseAddedMm)
                .Number(ForceFields.LengthMm, design.Force.EdgeMm)
                .Number(ForceFields.EjectionPercent, order.Force.EjectionPercent)
                .Number(ForceFields.ReservePercent, order.Force.ReservePercent)
                .Number(ForceFields.CloseMm, order.Force.CloseMm)
                .Number(ForceFields.BareKn, design.Force.BareKn))
            .ObjectOrNull(DieDocument.Press, design.Request.Press, Press)
            .ObjectOrNull(DieDocument.Wear, order.Wear, (item, wear) => item
                .Number(WearFields.Price, (double)wear.Price)
                .Text(WearFields.Currency, wear.Currency)
                .Number(WearFields.LifeStrikes, wear.LifeStrikes)
                .Number(WearFields.ReRules, wear.ReRules)
                .Number(WearFields.ReRulePrice, (double)wear.ReRulePrice));
    }

    // Two cavities may share more than one run: what counts is the pair.
    private static IEnumerable<(int First, int Second, double LengthMm)> Shared(DieGang gang) =>
        gang.Common.Runs.Where(r => r.Other is not null)
        .GroupBy(r => (gang.Cavities[r.Cavity].Number, gang.Cavities[r.Other!.Value].Number))
        .Select(g => (g.Key.Item1, g.Key.Item2, g.Sum(r => r.LengthMm)));

    private static void Edge(JsonOutput json, DieDesign design, DieEdge edge, int part) => json
        .Number(EdgeFields.Panel, part)
        .Text(EdgeFields.Letter, design.Letter(part) is { Length: > 0 } letter ? letter : null)
        .Number(EdgeFields.DeviationMm, edge.DeviationMm)
        .Number(EdgeFields.OffLayoutMm, edge.OffLayoutMm)
        .Number(EdgeFields.Corners, edge.Corners.Count)
        .Number(EdgeFields.EdgeLengthMm, edge.Arcs.Perimeter)
        .Number(EdgeFields.RuleLengthMm, design.RingMm(part))
        .Arcs(EdgeFields.Arcs, edge.Arcs.Vertices)
        .Object(
            EdgeFields.RuleJoint,
            joint => joint
                .Number(RuleJointFields.X, design.Places[part]!.Joint.X)
                .Number(RuleJointFields.Y, design.Places[part]!.Joint.Y)
                .Number(RuleJointFields.RadiusMm, design.Places[part]!.JointRadiusMm))
        .Objects(
            EdgeFields.Narrow, design.Narrow.Where(n => n.Part == part),
            (item, n) => item
                .Text(NarrowFields.Between, n.InPanel ? NarrowFields.Panel : NarrowFields.Waste)
                .Number(NarrowFields.WidthMm, n.WidthMm)
                .Number(NarrowFields.X, n.Place.X)
                .Number(NarrowFields.Y, n.Place.Y)
                .Number(NarrowFields.LengthMm, n.LengthMm))
        .Rows(EdgeFields.Bridges, design.Places[part]!.Bridges, b => [b.Place.X, b.Place.Y]);

    private static void Board(JsonOutput json, DieDesign design) => json
        .Number(BoardFields.LengthMm, design.Gang.BoardLengthMm)
        .Number(BoardFields.WidthMm, design.Gang.BoardWidthMm)
        .Number(BoardFields.LandMm, design.Request.Order.Board.LandMm)
        .Number(BoardFields.ThicknessMm, design.Request.Order.Board.ThicknessMm)
        .ObjectOrNull(BoardFields.Laser, design.Cut, (laser, cut) => laser
            .Number(CutBoardFields.KerfMm, design.Request.Order.Board.Laser!.KerfMm)
            .Number(CutBoardFields.SlotMm, design.Request.Order.Board.Laser.SlotMm ?? design.Request.Order.Rule.ThicknessMm)
            .Number(CutBoardFields.BridgesMm, design.Request.Order.Board.BridgeMm)
            .Flag(CutBoardFields.Mirrored, design.Request.Order.DieView)
            .Rows(CutBoardFields.Splits, cut.Splits, s => cut.SplitsAlongX ? [s, 0] : [0, s]))
        .Number(BoardFields.LoadXMm, design.Gang.LoadCentre.X)
        .Number(BoardFields.LoadYMm, design.Gang.LoadCentre.Y)
        .Number(BoardFields.OnBedXMm, design.Gang.BoardCentreOnBed.X)
        .Number(BoardFields.OnBedYMm, design.Gang.BoardCentreOnBed.Y)
        .Number(BoardFields.LoadOffBedXMm, design.Gang.LoadOffBed.X)
        .Number(BoardFields.LoadOffBedYMm, design.Gang.LoadOffBed.Y);

    private static void Press(JsonOutput json, PressSpec press) => json
        .Text(PressFields.Name, press.Name)
        .Number(PressFields.RatedForceKn, press.RatedForceKn)
        .Number(PressFields.AllowedSharePercent, press.AllowedSharePercent)
        .Number(PressFields.BedLengthMm, press.Bed.LengthMm)
        .Number(PressFields.BedWidthMm, press.Bed.WidthMm)
        .Number(PressFields.MarginMm, press.Bed.MarginMm);
}
