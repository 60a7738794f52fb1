using FeltNest.Geometry;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Rows;

/// <summary>A start for the polisher with the way back to a layout.</summary>
/// <param name="Method">What made it, in words.</param>
/// <param name="Density">Panels per mm of roll that the start promises.</param>
/// <param name="Model">The movable lay.</param>
/// <param name="Build">Makes the repeat from parameters.</param>
/// <param name="IsAlternate">True when its tilts are +a and -a alone.</param>
internal sealed record LayStart(
    string Method, double Density, PoseModel Model, Func<double[], LayoutRepeat> Build, bool IsAlternate = false)
{
    /// <summary>Parallel rows.</summary>
    internal static LayStart Of(LayoutRequest request, RowLattice rows, TiltRange tilts) => new(
        "parallel rows, polished", rows.Density, RowModels.Of(request, rows, tilts), at => RowModels.Repeat(rows.Rows, at));

    /// <summary>The same start moved a little at random.</summary>
    internal LayStart Shaken(Random random, double by, Outline part)
    {
        double radius = part.Points.Max(p => p.Length);
        double[] moved = [.. Model.Parameters];
        for (int i = 0; i < moved.Length; i++)
        {
            double reach = Model.IsAngle[i] ? 4 * by / radius : by;
            moved[i] = Math.Clamp(moved[i] + (reach * ((2 * random.NextDouble()) - 1)), Model.Least[i], Model.Most[i]);
        }

        return this with { Model = Model with { Parameters = moved } };
    }
}
