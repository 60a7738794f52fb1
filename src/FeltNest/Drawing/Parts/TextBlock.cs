using System.Text;
using FeltNest.Drawing.Lettering;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Parts;

/// <summary>Paragraphs wrapped to a width.</summary>
internal static class TextBlock
{
    /// <summary>Distance from line to line for notes, mm: 1.5 times their height with room for descenders (ISO 3098, type B).</summary>
    public const double LineStep = 4.2;

    /// <summary>Height the paragraphs take, mm.</summary>
    public static double Height(IEnumerable<string> paragraphs, double width) => paragraphs.Sum(p => Wrapped(p, width).Count) * LineStep;

    /// <summary>The paragraphs with their upper left corner at a place.</summary>
    public static IEnumerable<Mark> Draw(Point2 topLeft, double width, IEnumerable<string> paragraphs)
    {
        double y = topLeft.Y;
        foreach (string line in paragraphs.SelectMany(p => Wrapped(p, width)))
        {
            y -= LineStep;
            yield return new TextMark { Text = line, At = new Point2(topLeft.X, y), HeightMm = Ink.Note, Colour = Ink.Dark };
        }
    }

    /// <summary>Words in lines no longer than a width, in letters of a height.</summary>
    public static IReadOnlyList<string> Lines(string words, double width, double height) => Wrapped(words, width, height);

    private static List<string> Wrapped(string words, double width, double height = Ink.Note)
    {
        List<string> lines = [];
        StringBuilder line = new();
        foreach (string word in words.Split(' '))
        {
            if (line.Length > 0 && StrokeFont.Width($"{line} {word}", height) > width)
            {
                lines.Add(line.ToString());
                line.Clear().Append("   ");
            }
            else if (line.Length > 0)
            {
                line.Append(' ');
            }

            line.Append(word);
        }

        lines.Add(line.ToString());
        return lines;
    }
}
