namespace FeltNest.Panel.Disc;

/// <summary>Polynomials on the unit disc up to a degree: harmonics for the rim first, then functions that are zero on it.</summary>
/// <remarks>The bubbles (1 - r^2) r^k P(1,k) are the eigenfunction-like family of Zernike type whose Laplacians are orthogonal; Jacobi
/// recurrences as in M. Abramowitz and I. Stegun,
/// <i>Handbook of Mathematical Functions</i>, 1964, section 22.7.</remarks>
internal sealed class DiscBasis
{
    private readonly DiscMode[] modes;
    private readonly double[] scales;
    private readonly int degree;

    private DiscBasis(int degree, IEnumerable<DiscMode> modes)
    {
        this.degree = degree;
        this.modes = [.. modes];
        scales = [.. this.modes.Select(m => m.Scale)];
        RimCount = this.modes.Count(m => !m.IsBubble);
    }

    /// <summary>Number of functions.</summary>
    public int Count => modes.Length;

    /// <summary>Number of harmonics, which come first.</summary>
    public int RimCount { get; }

    /// <summary>The functions.</summary>
    public IReadOnlyList<DiscMode> Modes => modes;

    /// <summary>Functions that change sign under the half-turn.</summary>
    public static DiscBasis Odd(int degree, bool cosines, bool sines) =>
        new(degree, [.. Rim(degree, 1, cosines, sines), .. Bubbles(degree, 1, cosines, sines)]);

    /// <summary>Functions kept by the half-turn and zero on the rim.</summary>
    public static DiscBasis EvenBubbles(int degree, bool cosines, bool sines) => new(degree, Bubbles(degree, 0, cosines, sines));

    /// <summary>Values and derivatives of all functions at a point.</summary>
    // Long because one recurrence runs through all functions: its state would be six arguments of every piece.
    public void Evaluate(double x, double y, Span<double> values, Span<double> dx, Span<double> dy)
    {
        double r = Math.Sqrt((x * x) + (y * y));
        double rho = r * r;
        double angle = Math.Atan2(y, x);
        (double sinA, double cosA) = Math.SinCos(angle);
        int run = -1;
        int runOrder = -1;
        double power = 0;
        double powerBelow = 0;
        double before = 0;
        double here = 0;
        double beforeSlope = 0;
        double hereSlope = 0;
        double sin = 0;
        double cos = 0;
        for (int i = 0; i < modes.Length; i++)
        {
            DiscMode mode = modes[i];
            int k = mode.Turns;
            if (k != run)
            {
                (sin, cos) = Math.SinCos(k * angle);
                powerBelow = k == 0 ? 0 : Math.Pow(r, k - 1);
                power = k == 0 ? 1 : powerBelow * r;
                (run, runOrder) = (k, -1);
            }

            double radial = 1;
            double radialSlope = 0;
            if (mode.IsBubble)
            {
                if (mode.Order < runOrder || runOrder < 0)
                {
                    (before, here, beforeSlope, hereSlope, runOrder) = (0, 1, 0, 0, 0);
                }

                while (runOrder < mode.Order)
                {
                    runOrder++;
                    (double a, double b, double c) = Recurrence(runOrder, k);
                    double t = (2 * rho) - 1;
                    (before, here, beforeSlope, hereSlope) =
                        (here, (((a * t) + b) * here) - (c * before), hereSlope, (2 * a * here)
                            + (((a * t) + b) * hereSlope) - (c * beforeSlope));
                }

                radial = (1 - rho) * here;
                radialSlope = ((1 - rho) * hereSlope) - here;
            }

            // d/dr and the angular derivative over r, both without a division by r.
            double scale = scales[i];
            double wave = mode.IsSine ? sin : cos;
            double waveSlope = mode.IsSine ? cos : -sin;
            double outward = ((k * powerBelow * radial) + (power * radialSlope * 2 * r)) * wave * scale;
            double around = k * powerBelow * radial * waveSlope * scale;
            values[i] = power * radial * wave * scale;
            dx[i] = (cosA * outward) - (sinA * around);
            dy[i] = (sinA * outward) + (cosA * around);
        }
    }

    private static (double A, double B, double C) Recurrence(int j, int k)
    {
        double sum = (2 * j) + 1 + k;
        double down = 2.0 * j * (j + 1 + k) * (sum - 2);
        return j == 1
            ? ((k + 3) / 2.0, (1 - k) / 2.0, 0)
            : ((sum - 1) * sum * (sum - 2) / down, (sum - 1) * (1 - ((double)k * k)) / down, 2.0 * j * (j + k - 1) * sum / down);
    }

    private static IEnumerable<DiscMode> Rim(int degree, int parity, bool cosines, bool sines) =>
        from k in Enumerable.Range(0, degree + 1)
        where k % 2 == parity
        from sine in Kinds(k, cosines, sines)
        select new DiscMode(k, sine, -1);

    private static IEnumerable<DiscMode> Bubbles(int degree, int parity, bool cosines, bool sines) =>
        from k in Enumerable.Range(0, degree + 1)
        where k % 2 == parity
        from sine in Kinds(k, cosines, sines)
        from j in Enumerable.Range(0, degree + 1)
        where k + (2 * j) + 2 <= degree
        select new DiscMode(k, sine, j);

    private static IEnumerable<bool> Kinds(int k, bool cosines, bool sines)
    {
        if (cosines)
        {
            yield return false;
        }

        if (sines && k > 0)
        {
            yield return true;
        }
    }
}
