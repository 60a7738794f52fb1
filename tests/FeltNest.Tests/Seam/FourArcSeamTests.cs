using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Seam;

/// <summary>Values derived independently (own derivation); the four semicircles of waist 90 degrees are named by R. Ferreol, Encyclopedie
/// des formes mathematiques remarquables.</summary>
public sealed class FourArcSeamTests
{
    [Theory]
    [InlineData(90, 45, 8.8857658763)]
    [InlineData(60, 46.5505244739, 10.4501849194)]
    [InlineData(38.942441269, 48.9030969622, 11.5987469624)]
    public void Radius_and_length_keep_the_derived_values(double waistDeg, double radiusDeg, double length)
    {
        FourArcSeam seam = FourArcSeam.ForWaist(waistDeg * Math.PI / 180);

        Assert.Equal(radiusDeg, seam.Radius * 180 / Math.PI, 1e-8);
        Assert.Equal(length, seam.Length, 1e-8);
        Assert.Equal(1 / Math.Tan(seam.Radius), seam.GreatestCurvature, 1e-14);
    }

    [Fact]
    public void The_curvature_is_that_of_one_circle_and_changes_its_sign_at_the_joints()
    {
        FourArcSeam seam = FourArcSeam.ForWaist(1);
        double curvature = 1 / Math.Tan(seam.Radius);

        foreach (double s in new[] { -0.7, 0, 0.3, 0.78 })
        {
            Assert.Equal(-curvature, seam.At(s).GeodesicCurvature, 12);
            Assert.Equal(curvature, seam.At(s + (Math.PI / 2)).GeodesicCurvature, 12);
            Assert.Equal(-curvature, seam.At(s + Math.PI).GeodesicCurvature, 12);
        }

        Assert.Equal(0, seam.At(Math.PI / 4).GeodesicCurvature, 12);
        Assert.Equal(0, (seam.At((Math.PI / 4) - 1e-9).First - seam.At((Math.PI / 4) + 1e-9).First).Length, 1e-8);
    }
}
