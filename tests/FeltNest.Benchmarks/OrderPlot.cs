using System.Globalization;
using System.Text;

namespace FeltNest.Benchmarks;

/// <summary>Draws how the time of a plan grows with the orders: both axes by powers of ten.</summary>
internal static class OrderPlot
{
    private const int Width = 720;
    private const int Height = 460;
    private const int Left = 70;
    private const int Bottom = 60;
    private const double LeastOrders = 10;
    private const double MostOrders = 1000;
    private const double LeastSeconds = 0.01;
    private const double MostSeconds = 1000;

    /// <summary>Writes the drawing.</summary>
    /// <param name="path">File.</param>
    /// <param name="points">Orders, seconds to the first plan, seconds at default effort.</param>
    public static void Write(string path, IReadOnlyList<(int Orders, double First, double Whole)> points)
    {
        StringBuilder svg = new();
        svg.Append(
            Text($"<svg xmlns='http://www.w3.org/2000/svg' width='{Width}' height='{Height}' font-family='sans-serif' font-size='13'>"));
        svg.Append(Text($"<rect width='{Width}' height='{Height}' fill='white'/>"));
        for (double orders = LeastOrders; orders <= MostOrders; orders *= 10)
        {
            svg.Append(Text($"<path d='M{X(orders):0.0} {Y(LeastSeconds):0.0}V{Y(MostSeconds):0.0}' stroke='#ccc'/>"));
            svg.Append(Text($"<text x='{X(orders):0.0}' y='{Height - Bottom + 20}' text-anchor='middle'>{orders}</text>"));
        }

        for (double seconds = LeastSeconds; seconds <= MostSeconds; seconds *= 10)
        {
            svg.Append(Text($"<path d='M{X(LeastOrders):0.0} {Y(seconds):0.0}H{X(MostOrders):0.0}' stroke='#ccc'/>"));
            svg.Append(Text($"<text x='{Left - 8}' y='{Y(seconds) + 4:0.0}' text-anchor='end'>{seconds:0.##}</text>"));
        }

        svg.Append(Text($"<text x='{Width / 2}' y='{Height - 14}' text-anchor='middle'>orders (two to three rolls an order)</text>"));
        svg.Append("<text x='18' y='20'>seconds</text>");
        Line(svg, [.. points.Select(p => (p.Orders, p.First))], "first plan", "4 4");
        Line(svg, [.. points.Select(p => (p.Orders, p.Whole))], "default effort", "none");
        svg.Append("</svg>\n");
        File.WriteAllText(path, svg.ToString());
    }

    private static void Line(StringBuilder svg, (int Orders, double Seconds)[] points, string name, string dashes)
    {
        string path = string.Join(' ', points.Select((p, i) => Text($"{(i == 0 ? 'M' : 'L')}{X(p.Orders):0.0} {Y(p.Seconds):0.0}")));
        svg.Append(Text($"<path d='{path}' fill='none' stroke='black' stroke-width='2' stroke-dasharray='{dashes}'/>"));
        foreach ((int orders, double seconds) in points)
        {
            svg.Append(Text($"<circle cx='{X(orders):0.0}' cy='{Y(seconds):0.0}' r='4'/>"));
        }

        svg.Append(Text($"<text x='{X(points[^1].Orders) + 10:0.0}' y='{Y(points[^1].Seconds) + 4:0.0}'>{name}</text>"));
    }

    private static double X(double orders) =>
        Left + ((Width - Left - 40) * Math.Log10(orders / LeastOrders) / Math.Log10(MostOrders / LeastOrders));

    private static double Y(double seconds) => Height - Bottom
        - ((Height - Bottom - 40) * Math.Log10(Math.Max(seconds, LeastSeconds) / LeastSeconds) / Math.Log10(MostSeconds / LeastSeconds));

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
