using System.Text.Json;
using FeltNest.Geometry;

namespace FeltNest.Files.Json;

/// <summary>Lists of points and arcs in JSON.</summary>
internal static class JsonShapes
{
    /// <summary>Coordinates further out than this, mm, are a slip of units: the longest sound length is 100 m.</summary>
    public const double FarthestMm = 100_000;

    /// <summary>Points of a field holding [[u,v],...].</summary>
    public static List<Point2> Points(JsonFields fields, string name, string file)
    {
        List<Point2> points = [];
        foreach (double[] row in Rows(fields, name, file, 2, "two numbers [u, v]"))
        {
            points.Add(new Point2(row[0], row[1]));
        }

        return points;
    }

    /// <summary>Points of a field holding [[x,y,z],...].</summary>
    public static IEnumerable<(double X, double Y, double Z)> SpacePoints(JsonFields fields, string name, string file) =>
        Rows(fields, name, file, 3, "three numbers [x, y, z]").Select(row => (row[0], row[1], row[2]));

    /// <summary>Arc vertices of a field holding [{x,y,turnDeg},...].</summary>
    public static List<ArcVertex> Arcs(JsonFields fields, string name, string file)
    {
        Counted(fields, name);
        List<ArcVertex> arcs = [];
        foreach (JsonFields item in fields.Objects(name, "x", "y", "turnDeg"))
        {
            double turn = item.Number("turnDeg");
            if (Math.Abs(turn) >= 360)
            {
                throw item.Fault(
                    "turnDeg",
                    FormattableString.Invariant($"{turn} is outside -360 to 360 degrees, ends excluded: a full circle has no next vertex"));
            }

            arcs.Add(new ArcVertex(
                Coordinate(item.Required("x"), file, item.PathOf("x")), Coordinate(item.Required("y"), file, item.PathOf("y")),
                turn * Math.PI / 180));
        }

        return arcs;
    }

    private static IEnumerable<double[]> Rows(JsonFields fields, string name, string file, int count, string wanted)
    {
        int at = 0;
        foreach (JsonElement item in Counted(fields, name).EnumerateArray())
        {
            string place = $"{fields.PathOf(name)}[{at++}]";
            yield return item.ValueKind == JsonValueKind.Array && item.GetArrayLength() == count
                ? [.. item.EnumerateArray().Select(number => Coordinate(number, file, place))]
                : throw new InputException(file, place, $"is {JsonFields.KindName(item)} where {wanted} are wanted");
        }
    }

    private static JsonElement Counted(JsonFields fields, string name)
    {
        JsonElement list = fields.Array(name);
        return list.GetArrayLength() <= Outline.MostPoints
            ? list
            : throw fields.Fault(name, $"has {list.GetArrayLength()} points: at most {Outline.MostPoints} are allowed");
    }

    private static double Coordinate(JsonElement value, string file, string place)
    {
        double number = JsonFields.NumberOf(value, file, place);
        return Math.Abs(number) <= FarthestMm
            ? number
            : throw new InputException(
                file, place,
                FormattableString.Invariant($"{number:R} mm is outside -{FarthestMm} to {FarthestMm} mm: are these millimetres?"));
    }
}
