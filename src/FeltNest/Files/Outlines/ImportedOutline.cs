using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Panel;

namespace FeltNest.Files.Outlines;

/// <summary>An outline as it stood in a file, and the same outline as it is used.</summary>
/// <remarks>Raw coordinates are kept as given (turned round where they ran clockwise). The centred ones have the area centroid of the true
/// curve at the origin and are never turned or thinned.</remarks>
internal sealed record ImportedOutline
{
    private ImportedOutline(string name, Outline raw, ArcOutline? rawArcs)
    {
        Name = name;
        Raw = raw;
        RawArcs = rawArcs;
        Point2 centroid = rawArcs?.Centroid ?? raw.Centroid;
        Centred = raw.Moved(-centroid);
        CentredArcs = rawArcs?.Moved(-centroid);
    }

    /// <summary>Name shown on results.</summary>
    public string Name { get; }

    /// <summary>Polygon that contains the part, in the file's own coordinates, mm.</summary>
    public Outline Raw { get; }

    /// <summary>True curve in the file's own coordinates, or null where the polygon itself is the part.</summary>
    public ArcOutline? RawArcs { get; }

    /// <summary>The polygon with the centroid at the origin.</summary>
    public Outline Centred { get; }

    /// <summary>The true curve with the centroid at the origin, or null.</summary>
    public ArcOutline? CentredArcs { get; }

    /// <summary>Ball the part covers, where the file says so.</summary>
    public string? Ball { get; init; }

    /// <summary>Mass per area of its felt, g/m2, where the file says so.</summary>
    public double? MassPerAreaGsm { get; init; }

    /// <summary>Angle from the warp to +u for which the part is designed, degrees, where the file says so.</summary>
    public double? WarpAngleDeg { get; init; }

    /// <summary>Edge before allowances with its seam parameters, where the file is a computed panel.</summary>
    public IReadOnlyList<EdgePoint>? EdgeMap { get; init; }

    /// <summary>What the reader assumed and healed, one sentence each; empty where it took the file as it stood.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>The outline as a part to lay.</summary>
    public LayoutPart Part => new()
    {
        Name = Name,
        Ball = Ball,
        Outline = Centred,
        Arcs = CentredArcs,
        MassPerAreaGsm = MassPerAreaGsm,
        WarpAngleDeg = WarpAngleDeg,
    };

    /// <summary>The outline as a curve seen from its own centroid; a polygon as its straight pieces.</summary>
    public ArcOutline Curve => CentredArcs ?? ArcOutline.From(Centred.Points.Select(p => new ArcVertex(p.X, p.Y, 0)));

    // Polygons made from arcs lie at most this far outside them, mm: the promise of every polygon that stands for a curve.
    private const double PolygonTolerance = 0.01;

    /// <summary>An outline given as points, used exactly.</summary>
    /// <exception cref="GeometryException">The points make no simple outline.</exception>
    public static ImportedOutline OfPoints(string name, IEnumerable<Point2> points) => new(name, Outline.From(points), null);

    /// <summary>An outline given as arcs; the polygon is made from them.</summary>
    /// <exception cref="GeometryException">The arcs make no simple outline.</exception>
    public static ImportedOutline OfArcs(string name, IEnumerable<ArcVertex> arcs)
    {
        ArcOutline curve = ArcOutline.From(arcs);
        return new(name, curve.ContainingPolygon(PolygonTolerance), curve);
    }

    /// <summary>An outline whose polygon and curve are both given.</summary>
    /// <exception cref="GeometryException">One of them makes no simple outline.</exception>
    public static ImportedOutline OfBoth(string name, IEnumerable<Point2> points, IEnumerable<ArcVertex> arcs) =>
        new(name, Outline.From(points), ArcOutline.From(arcs));
}
