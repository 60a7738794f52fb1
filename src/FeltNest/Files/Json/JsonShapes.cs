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
        JsonElement list = Counted(fields, name);
        List<Point2> points = new(list.GetArrayLength());
        foreach (JsonElement item in list.EnumerateArray())
        {
            string place = $"{fields.PathOf(name)}[{points.Count}]";
            if (item.ValueKind != JsonValueKind.Array || item.GetArrayLength() != 2)
            {
                throw new InputException(file, place, $"is {JsonFields.KindName(item)} where two numbers [u, v] are wanted");
            }

            points.Add(new Point2(Coordinate(item[0], file, place), Coordinate(item[1], file, place)));
        }

        return points;
    }

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
                throw item.Fault("turnDeg", FormattableString.Invariant($"{turn} is outside -360 to 360 degrees, ends excluded: a full circle has no next vertex"));
            }

            arcs.Add(new ArcVertex(
                Coordinate(item.Required("x"), file, item.PathOf("x")), Coordinate(item.Required("y"), file, item.PathOf("y")), turn * Math.PI / 180));
        }

        return arcs;
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
            : throw new InputException(file, place, FormattableString.Invariant($"{number:R} mm is outside -{FarthestMm} to {FarthestMm} mm: are these millimetres?"));
    }
}
