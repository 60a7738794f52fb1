namespace FeltNest.Geometry.Curves;

/// <summary>A smooth closed curve as a sum of cosines and sines of whole turns.</summary>
/// <param name="terms">For each number of turns from 0 the factor of its cosine and of its sine, mm.</param>
internal sealed class HarmonicCurve(IReadOnlyList<(Point2 Cosine, Point2 Sine)> terms) : IPlaneCurve
{
    /// <inheritdoc/>
    public double Period => 2 * Math.PI;

    /// <inheritdoc/>
    public CurvePoint At(double parameter)
    {
        Point2 place = default;
        Point2 slope = default;
        for (int k = 0; k < terms.Count; k++)
        {
            (double sin, double cos) = Math.SinCos(k * parameter);
            place += (terms[k].Cosine * cos) + (terms[k].Sine * sin);
            slope += ((terms[k].Sine * cos) - (terms[k].Cosine * sin)) * k;
        }

        return new CurvePoint(place, slope);
    }
}
