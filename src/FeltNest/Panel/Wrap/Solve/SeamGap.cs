using FeltNest.Seam;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>Gap that two copies of an edge on the unit sphere leave: the second is the first half-turned about the axis (1, -1, 0).</summary>
internal static class SeamGap
{
    /// <summary>Signed gap at each place, radians: along the great circle normal to the edge, outwards, to the other copy's edge; negative where that lies inside. Not a number where the circle meets no
    /// such edge.</summary>
    /// <param name="edge">The edge, counter-clockwise seen from outside.</param>
    public static double[] Of(IReadOnlyList<SpherePoint> edge)
    {
        int n = edge.Count;
        SpherePoint[] mate = [.. edge.Select(p => new SpherePoint(-p.Y, -p.X, -p.Z))];
        double[] gaps = new double[n];
        for (int i = 0; i < n; i++)
        {
            SpherePoint here = edge[i], chord = edge[(i + 1) % n] - edge[(i + n - 1) % n], along = chord - (chord.Dot(here) * here), tangent = (1 / along.Length) * along, outward = tangent.Cross(here);
            double best = double.NaN;
            for (int k = 0; k < n; k++)
            {
                SpherePoint a = mate[k], b = mate[(k + 1) % n];
                double da = a.Dot(tangent), db = b.Dot(tangent);
                if (da < 0 != db < 0)
                {
                    SpherePoint met = a + ((da / (da - db)) * (b - a));
                    double angle = Math.Atan2(met.Dot(outward), met.Dot(here));
                    best = double.IsNaN(best) || Math.Abs(angle) < Math.Abs(best) ? angle : best;
                }
            }

            gaps[i] = best;
        }

        return gaps;
    }
}
