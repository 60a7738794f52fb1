using FeltNest.Die.Bend;
using FeltNest.Die.Board;
using FeltNest.Die.Edge;
using FeltNest.Die.Effort;
using FeltNest.Die.Gang;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Die.Stock;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Rolls;
using static FeltNest.InvariantText;

namespace FeltNest.Die;

/// <summary>Designs a gang die: cavities, edges, joints, force, and what to watch.</summary>
internal static class DieDesigner
{
    /// <summary>The die of a question.</summary>
    /// <param name="request">The question.</param>
    /// <param name="stop">Breaks the work off: half a die is of no use.</param>
    /// <exception cref="InputException">A band that the layout does not have.</exception>
    /// <exception cref="GeometryException">An outline too rough for arcs.</exception>
    /// <exception cref="NoAnswerException">No die tiles and fits, rules have no room, or strikes can cut into each other.</exception>
    /// <exception cref="OperationCanceledException">Broken off.</exception>
    public static DieDesign Run(GangRequest request, CancellationToken stop = default) => Run(request, new DieWork(stop), stop);

    /// <summary>The same, with its work counted.</summary>
    internal static DieDesign Run(GangRequest request, DieWork work, CancellationToken stop)
    {
        IReadOnlyList<LayoutPart> parts = request.Layout.Parts;
        IReadOnlyList<DieEdge?> edges = EdgeFitter.Edges(request.Layout, request.Band, stop);
        IReadOnlyList<NarrowPlace> narrow = NarrowPlaces.Of(edges, request.Order, work);
        RequireOwnRoom(request, narrow);
        DieGang gang = GangChooser.Choose(request, edges, work);
        RulePlaces?[] places = [.. edges.Select(edge => edge is null ? null : RulePlacing.Of(edge, request.Order.Board))];
        (double gap, Point2 where) = GapFinder.Within(parts, gang, request.Layout.GapMm, work);
        RequireRoom(request, gap, where);
        PressSpec? press = request.Press;
        StrikeJoint joint = GapFinder.Between(
            request.Layout, gang, press?.FeedToleranceMm ?? 0, press?.GuideToleranceMm ?? 0, request.Order.Tolerances, work);
        RequireApart(request, joint);
        CuttingForce force = GangChooser.Force(request, edges, gang, work);
        DieDesign bare = new()
        {
            Request = request,
            Gang = gang,
            Edges = edges,
            Places = places,
            Joint = joint,
            Force = force,
            LeastGapMm = gap,
            LeastGapPlace = where,
            Notes = [],
            Narrow = narrow,
            Springback = request.Bends.Count > 0 ? SpringbackFit.Of(request.Bends, request.Order.Rule.ThicknessMm) : null,
        };
        bare = WithRule(bare);

        // Outlines of the ejection are one piece of work that cannot be broken off half way: who stops does not wait for it.
        EjectionPieces ejection =
            Task.Run(() => EjectionOutlines.Of(bare), CancellationToken.None).WaitAsync(stop).GetAwaiter().GetResult();
        DieDesign whole = bare with { Ejection = ejection };
        MakeNote[] notes = [.. Makeability.Of(whole, work)];
        return whole with { Notes = notes };
    }

    // The rule in pieces, and how they are cut from stock.
    private static DieDesign WithRule(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        IReadOnlyList<RuleStrip> strips = RuleStrips.Of(design);
        return design with
        {
            Strips = strips,
            Stock = StockCutter.Of(strips, order.Wishes.Quantity, order.Rule.StockMm, order.Rule.CutLossMm),
            Cut = BoardCutter.Of(design),
        };
    }

    // Neither two strikes nor a strike and the band beside it may come into each other at the worst feed and guide.
    private static void RequireApart(GangRequest request, StrikeJoint joint)
    {
        if (joint.WorstMm <= 0 && request.Layout.GapMm > 0)
        {
            throw new NoAnswerException(Invariant(
                $"strikes can cut into each other: the gap of {joint.NominalMm:0.00} mm between them becomes {joint.WorstMm:0.00} mm "
                    + $"when the feed errs by {joint.FeedToleranceMm:0.##}, the guide by {joint.GuideToleranceMm:0.##}, the edge by half "
                    + $"of {joint.EdgeProfileMm:0.##} and its place by half of {joint.PositionMm:0.##} mm: a layout with a gap of "
                    + $"{request.Layout.GapMm - joint.WorstMm + 0.1:0.0} "
                    + $"mm or a better feed would do"));
        }

        if (joint.BandWorstMm <= 0 && request.Layout.GapMm > 0)
        {
            throw new NoAnswerException(Invariant(
                $"this die can cut into the band beside it: the {joint.BandMm:0.00} mm across to it become {joint.BandWorstMm:0.00} mm "
                    + $"when both guides err by {joint.GuideToleranceMm:0.##} and edges and places by half of "
                    + $"{joint.EdgeProfileMm:0.##} and {joint.PositionMm:0.##} mm: "
                    + $"a layout with a gap of {request.Layout.GapMm - joint.BandWorstMm + 0.1:0.0} mm, a better guide or one band "
                    + $"would do"));
        }
    }

    // The same holds for the rule of one cavity where it comes back beside itself, and no common cut is a way out.
    private static void RequireOwnRoom(GangRequest request, IReadOnlyList<NarrowPlace> narrow)
    {
        DieRule rule = request.Order.Rule;
        if (narrow.Where(n => n.WidthMm < rule.BodiesMm(n.InPanel) - 1e-4).MinBy(n => n.WidthMm - rule.BodiesMm(n.InPanel)) is { } worst)
        {
            throw new NoAnswerException(Invariant(
                $"the rule of {rule.ThicknessMm:0.##} mm has no room beside itself: a {worst.Name} of {worst.WidthMm:0.00} mm near "
                    + $"({worst.Place.X:0.0}, {worst.Place.Y:0.0}) of \"{request.Layout.Parts[worst.Part].Name}\", over "
                    + $"{worst.LengthMm:0.#} mm of edge, must hold two bodies of together {rule.BodiesMm(worst.InPanel):0.00} mm: a wider "
                    + $"{worst.Name}, a thinner rule or another bevel would do"));
        }
    }

    // Bodies of two rules must have room beside each other, unless the shop asks for a common cut.
    private static void RequireRoom(GangRequest request, double gap, Point2 where)
    {
        DieRule rule = request.Order.Rule;
        if (gap < rule.BodiesMm(false) - 1e-4 && !request.Order.CommonCut)
        {
            throw new NoAnswerException(Invariant(
                $"two rules of {rule.ThicknessMm:0.##} mm have no room in a gap of {gap:0.00} mm near ({where.X:0.0}, {where.Y:0.0}) of "
                    + $"the die: a layout with a gap of {rule.LeastGapMm(request.Order.Ejection.RoomMm):0.0} mm, a thinner rule, or "
                    + $"\"commonCut\": true would do"));
        }
    }
}
