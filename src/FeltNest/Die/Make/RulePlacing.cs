using FeltNest.Die.Edge;
using FeltNest.Die.Order;
using FeltNest.Geometry;

namespace FeltNest.Die.Make;

/// <summary>Chooses where the rule of a cavity closes and where the board bridges its slot.</summary>
internal static class RulePlacing
{
    // Places looked at along the edge.
    private const int Looks = 720;

    // Fewest bridges of a cavity: the board inside it hangs on them.
    private const int FewestBridges = 2;

    /// <summary>The places of an edge: the joint at a mitre, else in the middle of the run with the largest radius, bridges evenly by
    /// length, each moved to the flattest place within a quarter of its step.</summary>
    public static RulePlaces Of(DieEdge edge, DieBoard board)
    {
        double total = edge.Pieces.Sum(p => p.LengthMm);
        (Point2 Place, Point2 Direction, double Radius)[] along = Along(edge, total);

        // A long gentle run beats a short straight one: the flattest is where the least radius within a bridge's length to either side is
        // largest.
        int reach = Math.Max(1, (int)(board.BridgeMm * Looks / total));
        double Flat(int k) => Enumerable.Range(-reach, (2 * reach) + 1).Min(d => along[(k + d + Looks) % Looks].Radius);
        double[] flat = [.. Enumerable.Range(0, Looks).Select(Flat)];
        double best = flat.Max();
        int first = Array.FindIndex(flat, f => f >= best);
        int last = first;
        while (last + 1 < Looks && flat[last + 1] >= best)
        {
            last++;
        }

        // A rule that is mitred is cut there anyhow: it needs no other joint.
        Point2? mitre = edge.Corners.Count > 0 ? edge.Arcs.Vertices[edge.Corners[0]].Point : null;
        int joint = mitre is null ? (first + last) / 2 : CornerAt(edge, edge.Corners[0], total);
        int count = Math.Max(FewestBridges, (int)Math.Round(total / board.BridgeEveryMm));
        List<(Point2, Point2)> bridges = [];
        for (int b = 0; b < count; b++)
        {
            // Bridges start half a step from the joint.
            double wanted = joint + ((b + 0.5) * Looks / count);
            int quarter = Looks / count / 4;
            int at = Enumerable.Range(-quarter, (2 * quarter) + 1).Select(d => (((int)wanted + d) % Looks + Looks) % Looks)
                .OrderByDescending(k => Math.Min(flat[k], 1000)).ThenBy(k => Math.Abs(Math.IEEERemainder(k - wanted, Looks))).First();
            bridges.Add((along[at].Place, along[at].Direction));
        }

        return new RulePlaces(mitre ?? along[joint].Place, along[joint].Radius, bridges);
    }

    private static int CornerAt(DieEdge edge, int corner, double total) =>
        Math.Min(Looks - 1, (int)(edge.Pieces.Take(corner).Sum(p => p.LengthMm) / total * Looks));

    private static (Point2 Place, Point2 Direction, double Radius)[] Along(DieEdge edge, double total)
    {
        IReadOnlyList<EdgePiece> pieces = edge.Pieces;
        (Point2 Place, Point2 Direction, double Radius)[] along =
        [
            .. Enumerable.Range(0, Looks).Select(k => At(pieces, total * (k + 0.5) / Looks)),
        ];

        // A mitred corner is as bent as a rule can be.
        foreach (int corner in edge.Corners)
        {
            int at = CornerAt(edge, corner, total);
            along[at] = along[at] with { Radius = 0 };
        }

        return along;
    }

    private static (Point2 Place, Point2 Direction, double Radius) At(IReadOnlyList<EdgePiece> pieces, double length)
    {
        int i = 0;
        while (i + 1 < pieces.Count && length > pieces[i].LengthMm)
        {
            length -= pieces[i++].LengthMm;
        }

        double share = Math.Clamp(length / pieces[i].LengthMm, 0, 1);
        return (pieces[i].At(share), pieces[i].Direction(share), pieces[i].RadiusMm);
    }
}
