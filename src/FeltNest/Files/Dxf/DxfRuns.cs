using FeltNest.Files.Outlines;
using FeltNest.Geometry;

namespace FeltNest.Files.Dxf;

/// <summary>Turns the entities of a drawing into runs of straight pieces and arcs: polylines with bulges, lines, arcs and
/// circles.</summary>
/// <param name="scale">Millimetres a drawing unit.</param>
internal sealed class DxfRuns(double scale)
{
    // A bulge is the tangent of a quarter of the included angle: 100 leaves 2.3 degrees of a full circle, more is a slip.
    private const double MostBulge = 100;

    // Heights that differ by more than this, mm, make a drawing that is not flat.
    private const double FlatMm = 1e-6;

    // Bits of group 70: closed; of an old polyline what is no plain flat line (fitted curves, 3-D lines, meshes); of a vertex a control
    // point.
    private const int ClosedBit = 1;
    private const int NotPlainBits = 2 | 4 | 8 | 16 | 64;
    private const int ControlBit = 16;

    private double? height;

    /// <summary>Kinds of entities that say nothing about the outline, with how many there were.</summary>
    public SortedDictionary<string, int> Ignored { get; } = new(StringComparer.Ordinal);

    /// <summary>The runs of a drawing.</summary>
    /// <exception cref="InputException">An entity that may be part of the outline and cannot be read, an absurd bulge, or a drawing that is
    /// not flat.</exception>
    public IReadOnlyList<OpenChain> Of(IReadOnlyList<DxfEntity> entities)
    {
        List<OpenChain> runs = [];
        for (int i = 0; i < entities.Count; i++)
        {
            DxfEntity entity = entities[i];
            switch (entity.Kind)
            {
                case "LWPOLYLINE":
                    runs.Add(Polyline(entity, Corners(entity)));
                    break;
                case "POLYLINE":
                    List<(double X, double Y, double Bulge)> corners = [];
                    while (i + 1 < entities.Count && entities[i + 1].Kind == "VERTEX")
                    {
                        corners.Add(Vertex(entities[++i]));
                    }

                    runs.Add(Polyline(entity, corners));
                    break;
                case "LINE" or "ARC" or "CIRCLE" or "SPLINE":
                    runs.Add(Single(entity));
                    break;
                case "SEQEND":
                    break;
                case "TEXT" or "MTEXT" or "DIMENSION" or "POINT" or "LEADER" or "ATTDEF" or "VIEWPORT" or "HATCH":
                    Ignored[entity.Kind] = Ignored.GetValueOrDefault(entity.Kind) + 1;
                    break;
                default:
                    throw entity.Fault("cannot be read as an outline: save it as a polyline with arcs, or as lines and arcs");
            }
        }

        return runs;
    }

    private OpenChain Single(DxfEntity entity) => entity.Kind switch
    {
        "LINE" => Line(entity),
        "SPLINE" => Spline(entity),
        _ => Round(entity),
    };

    private OpenChain Polyline(DxfEntity entity, List<(double X, double Y, double Bulge)> corners)
    {
        int flags = entity.Flags(70);
        if (entity.Kind == "POLYLINE" && (flags & NotPlainBits) != 0)
        {
            throw entity.Fault("is a mesh, a 3-D line or a fitted curve: save it as a flat polyline with arcs");
        }

        if (corners.Count < 2)
        {
            throw entity.Fault("has fewer than 2 vertices");
        }

        Level(entity, entity.Number(38, entity.Number(30, 0)));
        bool closed = (flags & ClosedBit) != 0;
        double side = Side(entity);
        OpenChain run = new(Place(corners[0].X, corners[0].Y, side)) { Closed = closed };
        for (int i = 0; i < corners.Count - (closed ? 0 : 1); i++)
        {
            if (Math.Abs(corners[i].Bulge) > MostBulge)
            {
                throw entity.Fault(
                    FormattableString.Invariant(
                        $"has a bulge of {corners[i].Bulge:R} at vertex {i + 1}: -{MostBulge} to {MostBulge} is allowed"));
            }

            (double x, double y, _) = corners[(i + 1) % corners.Count];
            run.GoTo(Place(x, y, side), side * 4 * Math.Atan(corners[i].Bulge));
        }

        return run;
    }

    private static List<(double X, double Y, double Bulge)> Corners(DxfEntity entity)
    {
        List<(double X, double Y, double Bulge)> corners = [];
        foreach (DxfGroup group in entity.Groups)
        {
            if (group.Code == 10)
            {
                corners.Add((entity.NumberOf(group), double.NaN, 0));
            }
            else if (group.Code is 20 or 42 && corners.Count > 0)
            {
                double value = entity.NumberOf(group);
                corners[^1] = group.Code == 20 ? corners[^1] with { Y = value } : corners[^1] with { Bulge = value };
            }
        }

        return corners.TrueForAll(c => !double.IsNaN(c.Y)) ? corners : throw entity.Fault("has a vertex without y (group 20)");
    }

    private static (double X, double Y, double Bulge) Vertex(DxfEntity vertex) => (vertex.Flags(70) & ControlBit) == 0
        ? (vertex.Number(10), vertex.Number(20), vertex.Number(42, 0))
        : throw vertex.Fault("is a control point of a curve: save the curve as a polyline with arcs");

    private OpenChain Line(DxfEntity entity)
    {
        Level(entity, entity.Number(30, 0));
        Level(entity, entity.Number(31, 0));
        OpenChain run = new(Place(entity.Number(10), entity.Number(20), 1));
        run.GoTo(Place(entity.Number(11), entity.Number(21), 1));
        return run;
    }

    private OpenChain Spline(DxfEntity entity)
    {
        foreach (DxfGroup z in entity.Groups.Where(group => group.Code == 30))
        {
            Level(entity, entity.NumberOf(z));
        }

        double side = Side(entity);
        IReadOnlyList<Point2> places = DxfSpline.Places(entity, scale);
        OpenChain run = new(Place(places[0].X, places[0].Y, side));
        foreach (Point2 place in places.Skip(1))
        {
            run.GoTo(Place(place.X, place.Y, side));
        }

        return run;
    }

    private OpenChain Round(DxfEntity entity)
    {
        double side = Side(entity);
        double x = entity.Number(10);
        double y = entity.Number(20);
        double radius = entity.Number(40);
        if (!(radius > 0))
        {
            throw entity.Fault(FormattableString.Invariant($"has a radius of {radius:R}: above 0 is wanted"));
        }

        Level(entity, entity.Number(30, 0));
        bool circle = entity.Kind == "CIRCLE";
        double from = circle ? 0 : double.DegreesToRadians(entity.Number(50));
        double turn = circle ? 2 * Math.PI : double.DegreesToRadians(entity.Number(51)) - from;

        // An arc always runs counter-clockwise from its first angle to its second.
        turn -= circle ? 0 : Math.Floor(turn / (2 * Math.PI)) * 2 * Math.PI;
        Point2 At(double angle) => Place(x + (radius * Math.Cos(angle)), y + (radius * Math.Sin(angle)), side);
        OpenChain run = new(At(from)) { Closed = circle };
        run.GoTo(At(from + (turn / 2)), side * turn / 2);
        run.GoTo(At(circle ? from : from + turn), side * turn / 2);
        return run;
    }

    // Polylines and arcs drawn from behind (extrusion 0, 0, -1) have their x turned over; any other direction is not flat.
    private static double Side(DxfEntity entity)
    {
        double z = entity.Number(230, 1);
        return entity.Number(210, 0) == 0 && entity.Number(220, 0) == 0 && z != 0
            ? Math.Sign(z)
            : throw entity.Fault("is drawn on a plane that leans: a flat drawing is wanted");
    }

    private Point2 Place(double x, double y, double side) => new(side * x * scale, y * scale);

    private void Level(DxfEntity entity, double z)
    {
        double level = z * scale;
        if (Math.Abs(level - (height ??= level)) > FlatMm)
        {
            throw entity.Fault("lies at another height than the rest: a flat drawing is wanted");
        }
    }
}
