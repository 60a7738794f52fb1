using FeltNest.Geometry;

namespace FeltNest.Panel.Proven;

/// <summary>A measured outline laid on the panel of some values.</summary>
/// <param name="Values">Neutral layer, waist in mm, edge limit in per cent.</param>
/// <param name="Turn">Turn of the outline, radians, after its long axis was laid along u.</param>
/// <param name="Move">Move of the outline, mm.</param>
/// <param name="Parameters">Parameter of the panel's edge nearest to each place.</param>
/// <param name="Feet">That place of the edge.</param>
/// <param name="Outward">Normal there, out of the panel.</param>
/// <param name="Off">Distance along it, mm.</param>
internal sealed record ProvenState(
    double[] Values, double Turn, Point2 Move, double[] Parameters, Point2[] Feet, Point2[] Outward, double[] Off)
{
    /// <summary>Sum of the squared distances, mm2.</summary>
    public double Square => Off.Sum(d => d * d);

    /// <summary>Root mean square of the distances, mm.</summary>
    public double Rms => Math.Sqrt(Square / Off.Length);
}
