using FeltNest.Seam;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>Gap that two copies of an edge on the unit sphere leave: the second is the first half-turned about the axis (1, -1,
/// 0).</summary>
internal static class SeamGap
{
    /// <summary>The turn of both copies about their poles, radians, that leaves the least mean square gap.</summary>
    /// <remarks>Golden section within a fifth of a radian either way: felt askew to its warp turns its middle against its ends by a degree
    /// or two.</remarks>
    public static double BestTurn(IReadOnlyList<SpherePoint> edge)
    {
        // Steps until the turn is known to a millionth of a radian.
        const int steps = 26;
        const double most = 0.2;
        double share = (Math.Sqrt(5) - 1) / 2;
        double low = -most;
        double high = most;
        double a = high - (share * (high - low));
        double b = low + (share * (high - low));
        double fa = Uneven(a);
        double fb = Uneven(b);
        for (int i = 0; i < steps; i++)
        {
            if (fa <= fb)
            {
                (high, b, fb) = (b, a, fa);
                a = high - (share * (high - low));
                fa = Uneven(a);
            }
            else
            {
                (low, a, fa) = (a, b, fb);
                b = low + (share * (high - low));
                fb = Uneven(b);
            }
        }

        return (low + high) / 2;

        double Uneven(double turn)
        {
            double[] met = [.. Of(EdgeFreeWrap.Turned(edge, turn)).OfType<double>()];
            return met.Length == 0 ? double.PositiveInfinity : met.Average(gap => gap * gap);
        }
    }

    /// <summary>Signed gap at each place, radians: along the great circle normal to the edge, outwards, to the other copy's edge; negative
    /// where that lies inside. Null where the circle meets no such edge.</summary>
    /// <param name="edge">The edge, counter-clockwise seen from outside.</param>
    public static double?[] Of(IReadOnlyList<SpherePoint> edge) => Between(edge, edge);

    /// <summary>Signed gap at each place of one panel's edge to the edge of another, likewise.</summary>
    /// <param name="edge">The first panel's edge, counter-clockwise seen from outside.</param>
    /// <param name="other">The second panel's edge in its own frame, before the half-turn that brings it beside the first.</param>
    public static double?[] Between(IReadOnlyList<SpherePoint> edge, IReadOnlyList<SpherePoint> other)
    {
        int n = edge.Count;
        SpherePoint[] mate = [.. other.Select(p => new SpherePoint(-p.Y, -p.X, -p.Z))];
        double?[] gaps = new double?[n];
        for (int i = 0; i < n; i++)
        {
            SpherePoint here = edge[i];
            SpherePoint chord = edge[(i + 1) % n] - edge[(i + n - 1) % n];
            SpherePoint along = chord - (chord.Dot(here) * here);
            SpherePoint tangent = (1 / along.Length) * along;
            SpherePoint outward = tangent.Cross(here);
            double? best = null;
            for (int k = 0; k < n; k++)
            {
                SpherePoint a = mate[k];
                SpherePoint b = mate[(k + 1) % n];
                double da = a.Dot(tangent);
                double db = b.Dot(tangent);
                if (da < 0 != db < 0)
                {
                    SpherePoint met = a + ((da / (da - db)) * (b - a));
                    double angle = Math.Atan2(met.Dot(outward), met.Dot(here));
                    best = best is not { } known || Math.Abs(angle) < Math.Abs(known) ? angle : best;
                }
            }

            gaps[i] = best;
        }

        return gaps;
    }
}
