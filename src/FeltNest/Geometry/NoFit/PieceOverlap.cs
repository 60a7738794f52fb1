namespace FeltNest.Geometry.NoFit;

/// <summary>Tells for single places whether two parts overlap, by their convex pieces: two open sets overlap exactly where the interiors of
/// some pair of pieces do.</summary>
internal sealed class PieceOverlap
{
    private readonly List<ConvexSum> sums = [];

    /// <summary>Pieces of both parts, summed two by two.</summary>
    internal PieceOverlap(Outline standing, Outline moving)
    {
        IReadOnlyList<Point2[]> a = ConvexPieces.Of(standing);
        IReadOnlyList<Point2[]> b = ConvexPieces.Of(moving);
        foreach (Point2[] first in a)
        {
            sums.AddRange(b.Select(second => ConvexSum.Of(first, second)));
        }
    }

    /// <summary>True when the parts overlap deeper than <paramref name="touch"/> mm with the moving one's origin at this place.</summary>
    internal bool At(Point2 place, double touch) => sums.Exists(sum =>
        place.X > sum.MinX && place.X < sum.MaxX && place.Y > sum.MinY && place.Y < sum.MaxY && sum.Depth(place) > touch);
}
