using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;

namespace FeltNest.Tests.Geometry.NoFit;

/// <summary>A no-fit region the long way, as the judge of the fast one: sums of all convex pieces two by two, their union, and for slits
/// and single points every edge of every sum walked along for what no open sum covers.</summary>
internal sealed class PiecewiseRegion
{
    private readonly List<ConvexSum> sums;
    private readonly double touch;

    private PiecewiseRegion(List<ConvexSum> sums, double touch)
    {
        this.sums = sums;
        this.touch = touch;
        Rings = PiecewiseUnion.Rings(sums.Select(s => s.Corners));
        FilledArea = Rings.Sum(SignedArea);
        (Slits, IsolatedPoints) = Degenerate();
    }

    /// <summary>Boundary with area on one side: shells counter-clockwise, holes clockwise.</summary>
    internal IReadOnlyList<Point2[]> Rings { get; }

    /// <summary>Area of the region, holes taken out, mm2.</summary>
    internal double FilledArea { get; }

    /// <summary>Allowed segments without area.</summary>
    internal IReadOnlyList<NoFitSlit> Slits { get; }

    /// <summary>Allowed single points.</summary>
    internal IReadOnlyList<Point2> IsolatedPoints { get; }

    /// <summary>The region of <paramref name="moving"/> against <paramref name="standing"/>.</summary>
    internal static PiecewiseRegion Of(Outline standing, Outline moving)
    {
        IReadOnlyList<Point2[]> a = ConvexPieces.Of(standing);
        IReadOnlyList<Point2[]> b = ConvexPieces.Of(moving);
        List<ConvexSum> sums = new(a.Count * b.Count);
        foreach (Point2[] first in a)
        {
            foreach (Point2[] second in b)
            {
                sums.Add(ConvexSum.Of(first, second));
            }
        }

        double size = sums.Max(s => Math.Max(s.MaxX - s.MinX, s.MaxY - s.MinY));

        // Rounding of sums of coordinates; places closer to a side than this count as touching.
        return new PiecewiseRegion(sums, 1e-11 * size);
    }

    /// <summary>True when the parts overlap with the moving one's origin at this place; touching is not overlapping.</summary>
    internal bool Forbids(Point2 place)
    {
        foreach (ConvexSum sum in sums)
        {
            if (place.X > sum.MinX && place.X < sum.MaxX && place.Y > sum.MinY && place.Y < sum.MaxY && sum.Depth(place) > touch)
            {
                return true;
            }
        }

        return false;
    }

    private static double SignedArea(Point2[] ring)
    {
        double twice = 0;
        for (int i = 0; i < ring.Length; i++)
        {
            twice += (ring[i] - ring[0]).Cross(ring[(i + 1) % ring.Length] - ring[0]);
        }

        return twice / 2;
    }

    // Walks every edge of every sum, keeps what no open sum covers, and sorts that into boundary, slits (forbidden on both sides) and
    // single points.
    private (List<NoFitSlit> Slits, List<Point2> Points) Degenerate()
    {
        List<NoFitSlit> open = [];
        List<Point2> single = [];
        foreach (ConvexSum sum in sums)
        {
            for (int i = 0; i < sum.Corners.Length; i++)
            {
                Uncovered(sum.Corners[i], sum.Corners[(i + 1) % sum.Corners.Length], open, single);
            }
        }

        List<NoFitSlit> slits = [];
        foreach (NoFitSlit piece in open.Where(IsForbiddenOnBothSides))
        {
            AddOnce(slits, piece);
        }

        List<Point2> points = [];
        foreach (Point2 p in single)
        {
            bool near = open.Any(piece => DistanceTo(piece, p) < 4 * touch) || points.Any(q => (q - p).Length < 4 * touch);
            if (!near && !Forbids(p))
            {
                points.Add(p);
            }
        }

        return (slits, points);
    }

    private void Uncovered(Point2 start, Point2 end, List<NoFitSlit> open, List<Point2> single)
    {
        double length = (end - start).Length;
        double minX = Math.Min(start.X, end.X);
        double maxX = Math.Max(start.X, end.X);
        double minY = Math.Min(start.Y, end.Y);
        double maxY = Math.Max(start.Y, end.Y);
        List<(double From, double To)> covered = [];
        SortedSet<double> splits = [];
        foreach (ConvexSum other in sums)
        {
            if (other.MinX > maxX + touch || other.MaxX < minX - touch || other.MinY > maxY + touch || other.MaxY < minY - touch)
            {
                continue;
            }

            (double from, double to) = other.Covered(start, end, touch);
            if (from < to)
            {
                covered.Add((from, to));
                continue;
            }

            foreach (Point2 corner in other.Corners)
            {
                double share = (corner - start).Dot(end - start) / (length * length);
                if (share > 0 && share < 1 && (start + ((end - start) * share) - corner).Length <= touch)
                {
                    splits.Add(share);
                }
            }
        }

        covered.Sort();
        double at = 0;
        double point = 4 * touch / length;
        foreach ((double from, double to) in covered.Append((1, 1)))
        {
            if (from >= at)
            {
                if (from - at <= point)
                {
                    single.Add(start + ((end - start) * ((from + at) / 2)));
                }
                else
                {
                    AddPieces(start, end, at, from, splits, open);
                }
            }

            at = Math.Max(at, to);
        }
    }

    private static void AddPieces(Point2 start, Point2 end, double from, double to, SortedSet<double> splits, List<NoFitSlit> open)
    {
        foreach (double split in splits.Where(s => s > from && s < to).Append(to))
        {
            open.Add(new NoFitSlit { From = start + ((end - start) * from), To = start + ((end - start) * split) });
            from = split;
        }
    }

    private bool IsForbiddenOnBothSides(NoFitSlit piece)
    {
        Point2 along = piece.To - piece.From;
        Point2 middle = (piece.From + piece.To) * 0.5;
        Point2 side = along.Left * (Math.Min(1000 * touch, along.Length / 4) / along.Length);
        return Forbids(middle + side) && Forbids(middle - side);
    }

    private void AddOnce(List<NoFitSlit> slits, NoFitSlit piece)
    {
        for (int i = 0; i < slits.Count; i++)
        {
            if (DistanceTo(slits[i], piece.From) < 4 * touch && DistanceTo(slits[i], piece.To) < 4 * touch)
            {
                return;
            }

            if (DistanceTo(piece, slits[i].From) < 4 * touch && DistanceTo(piece, slits[i].To) < 4 * touch)
            {
                slits[i] = piece;
                return;
            }
        }

        slits.Add(piece);
    }

    private static double DistanceTo(NoFitSlit piece, Point2 p)
    {
        Point2 along = piece.To - piece.From;
        double share = Math.Clamp((p - piece.From).Dot(along) / along.Dot(along), 0, 1);
        return (piece.From + (along * share) - p).Length;
    }
}
