using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Flatten;

/// <summary>Elastic energy of the felt drawn from a flat map over the unit sphere.</summary>
internal static class PanelEnergy
{
    /// <summary>The energy, for any flat map.</summary>
    /// <exception cref="NoAnswerException">The map folds over itself.</exception>
    public static double Of(FlatMap map, in FeltLaw law)
    {
        // As many points as the elastic solve uses for the same degree.
        DiscQuadrature rule = DiscQuadrature.Exact(3 * map.Space.Degree, map.Space.IsMirrorSymmetric && law.IsMirrorSymmetric);
        double sum = 0;
        for (int q = 0; q < rule.Count; q++)
        {
            Metric metric = map.Domain.At(rule.X[q], rule.Y[q]).Metric;
            FlatJet flat = map.At(rule.X[q], rule.Y[q]);
            EnergyDensity density = new(law, metric, flat.Ux, flat.Uy, flat.Vx, flat.Vy);
            sum += density.IsSound ? rule.Weights[q] * density.Value : throw new NoAnswerException("the flat panel folds over itself");
        }

        return sum;
    }
}
