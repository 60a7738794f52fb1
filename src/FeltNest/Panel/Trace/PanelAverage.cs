using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Numerics;
using FeltNest.Panel.Proven;
using FeltNest.Panel.Wrap.Solve;

namespace FeltNest.Panel.Trace;

/// <summary>The mean edge of several cut panels, each laid on the first by the turn and move that bring it nearest.</summary>
internal sealed record PanelAverage
{
    /// <summary>The mean edge, in the first panel's frame, mm.</summary>
    public required IPlaneCurve Edge { get; init; }

    /// <summary>Standard deviation of the panels' edges about it, root mean square round the edge, mm.</summary>
    public required double SpreadMm { get; init; }

    /// <summary>The same where it is greatest.</summary>
    public required double GreatestMm { get; init; }

    // Places of the mean edge, and turns of the fit.
    private const int Places = 720;
    private const int Turns = 12;

    /// <summary>The mean of edges.</summary>
    /// <param name="first">The first panel's edge, about its own frame.</param>
    /// <param name="others">The others, as outlines.</param>
    public static PanelAverage Of(IPlaneCurve first, IReadOnlyList<ArcOutline> others)
    {
        double[][] off = [new double[Places], .. others.Select(other => Off(first, other))];
        double[] mean = [.. Enumerable.Range(0, Places).Select(i => off.Average(panel => panel[i]))];
        double[] variance =
        [
            .. Enumerable.Range(0, Places)
                .Select(i => off.Sum(panel => (panel[i] - mean[i]) * (panel[i] - mean[i])) / Math.Max(1, off.Length - 1)),
        ];
        EdgePoint[] map = [.. Enumerable.Range(0, Places).Select(i =>
        {
            CurvePoint here = first.At(i * first.Period / Places);
            Point2 place = here.Place - (here.Derivative.Left * (mean[i] / here.Derivative.Length));
            return new EdgePoint { U = place.X, V = place.Y, S = 2 * Math.PI * i / Places, StretchPercent = 0 };
        })];
        return new PanelAverage
        {
            Edge = new EdgeMapCurve(map),
            SpreadMm = Math.Sqrt(variance.Average()),
            GreatestMm = Math.Sqrt(variance.Max()),
        };
    }

    // How far another panel's edge lies outside the first, at even steps of the first's parameter.
    private static double[] Off(IPlaneCurve first, ArcOutline other)
    {
        MeasuredEdge measured = new(other);
        Point2[] places = [.. Enumerable.Range(0, Places).Select(i => first.At(i * first.Period / Places).Place)];
        Point2 middle = Outline.From(places).Centroid;
        double axis = LongAxis.Of(places, middle).Angle;
        (double Parameter, double Off)[] best = [.. new[] { axis, axis + Math.PI }
            .Select(turn => Laid(measured, first, turn, middle))
            .MinBy(feet => feet.Sum(foot => foot.Off * foot.Off))!
            .Select(foot => (Wrapped(foot.Parameter, first.Period), foot.Off))
            .OrderBy(foot => foot.Item1)];
        return [.. Enumerable.Range(0, Places).Select(i => Between(best, i * first.Period / Places, first.Period))];
    }

    private static (double Parameter, double Off)[] Laid(MeasuredEdge measured, IPlaneCurve first, double turn, Point2 move)
    {
        for (int k = 0; ; k++)
        {
            (double Parameter, Point2 Foot, Point2 Outward, double Off)[] feet = measured.Against(first, turn, move);
            if (k == Turns)
            {
                return [.. feet.Select(foot => (foot.Parameter, foot.Off))];
            }

            const int unknowns = 3;
            double[] normal = new double[unknowns * unknowns];
            double[] right = new double[unknowns];
            for (int i = 0; i < feet.Length; i++)
            {
                Point2 outward = feet[i].Outward;
                double[] row = [measured.Places[i].Turned(turn).Left.Dot(outward), outward.X, outward.Y];
                for (int a = 0; a < unknowns; a++)
                {
                    right[a] -= row[a] * feet[i].Off;
                    DenseRows.Add(normal.AsSpan(a * unknowns, unknowns), row[a], row);
                }
            }

            DenseCholesky.TryFactor(normal, unknowns, 0)?.Solve(right);
            turn += right[0];
            move += new Point2(right[1], right[2]);
        }
    }

    private static double Wrapped(double parameter, double period) => parameter - (Math.Floor(parameter / period) * period);

    private static double Between((double Parameter, double Off)[] feet, double at, double period)
    {
        int after = Array.FindIndex(feet, foot => foot.Parameter >= at);
        (double p, double off) = after < 0 ? (feet[0].Parameter + period, feet[0].Off) : feet[after];
        (double q, double before) = after <= 0 ? (feet[^1].Parameter - (after < 0 ? 0 : period), feet[^1].Off) : feet[after - 1];
        return p == q ? off : before + ((off - before) * (at - q) / (p - q));
    }
}
