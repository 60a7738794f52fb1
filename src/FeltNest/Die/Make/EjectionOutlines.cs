using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Geometry;

namespace FeltNest.Die.Make;

/// <summary>Works out the outlines of the ejection.</summary>
internal static class EjectionOutlines
{
    // Outlines are cut by hand or jet: so far they may lie off, always on the side away from the rule.
    private const double Chord = 0.02;

    /// <summary>The ejection of a die.</summary>
    public static EjectionPieces Of(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        double clear = order.Ejection.ClearMm;
        double least = Math.Max(0.2, order.Ejection.RoomMm - (2 * clear));

        // On a common cut a body that leans to one side stands in either panel.
        double inPanel = design.Gang.Common.SharedMm > 0
            ? Math.Max(order.Rule.BodyInWasteMm, order.Rule.ThicknessMm - order.Rule.BodyInWasteMm)
            : order.Rule.ThicknessMm - order.Rule.BodyInWasteMm;
        Dictionary<int, IReadOnlyList<IReadOnlyList<Point2>>> inside = [];
        Dictionary<int, IReadOnlyList<Point2[]>> outside = [];
        foreach (int part in design.Parts)
        {
            IReadOnlyList<Point2> edge = design.Edges[part]!.Arcs.ContainingPolygon(Chord).Points;
            inside[part] = Strip(edge, inPanel + clear + Chord, least);
            outside[part] = PolygonSets.Offset(edge, order.Rule.BodyInWasteMm + clear);
        }

        IReadOnlyList<Point2> Placed(IReadOnlyList<Point2> ring, DieCavity c) =>
            [.. ring.Select(p => p.Turned(double.DegreesToRadians(c.Placed.AngleDeg)) + new Point2(c.Placed.XMm, c.Placed.YMm))];
        DieGang gang = design.Gang;
        double rim =
            Math.Max(0, order.Board.LandMm - Math.Min(order.Board.LandMm, order.Rule.BodyInWasteMm + clear + EjectionPieces.StripMm));
        Point2[] board =
        [
            new(rim, rim), new(gang.BoardLengthMm - rim, rim), new(gang.BoardLengthMm - rim, gang.BoardWidthMm - rim),
            new(rim, gang.BoardWidthMm - rim),
        ];
        IReadOnlyList<IReadOnlyList<Point2>> web =
            PolygonSets.Remainder(board, [.. gang.Cavities.Select(c => Placed(outside[c.Placed.Part][0], c))], least);
        IEnumerable<IReadOnlyList<Point2>> pockets = gang.Cavities.SelectMany(c => outside[c.Placed.Part].Skip(1).SelectMany(pocket =>
            Pocket(
                Placed(pocket, c), gang.Cavities.Where(o => o.Number != c.Number).Select(o => Placed(outside[o.Placed.Part][0], o)),
                least)));
        return new EjectionPieces(
            [.. gang.Cavities.SelectMany(c => inside[c.Placed.Part].Select(r => Placed(r, c))), .. web, .. pockets],
            [.. gang.Cavities.Where(c => inside[c.Placed.Part].Count == 0).Select(c => c.Number)]);
    }

    // Waste that the rule of one cavity closes in, as behind a narrow mouth; another cavity may stand in it.
    private static IReadOnlyList<IReadOnlyList<Point2>> Pocket(
        IReadOnlyList<Point2> pocket, IEnumerable<IReadOnlyList<Point2>> others, double least)
    {
        (double low, double high) = (pocket.Min(p => p.X), pocket.Max(p => p.X));
        (double down, double up) = (pocket.Min(p => p.Y), pocket.Max(p => p.Y));
        return PolygonSets.Remainder(
            pocket, [.. others.Where(o => o.All(p => p.X >= low && p.X <= high && p.Y >= down && p.Y <= up))], least);
    }

    // Along the rule inside a cavity: between two lines so far inside the edge; places narrower than the least are left out.
    private static IReadOnlyList<IReadOnlyList<Point2>> Strip(IReadOnlyList<Point2> edge, double off, double least) =>
        [
            .. PolygonSets.Offset(edge, -off)
                .Where(outer => IsCounterClockwise(outer))
                .SelectMany(outer =>
                    PolygonSets.Remainder(outer, [.. PolygonSets.Offset(outer, -EjectionPieces.StripMm).Where(IsCounterClockwise)], least)),
        ];

    private static bool IsCounterClockwise(IReadOnlyList<Point2> ring) =>
        Enumerable.Range(0, ring.Count).Sum(i => ring[i].Cross(ring[(i + 1) % ring.Count])) > 0;
}
