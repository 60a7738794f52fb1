using System.Text.Json;
using FeltNest.Files.Fields;
using FeltNest.Geometry;

namespace FeltNest.Files.Json;

/// <summary>Lists of points and arcs in JSON.</summary>
internal static class JsonShapes
{
    /// <summary>Coordinates further out than this, mm, are a slip of units: the longest sound length is 100 m.</summary>
    public const double FarthestMm = 100_000;

    /// <summary>A panel may be written anywhere along the roll; further than this, mm, there is no roll, and its digits no longer tell
    /// where it lies.</summary>
    public const double FarthestAlongMm = 10_000_000;

    /// <summary>Points of a field holding [[u,v],...].</summary>
    public static List<Point2> Points(JsonFields fields, RowsField field, string file)
    {
        List<Point2> points = [];
        foreach (double[] row in Rows(fields, field, file))
        {
            points.Add(new Point2(row[0], row[1]));
        }

        return points;
    }

    /// <summary>Rows of a field holding two numbers each.</summary>
    public static IEnumerable<(double First, double Second)> Pairs(JsonFields fields, RowsField field, string file) =>
        Rows(fields, field, file).Select(row => (row[0], row[1]));

    /// <summary>Points of a field holding [[x,y,z],...].</summary>
    public static IEnumerable<(double X, double Y, double Z)> SpacePoints(JsonFields fields, RowsField field, string file) =>
        Rows(fields, field, file).Select(row => (row[0], row[1], row[2]));

    /// <summary>Arc vertices of a field holding [{x,y,turnDeg},...].</summary>
    public static List<ArcVertex> Arcs(JsonFields fields, ObjectsField field, string file)
    {
        Counted(fields, field);
        List<ArcVertex> arcs = [];
        foreach (JsonFields item in fields.Objects(field))
        {
            double turn = JsonValues.NumberOf(item.Required(ArcFields.TurnDeg), file, item.PathOf(ArcFields.TurnDeg));
            if (!ArcFields.TurnDeg.Holds(turn))
            {
                throw item.Fault(
                    ArcFields.TurnDeg,
                    FormattableString.Invariant($"{turn} is outside -360 to 360 degrees, ends excluded: a full circle has no next vertex"));
            }

            arcs.Add(new ArcVertex(
                Coordinate(item.Required(ArcFields.X), file, item.PathOf(ArcFields.X)),
                Coordinate(item.Required(ArcFields.Y), file, item.PathOf(ArcFields.Y)),
                turn * Math.PI / 180));
        }

        return arcs;
    }

    private static IEnumerable<double[]> Rows(JsonFields fields, RowsField field, string file)
    {
        string number = field.Columns == 2 ? "two" : "three";
        int at = 0;
        foreach (JsonElement item in Counted(fields, field).EnumerateArray())
        {
            string place = $"{fields.PathOf(field)}[{at++}]";
            yield return item.ValueKind == JsonValueKind.Array && item.GetArrayLength() == field.Columns
                ? [.. item.EnumerateArray().Select(value => Coordinate(value, file, place))]
                : throw new InputException(
                    file, place, $"is {JsonValues.KindName(item)} where {number} numbers {field.ColumnWords} are wanted");
        }
    }

    private static JsonElement Counted(JsonFields fields, ListField field)
    {
        JsonElement list = fields.Elements(field);
        return list.GetArrayLength() <= Outline.MostPoints
            ? list
            : throw fields.Fault(field, $"has {list.GetArrayLength()} points: at most {Outline.MostPoints} are allowed");
    }

    private static double Coordinate(JsonElement value, string file, string place)
    {
        double number = JsonValues.NumberOf(value, file, place);
        return Math.Abs(number) <= FarthestMm
            ? number
            : throw new InputException(
                file, place,
                FormattableString.Invariant($"{number:R} mm is outside -{FarthestMm} to {FarthestMm} mm: are these millimetres?"));
    }
}
