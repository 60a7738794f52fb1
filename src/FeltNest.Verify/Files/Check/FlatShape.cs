using NetTopologySuite.Geometries;

namespace FeltNest.Files.Check;

/// <summary>A closed outline as a polygon, measured with the second geometry engine.</summary>
internal sealed class FlatShape
{
    // A polygon stands at most so far off the arcs it contains, and these off the computed edge, mm.
    private const double PolygonMm = 0.01;
    private const double ArcMm = 0.01;
    private static readonly GeometryFactory Factory = new();

    private readonly Polygon polygon;

    private FlatShape(Polygon polygon) => this.polygon = polygon;

    /// <summary>Area, mm2.</summary>
    public double AreaMm2 => polygon.Area;

    /// <summary>How far areas of polygon, arcs and computed edge may differ, mm2.</summary>
    public double AreaRoom => (PolygonMm + ArcMm) * polygon.Length;

    /// <summary>The shape of corners in order.</summary>
    public static FlatShape Of(IReadOnlyList<double[]> corners)
    {
        Coordinate[] ring = [.. corners.Select(p => new Coordinate(p[0], p[1]))];
        return ring.Length < 3
            ? new FlatShape(Factory.CreatePolygon())
            : new FlatShape(Factory.CreatePolygon([.. ring, ring[0].Copy()]));
    }

    /// <summary>Holds length, width and waist that an object states against the shape's.</summary>
    public void CheckSize(StatedFields stated)
    {
        // Each of two sides may be off.
        const double room = 2 * (PolygonMm + ArcMm);
        stated.Keep(polygon.IsValid, "outline", "crosses itself");
        if (!polygon.IsValid)
        {
            return;
        }

        Envelope box = polygon.EnvelopeInternal;
        stated.Same("lengthMm", box.Width, room);
        stated.Same("widthMm", box.Height, room);
        LineString across = Factory.CreateLineString([new Coordinate(0, box.MinY - 1), new Coordinate(0, box.MaxY + 1)]);
        stated.Same("waistMm", polygon.Intersection(across).Length, room);
    }

    /// <summary>Holds a panel as cut against this shape, its edge before allowances, and what each of them does.</summary>
    public void CheckGrown(StatedFields panel, IReadOnlyList<StatedFields> allowances)
    {
        const double room = 2 * (PolygonMm + ArcMm);
        Envelope box = polygon.EnvelopeInternal;
        foreach ((string figure, string effect, double before, double slack) in new[]
        {
            ("lengthMm", "lengthEffectMm", box.Width, room), ("widthMm", "widthEffectMm", box.Height, room),
            ("areaMm2", "areaEffectMm2", AreaMm2, AreaRoom),
        })
        {
            double after = before + allowances.Sum(a => a.Number(effect));
            panel.Keep(
                Math.Abs(after - panel.Number(figure)) <= slack, figure,
                FormattableString.Invariant($"is not what edge map and allowances give, {after:0.####}"));
        }
    }
}
