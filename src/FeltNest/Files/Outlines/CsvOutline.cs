using System.Globalization;
using System.Text;
using FeltNest.Files.Fields;
using FeltNest.Geometry;
using static FeltNest.Files.Outlines.PointsListing;

namespace FeltNest.Files.Outlines;

/// <summary>Reads an outline from a CSV of two columns u,v in mm, with or without the line of names.</summary>
internal static class CsvOutline
{
    /// <summary>The points of a text in order.</summary>
    /// <exception cref="InputException">Names the line that cannot be read.</exception>
    public static List<Point2> ReadPoints(InputText input)
    {
        string path = input.Name;
        string text = Encoding.UTF8.GetString(input.Bytes.Span);
        List<Point2> points = [];
        int number = 0;
        foreach (string raw in text.Split('\n'))
        {
            number++;
            string line = raw.Trim();
            if (line.Length == 0 || (points.Count == 0 && IsHeader(line)))
            {
                continue;
            }

            points.Add(PointOf(path, $"line {number}", line));
            if (points.Count > Outline.MostPoints + 1)
            {
                throw new InputException(path, null, $"has more than {Outline.MostPoints} points, which is the most allowed");
            }
        }

        return points.Count > 0 ? points : throw new InputException(path, null, "holds no points: lines of u,v in mm are wanted");
    }

    /// <summary>What may be wrong with the unit of an outline, in a sentence; nothing where its size is that of a part.</summary>
    public static IEnumerable<string> Doubts(Outline outline)
    {
        // No part of a cover is as small as this, mm; a panel of a usual ball is 5.8 inches long.
        const double small = 20;
        (double length, double width) = (outline.MaxX - outline.MinX, outline.MaxY - outline.MinY);
        if (Math.Max(length, width) < small)
        {
            yield return FormattableString.Invariant(
                $"the outline is {length:0.##} x {width:0.##} mm: if these are inches, write mm");
        }
    }

    private static bool IsHeader(string line) =>
        line.Replace(" ", string.Empty, StringComparison.Ordinal).ToLowerInvariant() is var names
            && (names == $"{U.Name},{V.Name}" || names == $"\"{U.Name}\",\"{V.Name}\"");

    private static Point2 PointOf(string path, string place, string line)
    {
        string shown = OneLine.Of(line);
        if (line.Contains(';'))
        {
            throw new InputException(
                path, place, $"'{shown}' has a semicolon: separate u and v by a comma and write decimals with a point, as 1.5,2.5");
        }

        string[] parts = line.Split(',');
        if (Documents.ListOf(parts) is { } list)
        {
            throw new InputException(path, place, $"is a list of {list.Name}, no outline: lines of u,v in mm are wanted");
        }

        if (parts.Length > 2)
        {
            throw new InputException(
                path, place, $"'{shown}' has {parts.Length} columns where 2 are wanted; are these decimal commas? write 1.5,2.5");
        }

        if (parts.Length < 2)
        {
            throw new InputException(path, place, $"'{shown}' has 1 column where 2 are wanted: u,v");
        }

        return new Point2(NumberOf(path, place, U, parts[0]), NumberOf(path, place, V, parts[1]));
    }

    private static double NumberOf(string path, string place, NumberField column, string text)
    {
        string shown = OneLine.Of(text.Trim());
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) || !double.IsFinite(value))
        {
            throw new InputException(path, $"{place}, {column.Name}", $"'{shown}' is not a number: write it as 12.5");
        }

        return column.Holds(value)
            ? value
            : throw new InputException(
                path, $"{place}, {column.Name}",
                FormattableString.Invariant(
                    $"{shown} mm is outside {column.Range.Low} to {column.Range.High} mm: are these millimetres?"));
    }
}
