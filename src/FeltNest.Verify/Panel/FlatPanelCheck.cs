using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Seam;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;

namespace FeltNest.Panel;

/// <summary>Proves a flat panel from its own record and the request, by means that share nothing with the solve: a mesh of small triangles,
/// sums along the edge, and polygon geometry.</summary>
internal static class FlatPanelCheck
{
    // Points taken on each arc: the polygon through them is within a few thousandths of a millimetre of the arcs.
    private const int ArcPoints = 40;

    /// <summary>Looks at a panel.</summary>
    public static FlatPanelFindings Of(FlatPanel panel, PanelRequest request)
    {
        FlatShapeFindings shape = OfShape(panel.Arcs.Vertices, panel.Outline.Points);
        (double energy, double sphere) = Meshed(panel.Field, request, 1);
        (double coarseEnergy, double coarseSphere) = Meshed(panel.Field, request, 2);
        return new FlatPanelFindings
        {
            OutlineInsideMm = shape.OutlineInsideMm,
            OutlineOutsideMm = shape.OutlineOutsideMm,
            AreaDifferencePercent = Percent(shape.AreaMm2, panel.Arcs.Area),
            HalfTurnMm = shape.HalfTurnMm,
            SeamLengthDifferencePercent = Percent(SeamLength(panel.EdgeMap), request.RadiusMm * request.Seam.Length),
            SphereAreaDifferencePercent = Percent(Settled(sphere, coarseSphere), 2 * Math.PI * request.RadiusMm * request.RadiusMm),
            EdgeOffSeamMm = OffSeam(panel.Field, request),
            EnergyDifferencePercent = Percent(Settled(energy, coarseEnergy), panel.Strain.EnergyNmm),
            EdgeMismatchPercent = Mismatch(panel.EdgeMap),
            EdgeAboveLimitPercent = AboveLimit(panel.EdgeMap, request),
        };
    }

    /// <summary>Looks at a cut edge alone: its arcs, and the polygon that is said to contain them.</summary>
    internal static FlatShapeFindings OfShape(IReadOnlyList<ArcVertex> arcs, IReadOnlyList<Point2> corners)
    {
        List<Coordinate> arcPoints = PointsOn(arcs);
        Polygon fine = new(new LinearRing([.. arcPoints, arcPoints[0]]));
        Polygon outline = Ring(corners);
        Polygon turned = Ring([.. arcs.Select(v => -v.Point)]);
        IndexedPointInAreaLocator inside = new(outline);
        static Point2 Mean(Point2 a, Point2 b) => (a + b) * 0.5;
        (double inward, double outward) = (0, 0);
        foreach (Coordinate c in arcPoints)
        {
            bool covered = inside.Locate(c) != Location.Exterior;
            inward = Math.Max(inward, covered ? 0 : outline.ExteriorRing.Distance(new NetTopologySuite.Geometries.Point(c)));
        }

        for (int i = 0; i < corners.Count; i++)
        {
            Point2 here = corners[i];
            Point2 next = corners[(i + 1) % corners.Count];
            foreach (Point2 p in new[] { here, Mean(here, next) })
            {
                outward = Math.Max(outward, fine.Distance(new NetTopologySuite.Geometries.Point(p.X, p.Y)));
            }
        }

        double halfTurn = turned.Coordinates.Max(c => fine.ExteriorRing.Distance(new NetTopologySuite.Geometries.Point(c)));
        return new FlatShapeFindings
        {
            OutlineInsideMm = inward,
            OutlineOutsideMm = outward,
            AreaMm2 = fine.Area,
            PerimeterMm = fine.Length,
            HalfTurnMm = halfTurn,
        };
    }

    private static double Percent(double found, double stated) => 100 * Math.Abs((found / stated) - 1);

    // Errors of the mesh fall with the square of its size: two sizes give the limit.
    private static double Settled(double fine, double coarse) => ((4 * fine) - coarse) / 3;

    private static Polygon Ring(IReadOnlyList<Point2> points)
    {
        Coordinate[] ring = [.. points.Select(p => new Coordinate(p.X, p.Y)), new Coordinate(points[0].X, points[0].Y)];
        return new Polygon(new LinearRing(ring));
    }

    private static List<Coordinate> PointsOn(IReadOnlyList<ArcVertex> arcs)
    {
        List<Coordinate> points = [];
        for (int i = 0; i < arcs.Count; i++)
        {
            ArcVertex from = arcs[i];
            Point2 to = arcs[(i + 1) % arcs.Count].Point;
            Point2 chord = to - from.Point;
            for (int k = 0; k < ArcPoints; k++)
            {
                // The point of an arc after a share of its turn, from the chord alone.
                double share = (double)k / ArcPoints;
                double half = from.Turn / 2;
                double reach = from.Turn == 0 ? share : Math.Sin(share * half) / Math.Sin(half);
                Point2 p = from.Point + (chord.Turned((share * half) - half) * reach);
                points.Add(new Coordinate(p.X, p.Y));
            }
        }

        return points;
    }

    private static double SeamLength(IReadOnlyList<EdgePoint> edge)
    {
        double sum = 0;
        for (int i = 0; i < edge.Count; i++)
        {
            EdgePoint a = edge[i];
            EdgePoint b = edge[(i + 1) % edge.Count];
            sum += Piece(a, b) * (1 + ((a.StretchPercent + b.StretchPercent) / 200));
        }

        return sum;
    }

    private static double Piece(EdgePoint a, EdgePoint b) => new Point2(b.U - a.U, b.V - a.V).Length;

    /// <summary>Greatest difference in flat length between pieces of edge that meet, per cent.</summary>
    internal static double Mismatch(IReadOnlyList<EdgePoint> edge)
    {
        double worst = 0;
        int n = edge.Count;
        for (int i = 0; i < n; i++)
        {
            int mate = (n + (n / 4) - i - 1) % n;
            worst = Math.Max(worst, Percent(Piece(edge[i], edge[(i + 1) % n]), Piece(edge[mate], edge[(mate + 1) % n])));
        }

        return worst;
    }

    // Pieces of edge against the arcs of great circle between their places on the seam.
    private static double AboveLimit(IReadOnlyList<EdgePoint> edge, PanelRequest request)
    {
        if (request is not { Method: FlatteningMethod.Elastic, Edge: EdgeRule.Mated, EdgeLimit: { } limit })
        {
            return 0;
        }

        double worst = 0;
        for (int i = 0; i < edge.Count; i++)
        {
            EdgePoint a = edge[i];
            EdgePoint b = edge[(i + 1) % edge.Count];
            double chord = (request.Seam.At(b.S).Point - request.Seam.At(a.S).Point).Length;
            double arc = 2 * request.RadiusMm * Math.Asin(chord / 2);
            worst = Math.Max(worst, 100 * (1 - (arc / Piece(a, b)) - limit));
        }

        return worst;
    }

    private static double OffSeam(StrainField field, PanelRequest request)
    {
        double worst = 0;
        for (int spoke = 0; spoke < field.Spokes; spoke++)
        {
            SpherePoint there = request.Seam.At(2 * Math.PI * spoke / field.Spokes).Point;
            worst = Math.Max(worst, (field.At(field.Rings - 1, spoke).Fitted - there).Length);
        }

        return worst * request.RadiusMm;
    }

    // Energy of, and area on the sphere under, triangles between every stride-th ring and spoke.
    // Long because energy and area of a triangle are one derivation, and both are summed over one mesh.
    private static (double Energy, double Sphere) Meshed(StrainField field, PanelRequest request, int stride)
    {
        double energy = 0;
        double sphere = 0;
        for (int ring = 0; ring + stride < field.Rings; ring += stride)
        {
            for (int spoke = 0; spoke < field.Spokes; spoke += stride)
            {
                StrainSample a = field.At(ring, spoke);
                StrainSample b = field.At(ring + stride, spoke);
                StrainSample c = field.At(ring + stride, spoke + stride);
                StrainSample d = field.At(ring, spoke + stride);
                Add(a, b, c);
                if (ring > 0)
                {
                    Add(a, c, d);
                }
            }
        }

        return (energy, sphere);

        void Add(StrainSample a, StrainSample b, StrainSample c)
        {
            double radius = request.RadiusMm;
            Point2 p = b.Place - a.Place;
            Point2 q = c.Place - a.Place;
            SpherePoint x = radius * (b.Fitted - a.Fitted);
            SpherePoint y = radius * (c.Fitted - a.Fitted);
            double twice = p.Cross(q);

            // The felt is stretched evenly so that the sides become great-circle arcs: squares and product of the images of p and q, then
            // of the unit vectors.
            double pp = Arc2(x);
            double qq = Arc2(y);
            double pq = (pp + qq - Arc2(y - x)) / 2;
            double uu = ((q.Y * q.Y * pp) - (2 * q.Y * p.Y * pq) + (p.Y * p.Y * qq)) / (twice * twice);
            double vv = ((q.X * q.X * pp) - (2 * q.X * p.X * pq) + (p.X * p.X * qq)) / (twice * twice);
            double uv = ((((q.Y * p.X) + (p.Y * q.X)) * pq) - (q.Y * q.X * pp) - (p.Y * p.X * qq)) / (twice * twice);
            energy += request.Law.Energy(uu, uv, vv) * twice / 2;
            sphere += x.Cross(y).Length / 2;
        }

        double Arc2(SpherePoint chord)
        {
            double arc = 2 * request.RadiusMm * Math.Asin(chord.Length / (2 * request.RadiusMm));
            return arc * arc;
        }
    }
}
