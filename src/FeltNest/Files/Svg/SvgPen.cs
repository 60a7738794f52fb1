using FeltNest.Files.Outlines;
using FeltNest.Geometry;

namespace FeltNest.Files.Svg;

/// <summary>Draws in the user units of an SVG element and leaves runs in mm: circles stay arcs, every other curve becomes chords.</summary>
internal sealed class SvgPen(SvgTransform map)
{
    /// <summary>Greatest distance of a chord from its curve, mm.</summary>
    public const double ChordTolerance = 0.002;

    // An arc whose two half axes differ by less than this share, or lean by less, is a circle: rounding of a matrix.
    private const double Roundness = 1e-9;

    /// <summary>Most chords of one drawing: a die of a thousand cavities has some hundred each.</summary>
    public const int MostChords = 500_000;

    private readonly List<OpenChain> runs = [];
    private OpenChain? run;

    /// <summary>Runs drawn so far.</summary>
    public IReadOnlyList<OpenChain> Runs => runs;

    /// <summary>Chords drawn so far.</summary>
    public int Chords { get; private set; }

    /// <summary>Whether a curve had to become chords.</summary>
    public bool Chorded { get; private set; }

    /// <summary>Starts a run.</summary>
    public void Move(Point2 to) => runs.Add(run = new OpenChain(map.Of(to)));

    /// <summary>A straight piece.</summary>
    public void Line(Point2 to) => Run.GoTo(map.Of(to));

    /// <summary>Joins the run's end to its start.</summary>
    public void Close() => Run.Closed = true;

    /// <summary>A Bezier curve of degree 2 or 3 through its control points, the first being the place reached.</summary>
    /// <remarks>The count of chords follows the bound of G. Wang (1984, from memory): degree (degree - 1) / 8 times the greatest second
    /// difference over the tolerance.</remarks>
    public void Bezier(params Point2[] control)
    {
        Point2[] p = Array.ConvertAll(control, map.Of);
        int degree = p.Length - 1;
        double bend = Enumerable.Range(0, degree - 1).Max(i => (p[i + 2] - (p[i + 1] * 2) + p[i]).Length);
        int count = Divided(Math.Sqrt(degree * (degree - 1) / 8.0 * bend / ChordTolerance));
        Chorded |= count > 1;
        Chords += count;
        for (int k = 1; k <= count; k++)
        {
            Run.GoTo(k == count ? p[^1] : Casteljau(p, (double)k / count));
        }
    }

    /// <summary>A piece of an ellipse: centre + cos t U + sin t V from <paramref name="from"/> on by <paramref name="sweep"/> radians,
    /// ending at <paramref name="to"/>.</summary>
    public void Ellipse(Point2 centre, Point2 u, Point2 v, double from, double sweep, Point2 to)
    {
        Point2 c = map.Of(centre);
        Point2 a = map.OfVector(u);
        Point2 b = map.OfVector(v);
        Point2 end = map.Of(to);
        double size = Math.Max(a.Length, b.Length);
        if (Math.Abs(a.Length - b.Length) <= Roundness * size && Math.Abs(a.Dot(b)) <= Roundness * size * size)
        {
            Run.GoTo(end, a.Cross(b) > 0 ? sweep : -sweep);
            return;
        }

        // A chord over a step h of t is off by at most h * h / 8 times the longest half axis, which is no longer than this.
        double longest = Math.Sqrt(a.Dot(a) + b.Dot(b));
        int count = Divided(Math.Abs(sweep) * Math.Sqrt(longest / (8 * ChordTolerance)));
        Chorded = true;
        Chords += count;
        for (int k = 1; k <= count; k++)
        {
            (double sin, double cos) = Math.SinCos(from + (sweep * k / count));
            Run.GoTo(k == count ? end : c + (a * cos) + (b * sin));
        }
    }

    private OpenChain Run => run ?? throw new InvalidOperationException("a run is started before it goes on");

    // More chords than an outline may have points are refused when the outline is made.
    private static int Divided(double count) => (int)Math.Clamp(Math.Ceiling(count), 1, Outline.MostPoints + 1);

    private static Point2 Casteljau(Point2[] control, double t)
    {
        Point2[] p = [.. control];
        for (int level = p.Length - 1; level > 0; level--)
        {
            for (int i = 0; i < level; i++)
            {
                p[i] = (p[i] * (1 - t)) + (p[i + 1] * t);
            }
        }

        return p[0];
    }
}
