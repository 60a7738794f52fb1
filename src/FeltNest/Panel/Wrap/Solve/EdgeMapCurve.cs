using FeltNest.Geometry;
using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>The smooth edge through an edge map at equal steps of the seam parameter, as a sum of sines and cosines.</summary>
internal sealed class EdgeMapCurve : IPlaneCurve
{
    private readonly HarmonicCurve curve;

    /// <summary>Takes the harmonics.</summary>
    /// <exception cref="InputException">The map has too few places or uneven steps.</exception>
    public EdgeMapCurve(IReadOnlyList<EdgePoint> map)
    {
        // Fewer places than this do not carry the harmonics of a panel's edge; steps may be off by rounding alone.
        const int fewest = 180;
        const double rounding = 1e-6;
        int n = map.Count;
        if (n < fewest || Enumerable.Range(0, n).Any(i => !(Math.Abs(map[i].S - (2 * Math.PI * i / n)) < rounding)))
        {
            throw new InputException(
                null, "edgeMap", FormattableString.Invariant($"{n} places; at least {fewest} at equal steps of s from 0 are needed"));
        }

        // Harmonics beyond these are rounding in a panel of the usual degree.
        const int most = 80;
        (Point2 Cosine, Point2 Sine)[] terms = new (Point2, Point2)[most];
        for (int k = 0; k < most; k++)
        {
            Point2 cosine = default;
            Point2 sine = default;
            for (int i = 0; i < n; i++)
            {
                (double sin, double cos) = Math.SinCos(2 * Math.PI * ((long)k * i % n) / n);
                Point2 place = new(map[i].U, map[i].V);
                (cosine, sine) = (cosine + (place * cos), sine + (place * sin));
            }

            double scale = (k == 0 ? 1.0 : 2.0) / n;
            terms[k] = (cosine * scale, sine * scale);
        }

        curve = new HarmonicCurve(terms);
    }

    /// <inheritdoc/>
    public double Period => curve.Period;

    /// <inheritdoc/>
    public CurvePoint At(double parameter) => curve.At(parameter);
}
