using FeltNest.Die.Edge;
using FeltNest.Die.Effort;
using FeltNest.Die.Order;
using FeltNest.Geometry;
using FeltNest.Rolls;
using static FeltNest.InvariantText;

namespace FeltNest.Die.Make;

/// <summary>Looks over a die for what cannot be bent, held, ejected or struck.</summary>
internal static class Makeability
{
    // Bends listed by place; more of the same kind are only counted.
    private const int MostBends = 4;

    /// <summary>The notes of a die.</summary>
    public static IEnumerable<MakeNote> Of(DieDesign design, DieWork work) =>
    [
        .. Overload(design), .. Assumed(design), .. Bends(design), .. Own(design), .. OnLaser(design), .. CommonCutAndEjection(design),
        .. Gaps(design, work),
        .. Stack(design), .. OnPress(design),
    ];

    private static IEnumerable<MakeNote> Overload(DieDesign design) =>
        design.DoNotRun is { } words ? [new MakeNote(words, null)] : [];

    private static IEnumerable<MakeNote> Assumed(DieDesign design) =>
        design.Request.Order.IsAssumed ? [new MakeNote(UsualOrder.Words, null)] : [];

    private static IEnumerable<MakeNote> Bends(DieDesign design)
    {
        DieRule rule = design.Request.Order.Rule;
        foreach (DieEdge edge in design.Edges.Where(e => e is not null).Select(e => e!))
        {
            EdgePiece[] tight = [.. edge.Pieces.Where(p => p.Turn != 0 && rule.InsideBendMm(p.RadiusMm, p.Turn > 0) < rule.LeastBendMm)];
            foreach (EdgePiece piece in tight.Take(MostBends))
            {
                yield return new MakeNote(
                    Invariant(
                        $"radius {piece.RadiusMm:0.00} mm at ({piece.Middle.X:0.0}, {piece.Middle.Y:0.0}) leaves the rule an inside "
                            + $"bend of {rule.InsideBendMm(piece.RadiusMm, piece.Turn > 0):0.00} mm, {rule.LeastBendMm:0.##} is its limit"),
                    piece.Middle);
            }

            if (tight.Length > MostBends)
            {
                yield return new MakeNote($"{tight.Length - MostBends} more bends are as tight", null);
            }

            if (edge.Corners.Count > 0)
            {
                Point2 at = edge.Arcs.Vertices[edge.Corners[0]].Point;
                yield return new MakeNote(
                    Invariant(
                        $"{edge.Corners.Count} corner{(edge.Corners.Count == 1 ? string.Empty : "s")}, the first at ({at.X:0.0}, "
                            + $"{at.Y:0.0}): the rule is mitred there, not bent"), at);
            }
        }
    }

    // Where the rule of a cavity stands near to itself, and corners too sharp for a mitre.
    private static IEnumerable<MakeNote> Own(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        foreach (NarrowPlace narrow in design.Narrow.Take(MostBends))
        {
            double body = narrow.InPanel ? order.Rule.BodyInPanelMm : order.Rule.BodyInWasteMm;
            yield return new MakeNote(
                Invariant(
                    $"{narrow.Name} of {narrow.WidthMm:0.00} mm near ({narrow.Place.X:0.0}, {narrow.Place.Y:0.0})"
                        + $"{OfPart(design, narrow.Part)}, {narrow.LengthMm:0.#} mm long, leaves "
                        + $"{Math.Max(0, narrow.WidthMm - (2 * body)):0.00} mm of board and ejection between the rule and itself, "
                        + $"{order.Ejection.RoomMm:0.##} is wanted: {narrow.Name} {(2 * body) + order.Ejection.RoomMm:0.00}"),
                narrow.Place);
        }

        if (design.Narrow.Count > MostBends)
        {
            yield return new MakeNote($"{design.Narrow.Count - MostBends} more places where a rule stands near to itself", null);
        }

        foreach (int part in design.Parts)
        {
            foreach ((Point2 at, double deg) in design.Edges[part]!.Needles().Take(MostBends))
            {
                yield return new MakeNote(
                    Invariant(
                        $"corner of {deg:0.0} degrees at ({at.X:0.0}, {at.Y:0.0}){OfPart(design, part)}: no rule is mitred so sharp, and "
                            + $"bodies of {order.Rule.ThicknessMm:0.##} mm stand in each other there"), at);
            }
        }
    }

    // What the laser's board has no room for, and pieces that no length of stock gives.
    private static IEnumerable<MakeNote> OnLaser(DieDesign design)
    {
        IReadOnlyList<string> left = design.Cut?.LeftOut ?? [];
        foreach (string words in left.Take(MostBends))
        {
            yield return new MakeNote($"board for the laser: {words}", null);
        }

        if (left.Count > MostBends)
        {
            yield return new MakeNote($"board for the laser: {left.Count - MostBends} more have no room", null);
        }

        if (design.Request.Order.Rule.StockMm is { } stock && design.Strips.Any(s => s.BlankMm > stock + 1e-6))
        {
            yield return new MakeNote(
                Invariant(
                    $"a piece of rule of {design.Strips.Max(s => s.BlankMm):0.0} mm is longer than the {stock:0.##} mm of a length of "
                        + $"stock"),
                null);
        }
    }

    private static string OfPart(DieDesign design, int part) =>
        design.Letter(part) is { Length: > 0 } letter ? $" of part {letter}" : string.Empty;

    private static IEnumerable<MakeNote> CommonCutAndEjection(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        if (design.Gang.Common.SharedMm > 0)
        {
            yield return new MakeNote(
                Invariant(
                    $"common cut: {design.Gang.Common.SharedMm:0.0} mm of rule serve two cavities, drawn and counted once; nothing "
                        + $"ejects between them there, rules butt where runs meet"), null);
            if (order.Rule.Bevel is RuleBevel.SideWaste or RuleBevel.SidePanel)
            {
                yield return new MakeNote(
                    "common cut with a side bevel: there is no waste for it, the body leans into the panel beside it: a centre bevel is "
                        + "usual", null);
            }
        }

        if (design.Ejection.Empty is { Count: > 0 } empty)
        {
            yield return new MakeNote(
                Invariant(
                    $"no ejection has room in cavit{(empty.Count == 1 ? "y" : "ies")} {string.Join(", ", empty.Take(MostBends))}"
                        + $"{(empty.Count > MostBends ? " ..." : string.Empty)}: panels will stick in the die"), null);
        }
    }

    private static IEnumerable<MakeNote> Gaps(DieDesign design, DieWork work)
    {
        DieOrder order = design.Request.Order;
        double wanted = order.Rule.LeastGapMm(order.Ejection.RoomMm);
        double gap = design.LeastGapMm;
        if (design.Joint.WorstMm <= 0)
        {
            yield return new MakeNote(
                Invariant(
                    $"strikes join without a gap: with feed and guide at their worst they overlap by {-design.Joint.WorstMm:0.00} mm, "
                        + $"and panels at the joint are that much short or joined"), design.Joint.Place);
        }

        if (NearRules.LengthMm(design, work) is var near and > 0)
        {
            yield return new MakeNote(
                Invariant(
                    $"{near:0} mm of edge stand nearer to another cavity's than a rule is thick without being the same line: those "
                        + $"rules have no room, an outline that fits itself or a gap of {wanted:0.00} mm would do"), null);
        }

        if (gap < wanted - 1e-4 && design.Gang.Common.SharedMm == 0)
        {
            yield return new MakeNote(
                Invariant(
                    $"gap {gap:0.00} mm near ({design.LeastGapPlace.X:0.0}, {design.LeastGapPlace.Y:0.0}) of the die leaves "
                        + $"{Math.Max(0, gap - (2 * order.Rule.BodyInWasteMm)):0.00} mm of board and ejection between the rules, "
                        + $"{order.Ejection.RoomMm:0.##} is wanted: gap {wanted:0.00}"),
                design.LeastGapPlace);
        }
    }

    private static IEnumerable<MakeNote> Stack(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        if (order.StackMm > order.CavityDepthMm)
        {
            yield return new MakeNote(
                Invariant(
                    $"stack of {order.Plies} x {order.FeltThicknessMm:0.##} = {order.StackMm:0.0} mm does not go into the "
                        + $"{order.CavityDepthMm:0.0} mm from board to edge: a rule of "
                        + $"{Math.Ceiling(order.Board.ThicknessMm + order.StackMm + 1):0} mm or a thinner board is wanted"),
                null);
        }
        else if (order.CavityDepthMm - order.StackMm < 1)
        {
            yield return new MakeNote(
                Invariant($"only {order.CavityDepthMm - order.StackMm:0.0} mm above the stack are left for pressed ejection"), null);
        }
    }

    private static IEnumerable<MakeNote> OnPress(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        if (order.Force.Basis == ForceBasis.Placeholder)
        {
            yield return new MakeNote("force per mm is NOT MEASURED: do not set the press from this", null);
        }

        if (design.Request.Press is not { } press)
        {
            yield return new MakeNote("no press was given: bed, force and tolerances of the feed are not looked at", null);
            yield break;
        }

        if (order.Plies > press.MostPlies)
        {
            yield return new MakeNote($"{order.Plies} plies, press {press.Name} takes {press.MostPlies}", null);
        }

        if (press.DaylightMm is { } daylight && order.Rule.HeightMm + order.StackMm > daylight)
        {
            yield return new MakeNote(
                Invariant($"rule and stack are {order.Rule.HeightMm + order.StackMm:0.0} mm high, the press opens {daylight:0.#} mm"),
                null);
        }

        foreach (MakeNote note in Standing(design, press))
        {
            yield return note;
        }
    }

    // Where the die stands on the press, and whether it is one of its dies.
    private static IEnumerable<MakeNote> Standing(DieDesign design, PressSpec press)
    {
        Point2 off = design.Gang.LoadOffBed;
        if (off.Length > 1)
        {
            yield return new MakeNote(
                Invariant(
                    $"the load stands {off.X:0.0} mm along and {off.Y:0.0} mm across from the bed's middle: keep it within what the "
                        + $"press's maker allows"), null);
        }

        if (design.Gang.Places.Count > 1)
        {
            yield return new MakeNote(
                $"one feed takes {design.Gang.Places.Count} strikes side by side: the head or the die moves across between them", null);
        }

        if (press.Dies.Count > 0 && !press.Dies.Contains(design.Request.Order.Name))
        {
            yield return new MakeNote(
                $"press {press.Name} names the dies that fit it, and {design.Request.Order.Name} is not among them", null);
        }
    }
}
