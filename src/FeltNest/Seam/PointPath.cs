using System.Globalization;
using FeltNest.Ball;
using FeltNest.Numerics;

namespace FeltNest.Seam;

/// <summary>Given points of a seam, proven to go once round the pole in small steps, with a first guess of their seam parameters: even in
/// length, pi/4 at the place nearest to (1, -1, 0).</summary>
internal sealed class PointPath
{
    // Fewer points than this do not show a curve with four bends each way.
    private const int Fewest = 24;

    // Greatest part by which distances may differ, from the frame's zero and from the fitted centre (a probe good to 0.2 mm), and greatest
    // step between neighbours, radians (30 degrees): the fewest points, spread evenly, lie 25 degrees apart; farther apart the curve
    // between is a guess.
    private const double Roundish = 0.1;
    private const double Roundness = 0.05;
    private const double WidestStep = 30 * Math.PI / 180;

    // Distances that differ by less than this part are exact: their centre is the frame's.
    private const double Exact = 1e-6;

    private PointPath(SpherePoint[] directions, double[] parameters, double step, bool reversed)
    {
        Directions = directions;
        Parameters = parameters;
        Step = step;
        IsReversed = reversed;
    }

    /// <summary>Points on the unit sphere, counter-clockwise round the pole seen from outside.</summary>
    public SpherePoint[] Directions { get; }

    /// <summary>Seam parameters.</summary>
    public double[] Parameters { get; }

    /// <summary>Greatest step between neighbours, in seam parameter.</summary>
    public double Step { get; }

    /// <summary>Whether the points were given clockwise: their order is turned round here.</summary>
    public bool IsReversed { get; }

    /// <summary>Looks at points.</summary>
    /// <exception cref="InputException">They are no path round the pole.</exception>
    public static PointPath Of(IReadOnlyList<SeamPoint> points)
    {
        List<SpherePoint> given = [.. points.Select(p => new SpherePoint(p.X, p.Y, p.Z))];
        if (given.Count > 1 && given[0] == given[^1])
        {
            given.RemoveAt(given.Count - 1);
        }

        RequireSphere(given, Roundish);
        given = Centred(given);
        RequireSphere(given, Roundness);
        SpherePoint[] directions = [.. given.Select(p => (1 / p.Length) * p)];
        double turns = TurnsRoundPole(directions);
        if (turns < 0)
        {
            Array.Reverse(directions);
        }

        double[] steps = [.. Pairs(directions).Select(pair => 2 * Math.Asin(Math.Min(1, (pair.To - pair.From).Length / 2)))];
        int widest = Array.IndexOf(steps, steps.Max());
        if (steps[widest] > WidestStep)
        {
            int number = turns < 0 ? given.Count - 1 - widest : widest + 1;
            throw PointSeam.Refusal(string.Create(
                CultureInfo.InvariantCulture,
                $"{steps[widest] * 180 / Math.PI:0.##} degrees of arc between neighbours at point {number}; at most "
                    + $"{WidestStep * 180 / Math.PI:0} are allowed, the last point back to the first included"));
        }

        double[] parameters = Parametrised(directions, steps);
        RefuseQuarterTurn(directions, parameters);
        return new PointPath(directions, parameters, 2 * Math.PI * steps[widest] / steps.Sum(), turns < 0);
    }

    private static void RequireSphere(List<SpherePoint> given, double roundness)
    {
        if (given.Count < Fewest)
        {
            throw PointSeam.Refusal(FormattableString.Invariant($"{given.Count} points; at least {Fewest} are needed"));
        }

        double least = given.Min(p => p.Length);
        double greatest = given.Max(p => p.Length);
        if (!(double.IsFinite(greatest) && least > 0 && greatest <= (1 + roundness) * least))
        {
            throw PointSeam.Refusal(
                FormattableString.Invariant(
                    $"distances from the centre run from {least:0.###} to {greatest:0.###}; they may differ by {100 * roundness:0} %"));
        }
    }

    // Points of a probe seen from the middle of the sphere that lies nearest to them: |p|2 = 2 c p + d, linear in the centre c and in d.
    private static List<SpherePoint> Centred(List<SpherePoint> given)
    {
        const int unknowns = 4;
        double least = given.Min(p => p.Length);
        if (given.Max(p => p.Length) <= (1 + Exact) * least)
        {
            return given;
        }

        double[] normal = new double[unknowns * unknowns];
        double[] right = new double[unknowns];
        foreach (SpherePoint p in given)
        {
            double[] row = [2 * p.X / least, 2 * p.Y / least, 2 * p.Z / least, 1];
            for (int a = 0; a < unknowns; a++)
            {
                right[a] += row[a] * p.Dot(p) / (least * least);
                DenseRows.Add(normal.AsSpan(a * unknowns, unknowns), row[a], row);
            }
        }

        if (DenseCholesky.TryFactor(normal, unknowns, 0) is not { } factor)
        {
            return given;
        }

        factor.Solve(right);
        SpherePoint centre = new(right[0] * least, right[1] * least, right[2] * least);
        return [.. given.Select(p => p - centre)];
    }

    // Once round, 1 or -1 by the sense.
    private static double TurnsRoundPole(SpherePoint[] directions)
    {
        double winding = Pairs(directions)
            .Sum(pair => Math.IEEERemainder(Math.Atan2(pair.To.Y, pair.To.X) - Math.Atan2(pair.From.Y, pair.From.X), 2 * Math.PI));
        double turns = Math.Round(winding / (2 * Math.PI));
        return Math.Abs(turns) == 1
            ? turns
            : throw PointSeam.Refusal(
                FormattableString.Invariant(
                    $"the points go {turns:0} times round the z axis; once is needed, with z through a panel's pole"));
    }

    private static double[] Parametrised(SpherePoint[] directions, double[] steps)
    {
        SpherePoint axis = new(Math.Sqrt(0.5), -Math.Sqrt(0.5), 0);
        double along = 0;
        double whole = steps.Sum();
        double best = double.PositiveInfinity;
        double origin = 0;
        double[] lengths = new double[directions.Length];
        for (int i = 0; i < directions.Length; i++)
        {
            lengths[i] = along;
            SpherePoint here = directions[i];
            SpherePoint chord = directions[(i + 1) % directions.Length] - here;
            double part = Math.Clamp((axis - here).Dot(chord) / Math.Max(double.Epsilon, chord.Dot(chord)), 0, 1);
            double off = (here + (part * chord) - axis).Length;
            (best, origin) = off < best ? (off, along + (part * steps[i])) : (best, origin);
            along += steps[i];
        }

        return [.. lengths.Select(at => (Math.PI / 4) + (2 * Math.PI * (at - origin) / whole))];
    }

    // The tips lie below the equator: where the half towards +x lies above it, the frame is a quarter turn off.
    private static void RefuseQuarterTurn(SpherePoint[] directions, double[] parameters)
    {
        double height = directions
            .Where((_, i) => Math.Abs(Math.IEEERemainder(parameters[i] - (Math.PI / 2), 2 * Math.PI)) < Math.PI / 4)
            .Average(p => p.Z);
        if (height > 0)
        {
            throw PointSeam.Refusal(
                "x goes through a waist, not through a tip of the panel whose pole is on z; turn the points a quarter about z");
        }
    }

    private static IEnumerable<(SpherePoint From, SpherePoint To)> Pairs(SpherePoint[] points) =>
        points.Select((p, i) => (p, points[(i + 1) % points.Length]));
}
