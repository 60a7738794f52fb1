using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Charts;

/// <summary>Lying bars of parts, all from zero on one scale, each with its name before it and its sum behind it, and a key below of the
/// parts that are there.</summary>
/// <param name="Title">Title with the unit.</param>
/// <param name="Parts">Names and colours of the parts.</param>
/// <param name="Bars">Name, values of the parts, and the sum in words.</param>
internal sealed record StackedBars(
    string Title, IReadOnlyList<(string Name, Colour Colour)> Parts,
    IReadOnlyList<(string Name, IReadOnlyList<double> Values, string Sum)> Bars)
{
    // Room for the title, one line of the key, names and sums, and the greatest height of a bar with its gap, mm.
    private const double TitleRoom = 8;
    private const double KeyStep = 4.5;
    private const double NameRoom = 46;
    private const double SumRoom = 26;
    private const double MostStep = 11;
    private const double Swatch = 2.6;

    /// <summary>The marks of the chart in a rectangle of the sheet.</summary>
    public IEnumerable<Mark> Draw(Box frame)
    {
        (string Name, Colour Colour, double X, int Row)[] key = Key(frame);
        double keyRoom = (key.Max(k => k.Row) + 1) * KeyStep;
        double left = frame.MinX + NameRoom;
        double top = frame.MaxY - TitleRoom;
        double scale = (frame.MaxX - SumRoom - left) / Bars.Max(b => b.Values.Sum());
        double step = Math.Min(MostStep, (top - frame.MinY - keyRoom - 2) / Bars.Count);
        double thick = 0.7 * step;
        yield return new TextMark
        {
            Text = Title,
            At = new Point2(frame.MinX, frame.MaxY - Ink.Label),
            HeightMm = Ink.Label,
            Colour = Ink.Dark,
        };
        for (int i = 0; i < Bars.Count; i++)
        {
            (string name, IReadOnlyList<double> values, string sum) = Bars[i];
            double y = top - ((i + 1) * step);
            double x = left;
            double height = Math.Min(Ink.Note, 0.6 * step);
            double text = y + ((thick - height) / 2);
            yield return new TextMark
            {
                Text = StrokeFont.Fitted(name, height, NameRoom - 3),
                At = new Point2(left - 2, text),
                HeightMm = height,
                Colour = Ink.Dark,
                Anchor = TextAnchor.End,
            };
            for (int k = 0; k < values.Count; k++)
            {
                double width = scale * values[k];
                if (width > 0)
                {
                    yield return new PathMark(
                        [Chain.Rectangle(new Box { MinX = x, MinY = y, MaxX = x + width, MaxY = y + thick })], null, Parts[k].Colour);
                    x += width;
                }
            }

            yield return new TextMark { Text = sum, At = new Point2(x + 1.5, text), HeightMm = height, Colour = Ink.Dark };
        }

        yield return new PathMark([Chain.Open(new Point2(left, top), new Point2(left, top - (Bars.Count * step)))], Ink.Narrow);
        foreach ((string name, Colour colour, double x, int row) in key)
        {
            double y = frame.MinY + keyRoom - ((row + 1) * KeyStep) + 1;
            yield return new PathMark(
                [Chain.Rectangle(new Box { MinX = x, MinY = y, MaxX = x + Swatch, MaxY = y + Swatch })], null, colour);
            yield return new TextMark
            {
                Text = name,
                At = new Point2(x + Swatch + 1.2, y),
                HeightMm = Ink.Note,
                Colour = Ink.Soft,
            };
        }
    }

    private (string Name, Colour Colour, double X, int Row)[] Key(Box frame)
    {
        List<(string Name, Colour Colour, double X, int Row)> key = [];
        double x = frame.MinX + NameRoom;
        int row = 0;
        foreach ((string name, Colour colour) in Parts.Where((_, i) => Bars.Any(bar => bar.Values[i] > 0)))
        {
            double width = Swatch + 1.2 + StrokeFont.Width(name, Ink.Note);
            if (x + width > frame.MaxX && x > frame.MinX + NameRoom)
            {
                (x, row) = (frame.MinX + NameRoom, row + 1);
            }

            key.Add((name, colour, x, row));
            x += width + 5;
        }

        return [.. key];
    }
}
