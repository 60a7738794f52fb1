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
        return
        [
            new TextMark
            {
                Text = Title,
                At = new Point2(frame.MinX, frame.MaxY - Ink.Label),
                HeightMm = Ink.Label,
                Colour = Ink.Dark,
            },
            .. Enumerable.Range(0, Bars.Count).SelectMany(i => Bar(i, new Point2(left, top - ((i + 1) * step)), scale, step)),
            new PathMark([Chain.Open(new Point2(left, top), new Point2(left, top - (Bars.Count * step)))], Ink.Narrow),
            .. key.SelectMany(k =>
                KeyEntry(k.Name, k.Colour, new Point2(k.X, frame.MinY + keyRoom - ((k.Row + 1) * KeyStep) + 1))),
        ];
    }

    // One bar from its lower left corner, its name before it and its sum behind it.
    private IEnumerable<Mark> Bar(int number, Point2 corner, double scale, double step)
    {
        (string name, IReadOnlyList<double> values, string sum) = Bars[number];
        double thick = 0.7 * step;
        double height = Math.Min(Ink.Note, 0.6 * step);
        double text = corner.Y + ((thick - height) / 2);
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(name, height, NameRoom - 3),
            At = new Point2(corner.X - 2, text),
            HeightMm = height,
            Colour = Ink.Dark,
            Anchor = TextAnchor.End,
        };
        double x = corner.X;
        for (int k = 0; k < values.Count; k++)
        {
            double width = scale * values[k];
            if (width > 0)
            {
                Box part = new() { MinX = x, MinY = corner.Y, MaxX = x + width, MaxY = corner.Y + thick };
                yield return new PathMark([Chain.Rectangle(part)], null, Parts[k].Colour);
                x += width;
            }
        }

        yield return new TextMark { Text = sum, At = new Point2(x + 1.5, text), HeightMm = height, Colour = Ink.Dark };
    }

    // The colour and the name of a part, from their lower left corner.
    private static IEnumerable<Mark> KeyEntry(string name, Colour colour, Point2 at)
    {
        Box swatch = new() { MinX = at.X, MinY = at.Y, MaxX = at.X + Swatch, MaxY = at.Y + Swatch };
        yield return new PathMark([Chain.Rectangle(swatch)], null, colour);
        yield return new TextMark
        {
            Text = name,
            At = new Point2(at.X + Swatch + 1.2, at.Y),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
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
