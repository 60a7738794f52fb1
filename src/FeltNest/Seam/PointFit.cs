using FeltNest.Numerics;

namespace FeltNest.Seam;

/// <summary>The symmetric series nearest to points in the sense of least squares, each point at the parameter nearest to it.</summary>
/// <param name="Series">The curve.</param>
/// <param name="Deviation">Greatest distance of a point from it, radians.</param>
/// <param name="Worst">Number of that point as given, from 1.</param>
internal sealed record PointFit(SeamSeries Series, double Deviation, int Worst)
{
    /// <summary>Root mean square distance of the points, radians.</summary>
    public required double Rms { get; init; }

    // Points within this of the curve, radians rms (0.03 mm on a ball), are no noise to be left behind.
    private const double Clean = 1e-3;

    // Fewest harmonics: a family's seam to a tenth of a millimetre.
    private const int FewestHarmonics = 5;

    // Rounds of fit and new parameters: parameters even in length are already good to a few per cent of a step, and each round takes most
    // of the rest.
    private const int Rounds = 12;

    // Harmonics at most, and steps of the path that the shortest wave must span, so that it cannot swing between points.
    private const int MostHarmonic = 41;
    private const double StepsPerWave = 3;

    /// <summary>Fits.</summary>
    /// <param name="path">The points.</param>
    /// <param name="mirrors">Whether the curve is to have both mirrors.</param>
    public static PointFit To(PointPath path, bool mirrors)
    {
        int most = Math.Clamp((int)(2 * Math.PI / (StepsPerWave * path.Step)), FewestHarmonics, MostHarmonic);
        PointFit best = To(path, mirrors, most);
        if (best.Rms <= Clean)
        {
            return best;
        }

        // Noise: as many harmonics as predict a point left out best (generalised cross-validation: P. Craven, G. Wahba, Numerische
        // Mathematik 31:377-403, 1979).
        double least = Score(best, most);
        for (int harmonics = FewestHarmonics; harmonics < most; harmonics += 4)
        {
            PointFit fit = To(path, mirrors, harmonics);
            (best, least) = Score(fit, harmonics) < least ? (fit, Score(fit, harmonics)) : (best, least);
        }

        return best;

        // About half a value for each harmonic moves the curve across itself; without mirrors twice as many.
        double Score(PointFit fit, int harmonics) =>
            fit.Rms / Math.Max(0.1, 1 - ((mirrors ? 0.5 : 1.0) * harmonics / path.Directions.Length));
    }

    private static PointFit To(PointPath path, bool mirrors, int harmonics)
    {
        double[] at = [.. path.Parameters];
        SeamSeries series = Fit(path.Directions, at, harmonics, mirrors);
        for (int round = 0; round < Rounds; round++)
        {
            for (int i = 0; i < at.Length; i++)
            {
                at[i] = Nearest(series, path.Directions[i], at[i]);
            }

            series = Fit(path.Directions, at, harmonics, mirrors);
        }

        double[] off = [.. path.Directions.Select((p, i) => (series.At(Nearest(series, p, at[i])).Point - p).Length)];
        int worst = Array.IndexOf(off, off.Max());
        return new PointFit(series, off[worst], path.IsReversed ? off.Length - worst : worst + 1)
        {
            Rms = Math.Sqrt(DenseRows.Dot(off, off) / off.Length),
        };
    }

    private static SeamSeries Fit(SpherePoint[] points, double[] at, int harmonics, bool mirrors)
    {
        int plan = (harmonics + 1) / 2;
        int height = (harmonics + 2) / 4;
        int skew = mirrors ? 0 : harmonics / 4;
        double[] x = LeastSquares(mirrors ? plan : 2 * plan, points.Length * 2, (row, to) =>
        {
            double s = at[row / 2];
            for (int i = 0; i < plan; i++)
            {
                double k = (2 * i) + 1;
                double mate = i % 2 == 0 ? -1 : 1;
                to[i] = row % 2 == 0 ? Math.Sin(k * s) : mate * Math.Cos(k * s);
                if (!mirrors)
                {
                    to[plan + i] = row % 2 == 0 ? Math.Cos(k * s) : mate * Math.Sin(k * s);
                }
            }

            return row % 2 == 0 ? points[row / 2].X : points[row / 2].Y;
        });
        double[] z = LeastSquares(height + skew, points.Length, (row, to) =>
        {
            for (int i = 0; i < height; i++)
            {
                to[i] = Math.Cos(((4 * i) + 2) * at[row]);
            }

            for (int i = 0; i < skew; i++)
            {
                to[height + i] = Math.Sin(((4 * i) + 4) * at[row]);
            }

            return points[row].Z;
        });
        return new SeamSeries(x[..plan], x[plan..], z[..height], z[height..]);
    }

    // Normal equations: sines and cosines at many places are nearly orthogonal, so that their matrix is well conditioned.
    private static double[] LeastSquares(int unknowns, int rows, Func<int, double[], double> row)
    {
        NormalEquations equations = new(unknowns);
        double[] values = new double[unknowns];
        for (int r = 0; r < rows; r++)
        {
            double target = row(r, values);
            equations.Add(values, target);
        }

        return equations.Solve() ?? throw PointSeam.Refusal("the points lie too unevenly along the seam to tell its shape");
    }

    private static double Nearest(SeamSeries series, SpherePoint point, double start)
    {
        // Newton's steps on the distance's slope, each held below the greatest way a parameter can be off.
        const double most = 0.1;
        double s = start;
        for (int i = 0; i < 4; i++)
        {
            SeamJet jet = series.At(s);
            SpherePoint off = jet.Point - point;
            double bend = Math.Max(jet.First.Dot(jet.First) / 2, jet.First.Dot(jet.First) + off.Dot(jet.Second));
            s -= Math.Clamp(off.Dot(jet.First) / bend, -most, most);
        }

        return s;
    }
}
