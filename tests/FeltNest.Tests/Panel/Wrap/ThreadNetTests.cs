using FeltNest.Geometry;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Wrap;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Panel.Wrap;

/// <summary>Cloth of threads that do not stretch and turn freely against each other: the limit of felt with a warp whose shear modulus goes
/// to nothing.</summary>
/// <remarks>The net of threads of P. Chebyshev (1878; E. Ghys, L'Enseignement Mathematique 57, 2011). On the unit sphere, from two great
/// circles that cross at right angles, the angle w between threads is a function of z = uv alone, w' + z w'' = -sin w with w(0) = 90
/// degrees. A disc laid on with its edge free keeps both mirrors, so the threads through its middle are those great circles, and with them
/// the whole net is given: the wrap itself is tested by it, not only a net built beside it.</remarks>
public sealed class ThreadNetTests
{
    [Fact]
    public void The_net_closes_where_its_threads_fall_together()
    {
        // Closing value: derived independently (own derivation).
        (double low, double high) = (1.5, 2.2);
        while (high - low > 1e-12)
        {
            double middle = (low + high) / 2;
            (low, high) = Angle(middle) > 0 ? (middle, high) : (low, middle);
        }

        Assert.Equal(1.861591677, low, 1e-8);
    }

    [Theory, Trait("tier", "long")]
    [InlineData(30, 82.479627)]
    [InlineData(45, 73.887172)]
    [InlineData(60, 63.054347)]
    public void Felt_that_shears_freely_lies_like_a_net_of_threads(double polarDeg, double threadDeg)
    {
        // Thread angle on the diagonal at a polar angle: derived independently (own derivation). It gives z = uv there, and so the disc
        // whose edge lies at that place.
        (double low, double high) = (0, 1.8);
        while (high - low > 1e-12)
        {
            double middle = (low + high) / 2;
            (low, high) = Angle(middle) > threadDeg * Math.PI / 180 ? (middle, high) : (low, middle);
        }

        double radius = Math.Sqrt(2 * low);
        double[] off = [.. new[] { 1e-3, 1e-4 }.Select(shear => Diagonal(radius, shear) - polarDeg)];

        // What shear stiffness is left moves the edge in its own measure: ten times less of it, ten times nearer.
        Assert.Equal(0, off[1], 2e-3);
        Assert.InRange(off[0] / off[1], 7, 13);
    }

    // Polar angle, degrees, of the edge of a disc on the diagonal between its threads.
    private static double Diagonal(double radius, double shear)
    {
        ArcOutline disc = ArcOutline.From([new(-radius, 0, Math.PI), new(radius, 0, Math.PI)]);
        FeltLaw law = FeltLaw.Orthotropic(1, 1, shear, 0, 0);
        EdgeFreeWrap free = PanelWrap.LayFree(new WrapRequest(1, TwoHarmonicSeam.ForWaist(1), law, disc, null));
        SpherePoint axis = free.Edge[0];
        SpherePoint diagonal = free.Edge[free.Edge.Count / 8];
        Assert.Equal(radius, Math.Acos(axis.Z), 1e-3);
        return Math.Acos(diagonal.Z) * 180 / Math.PI;
    }

    // The angle between threads at z by its power series, sin and cos of it carried along.
    private static double Angle(double z)
    {
        const int terms = 60;
        double[] w = new double[terms];
        double[] sin = new double[terms];
        double[] cos = new double[terms];
        (w[0], sin[0]) = (Math.PI / 2, 1);
        for (int n = 1; n < terms; n++)
        {
            // n^2 w_n = -sin_(n-1); n sin_n = sum k w_k cos_(n-k), and likewise for cos.
            w[n] = -sin[n - 1] / ((double)n * n);
            for (int k = 1; k <= n; k++)
            {
                sin[n] += k * w[k] * cos[n - k] / n;
                cos[n] -= k * w[k] * sin[n - k] / n;
            }
        }

        double sum = 0;
        for (int n = terms - 1; n >= 0; n--)
        {
            sum = (sum * z) + w[n];
        }

        return sum;
    }
}
