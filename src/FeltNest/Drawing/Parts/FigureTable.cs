using FeltNest.Drawing.Lettering;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Parts;

/// <summary>A column of names and values on a sheet; a line with an empty value is a heading.</summary>
internal static class FigureTable
{
    /// <summary>Distance from one line to the next, mm.</summary>
    public const double LineStep = 4.4;

    // Extra room above a heading, mm.
    private const double HeadingRoom = 2.4;

    /// <summary>Height a column takes, mm.</summary>
    public static double Height(IReadOnlyList<(string Name, string Value)> lines) =>
        lines.Select((line, i) => LineStep + (i > 0 && IsHeading(line) ? HeadingRoom : 0)).Sum();

    /// <summary>The column with its upper left corner at a place.</summary>
    public static IEnumerable<Mark> Draw(Point2 topLeft, double width, IReadOnlyList<(string Name, string Value)> lines)
    {
        double y = topLeft.Y;
        for (int i = 0; i < lines.Count; i++)
        {
            (string name, string value) = lines[i];
            y -= LineStep + (i > 0 && IsHeading(lines[i]) ? HeadingRoom : 0);
            if (IsHeading(lines[i]))
            {
                yield return new TextMark
                {
                    Text = StrokeFont.Fitted(name, Ink.Note, width),
                    At = new Point2(topLeft.X, y),
                    HeightMm = Ink.Note,
                    Colour = Ink.Dark,
                };
                yield return new PathMark([Chain.Open(new Point2(topLeft.X, y - 1), new Point2(topLeft.X + width, y - 1))], Ink.Narrow);
                continue;
            }

            double room = width - StrokeFont.Width(value, Ink.Note) - 3;
            yield return new TextMark
            {
                Text = StrokeFont.Fitted(name, Ink.Note, room),
                At = new Point2(topLeft.X, y),
                HeightMm = Ink.Note,
                Colour = Ink.Soft,
            };
            yield return new TextMark
            {
                Text = value,
                At = new Point2(topLeft.X + width, y),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
                Anchor = TextAnchor.End,
            };
        }
    }

    private static bool IsHeading((string Name, string Value) line) => line.Value.Length == 0;
}
