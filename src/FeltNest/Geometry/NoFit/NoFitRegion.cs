using FeltNest.Geometry.NoFit.Curves;

namespace FeltNest.Geometry.NoFit;

/// <summary>All places of a moving part's reference point (its own origin) at which it would overlap a standing part. The region is open:
/// its boundary, the slits and the isolated points in it are places where the parts touch and do not overlap.</summary>
/// <remarks>The region is the sum of the standing part and the negative of the moving one: what the convolution of their outlines winds
/// round (see
/// <see cref="ConvolutionCurves"/>). On a curve meetings that only begin there are no overlap, which gives the slits; the few places that
/// may be single points are asked directly. Parts with many spikes, whose convolution would cross itself too often, are summed with one
/// convex piece of the moving part after another, and the regions are united: an overlap of two open sets meets the interior of some piece.
/// E. Burke, R. Hellier, G. Kendall, G. Whitwell, <i>Complete and robust no-fit polygon generation</i>, EJOR 179, 2007, names the
/// degenerate cases.</remarks>
internal sealed class NoFitRegion
{
    // Curves longer than this many extents of the region cross themselves so often that pieces are cheaper; a ball's panel against itself
    // needs about five.
    private const double MostExtents = 40;

    private readonly double touch;

    private NoFitRegion(CurveRegion region, IEnumerable<Point2> points, double touch)
    {
        this.touch = touch;
        Rings = region.Rings;
        FilledArea = Rings.Sum(CurveRegion.SignedArea);
        Slits = region.Slits;
        List<Point2> isolated = [];
        foreach (Point2 p in points)
        {
            if (Forbids(p) && !isolated.Exists(q => (p - q).Length <= 4 * touch))
            {
                isolated.Add(p);
            }
        }

        IsolatedPoints = isolated;
    }

    /// <summary>Boundary with area on one side: shells counter-clockwise, holes clockwise.</summary>
    public IReadOnlyList<Point2[]> Rings { get; }

    /// <summary>Area of the region, holes taken out, mm2.</summary>
    public double FilledArea { get; }

    /// <summary>Allowed segments without area.</summary>
    public IReadOnlyList<NoFitSlit> Slits { get; }

    /// <summary>Allowed single points.</summary>
    public IReadOnlyList<Point2> IsolatedPoints { get; } = [];

    /// <summary>The region of <paramref name="moving"/> against <paramref name="standing"/>.</summary>
    public static NoFitRegion Of(Outline standing, Outline moving)
    {
        double extent = Math.Max(
            standing.MaxX - standing.MinX + moving.MaxX - moving.MinX, standing.MaxY - standing.MinY + moving.MaxY - moving.MinY);

        // Rounding of sums of coordinates; places closer to a side than this count as touching.
        double touch = 1e-11 * extent;
        Point2[] turned = [.. moving.Points.Select(p => -p)];
        CurveRegion region = ConvolutionCurves.Of(standing.Points, turned, MostExtents * extent) is { } curves
            ? CurveRegion.Of(curves, touch)
            : ByPieces(standing, moving, touch);
        if (region.Points.Count == 0)
        {
            return new NoFitRegion(region, [], touch);
        }

        PieceOverlap overlap = new(standing, moving);
        return new NoFitRegion(region, region.Points.Where(p => !overlap.At(p, touch)), touch);
    }

    /// <summary>True when the parts overlap with the moving one's origin at this place; touching is not overlapping.</summary>
    public bool Forbids(Point2 place)
    {
        bool inside = false;
        foreach (Point2[] ring in Rings)
        {
            Point2 a = ring[^1];
            foreach (Point2 b in ring)
            {
                if (IsNear(a, b, place))
                {
                    return false;
                }

                if (a.Y > place.Y != b.Y > place.Y && a.X + ((b.X - a.X) * ((place.Y - a.Y) / (b.Y - a.Y))) < place.X)
                {
                    inside = !inside;
                }

                a = b;
            }
        }

        return inside && !Slits.Any(s => IsNear(s.From, s.To, place)) && !IsolatedPoints.Any(p => (p - place).Length <= touch);
    }

    // Unions of neighbours first, so that each stays small.
    private static CurveRegion ByPieces(Outline standing, Outline moving, double touch)
    {
        List<CurveRegion> regions = [.. ConvexPieces.Of(moving).Select(piece =>
            CurveRegion.Of(ConvolutionCurves.Of(standing.Points, [.. piece.Select(p => -p)], double.PositiveInfinity)!, touch))];
        while (regions.Count > 1)
        {
            regions = [.. regions.Chunk(2).Select(pair => pair.Length == 1 ? pair[0] : CurveRegion.Union(pair[0], pair[1], touch))];
        }

        return regions[0];
    }

    private bool IsNear(Point2 a, Point2 b, Point2 place)
    {
        Point2 along = b - a;
        Point2 off = place - a;
        double share = Math.Clamp(off.Dot(along) / along.Dot(along), 0, 1);
        Point2 apart = off - (along * share);
        return apart.Dot(apart) <= touch * touch;
    }
}
