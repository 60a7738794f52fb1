using System.Globalization;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Charts;

/// <summary>Lying bars that begin where the one above ends, from a first sum to a last one. Sums are drawn from the low end of the scale,
/// which is not zero and stands in the title.</summary>
/// <param name="Title">Title with the unit.</param>
/// <param name="Steps">Name, value, and whether it is a sum; the first is one.</param>
internal sealed record StepBars(string Title, IReadOnlyList<(string Name, double Value, bool IsSum)> Steps)
{
    // Room for the title, names and values, and the greatest height of a bar with its gap, mm.
    private const double TitleRoom = 8;
    private const double NameRoom = 50;
    private const double ValueRoom = 16;
    private const double MostStep = 8;

    private static readonly Colour Sum = Colour.Of(0x8FA35B);
    private static readonly Colour More = Colour.Of(0x9C4A0B);
    private static readonly Colour Fewer = Colour.Of(0x2A66AE);

    /// <summary>The low end of the scale: a round number below the least sum, so that small steps are seen.</summary>
    public double Low
    {
        get
        {
            double least = Steps.Where(step => step.IsSum).Min(step => step.Value);
            double most = Ends().Max();
            double room = Math.Max(most - least, 1e-9) * 1.3;
            double unit = Math.Pow(10, Math.Floor(Math.Log10(room)));
            return Math.Max(0, unit * Math.Floor((most - room) / unit));
        }
    }

    /// <summary>The marks of the chart in a rectangle of the sheet.</summary>
    public IEnumerable<Mark> Draw(Box frame)
    {
        double left = frame.MinX + NameRoom;
        double top = frame.MaxY - TitleRoom;
        double step = Math.Min(MostStep, (top - frame.MinY) / Steps.Count);
        double low = Low;
        double[] ends = Ends();
        double scale = (frame.MaxX - ValueRoom - left) / Math.Max(ends.Max() - low, 1e-9);
        string from = low > 0 ? string.Create(CultureInfo.InvariantCulture, $" (from {low:0.##} on)") : string.Empty;
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(Title + from, Ink.Label, frame.MaxX - frame.MinX),
            At = new Point2(frame.MinX, frame.MaxY - Ink.Label),
            HeightMm = Ink.Label,
            Colour = Ink.Dark,
        };
        for (int i = 0; i < Steps.Count; i++)
        {
            double begin = Steps[i].IsSum ? low : ends[i - 1];
            (double a, double b) = (left + ((Math.Min(begin, ends[i]) - low) * scale), left + ((Math.Max(begin, ends[i]) - low) * scale));
            Box bar = new() { MinX = a, MinY = top - ((i + 1) * step), MaxX = b, MaxY = top - (i * step) - (0.3 * step) };
            foreach (Mark mark in Bar(Steps[i], bar, left))
            {
                yield return mark;
            }
        }

        yield return new PathMark([Chain.Open(new Point2(left, top), new Point2(left, top - (Steps.Count * step)))], Ink.Narrow);
    }

    // Where each bar ends.
    private double[] Ends()
    {
        double[] ends = new double[Steps.Count];
        for (int i = 0; i < ends.Length; i++)
        {
            ends[i] = Steps[i].IsSum ? Steps[i].Value : ends[i - 1] + Steps[i].Value;
        }

        return ends;
    }

    private static IEnumerable<Mark> Bar((string Name, double Value, bool IsSum) step, Box bar, double left)
    {
        double height = Math.Min(Ink.Note, bar.MaxY - bar.MinY);
        double text = bar.MinY + ((bar.MaxY - bar.MinY - height) / 2);
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(step.Name, height, NameRoom - 3),
            At = new Point2(left - 2, text),
            HeightMm = height,
            Colour = Ink.Dark,
            Anchor = TextAnchor.End,
        };
        if (bar.MaxX > bar.MinX)
        {
            yield return new PathMark([Chain.Rectangle(bar)], null, ShadeOf(step));
        }

        yield return new TextMark
        {
            Text = step.Value.ToString(step.IsSum ? "0.00" : "+0.00;-0.00;0.00", CultureInfo.InvariantCulture),
            At = new Point2(bar.MaxX + 1.2, text),
            HeightMm = height,
            Colour = Ink.Dark,
        };
    }

    private static Colour ShadeOf((string Name, double Value, bool IsSum) step)
    {
        if (step.IsSum)
        {
            return Sum;
        }

        return step.Value < 0 ? Fewer : More;
    }
}
