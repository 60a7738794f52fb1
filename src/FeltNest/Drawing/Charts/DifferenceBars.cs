using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Charts;

/// <summary>Lying bars of differences on one scale: what is more stands to the right of the line of zero, what is less to the left of it.
/// Each has its name before it and words behind it; a key below names the parts that are there.</summary>
/// <param name="Title">Title with the unit.</param>
/// <param name="Parts">Names and colours of the parts.</param>
/// <param name="Bars">Name, differences of the parts, and the sum in words.</param>
internal sealed record DifferenceBars(
    string Title, IReadOnlyList<(string Name, Colour Colour)> Parts,
    IReadOnlyList<(string Name, IReadOnlyList<double> Values, string Sum)> Bars)
{
    // Room for the title, one line of the key, names and sums, and the greatest height of a bar with its gap, mm.
    private const double TitleRoom = 8;
    private const double KeyStep = 4.5;
    private const double NameRoom = 46;
    private const double SumRoom = 30;
    private const double MostStep = 11;
    private const double Swatch = 2.6;

    // Thinner than this share of the longest bar a part is not drawn.
    private const double Least = 1e-6;

    /// <summary>The marks of the chart in a rectangle of the sheet.</summary>
    public IEnumerable<Mark> Draw(Box frame)
    {
        double left = frame.MinX + NameRoom;
        double top = frame.MaxY - TitleRoom;
        double less = Bars.Max(bar => -bar.Values.Where(v => v < 0).Sum());
        double more = Bars.Max(bar => bar.Values.Where(v => v > 0).Sum());
        double span = less + more;
        double scale = span > 0 ? (frame.MaxX - SumRoom - left) / span : 0;
        double zero = left + (less * scale);
        double step = Math.Min(MostStep, (top - frame.MinY - KeyStep - 2) / Bars.Count);
        double foot = top - (Bars.Count * step);
        return
        [
            new TextMark { Text = Title, At = new Point2(frame.MinX, frame.MaxY - Ink.Label), HeightMm = Ink.Label, Colour = Ink.Dark },
            .. Enumerable.Range(0, Bars.Count).SelectMany(i => Bar(i, top - ((i + 1) * step), (left, zero), scale, step)),
            new PathMark([Chain.Open(new Point2(zero, top), new Point2(zero, foot))], Ink.Narrow),
            .. Key(left, foot - KeyStep, span * Least),
        ];
    }

    // One bar on its foot, its name before it and its sum behind it.
    private IEnumerable<Mark> Bar(int number, double foot, (double Left, double Zero) at, double scale, double step)
    {
        (string name, IReadOnlyList<double> values, string sum) = Bars[number];
        double thick = 0.7 * step;
        double height = Math.Min(Ink.Note, 0.6 * step);
        double text = foot + ((thick - height) / 2);
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(name, height, NameRoom - 3),
            At = new Point2(at.Left - 2, text),
            HeightMm = height,
            Colour = Ink.Dark,
            Anchor = TextAnchor.End,
        };
        (double low, double high) = (at.Zero, at.Zero);
        for (int k = 0; k < values.Count; k++)
        {
            double wide = scale * values[k];
            double from = wide < 0 ? low + wide : high;
            (low, high) = (low + Math.Min(wide, 0), high + Math.Max(wide, 0));
            if (wide != 0)
            {
                Box part = new() { MinX = from, MinY = foot, MaxX = from + Math.Abs(wide), MaxY = foot + thick };
                yield return new PathMark([Chain.Rectangle(part)], null, Parts[k].Colour);
            }
        }

        yield return new TextMark { Text = sum, At = new Point2(high + 1.5, text), HeightMm = height, Colour = Ink.Dark };
    }

    private IEnumerable<Mark> Key(double left, double foot, double least)
    {
        double x = left;
        foreach ((string name, Colour colour) in Parts.Where((_, i) => Bars.Any(bar => Math.Abs(bar.Values[i]) > least)))
        {
            Box swatch = new() { MinX = x, MinY = foot, MaxX = x + Swatch, MaxY = foot + Swatch };
            yield return new PathMark([Chain.Rectangle(swatch)], null, colour);
            x += Swatch + 1.2;
            yield return new TextMark { Text = name, At = new Point2(x, foot), HeightMm = Ink.Note, Colour = Ink.Soft };
            x += StrokeFont.Width(name, Ink.Note) + 5;
        }
    }
}
