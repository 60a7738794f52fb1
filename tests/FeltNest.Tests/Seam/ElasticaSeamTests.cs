using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Seam;

/// <summary>Values derived independently (own derivation) from the equation of J. Langer and D. Singer, J. Differential Geometry 20,
/// 1984.</summary>
public sealed class ElasticaSeamTests
{
    [Theory]
    [InlineData(60, 0.222880526, 1.309049667, 10.21410904, 1.23601056)]
    [InlineData(38.9424412689815, 0.234193917, 1.185628701, 11.31744919, 1.14753649)]
    public void Parameters_length_and_curvature_keep_the_derived_values(
        double waistDeg, double m, double p, double length, double curvature)
    {
        ElasticaSeam seam = ElasticaSeam.ForWaist(waistDeg * Math.PI / 180);

        Assert.Equal(m, seam.Parameter, 1e-8);
        Assert.Equal(p, seam.Rate, 1e-8);
        Assert.Equal(length, seam.Length, 1e-8);
        Assert.Equal(curvature, seam.GreatestCurvature, 1e-8);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(47)]
    [InlineData(90)]
    public void Its_curvature_keeps_the_first_integral_of_the_elastica(double waistDeg)
    {
        // kg'^2 + kg^4/4 + c kg^2 is constant along the curve, c = (1 - 2 m) p^2; derivatives by arc from the curve itself.
        ElasticaSeam seam = ElasticaSeam.ForWaist(waistDeg * Math.PI / 180);
        double c = (1 - (2 * seam.Parameter)) * seam.Rate * seam.Rate;
        double most = seam.GreatestCurvature;
        double whole = (Math.Pow(most, 4) / 4) + (c * most * most);
        const double h = 1e-3;
        for (double s = 0.1; s < 6; s += 0.4)
        {
            double slope = (seam.At(s + h).GeodesicCurvature - seam.At(s - h).GeodesicCurvature) / (2 * h * seam.At(s).Speed);
            double here = seam.At(s).GeodesicCurvature;
            Assert.Equal(whole, (slope * slope) + (Math.Pow(here, 4) / 4) + (c * here * here), 1e-4);
            Assert.Equal(seam.Length / (2 * Math.PI), seam.At(s).Speed, 1e-10);
        }
    }

    [Fact]
    public void It_bends_less_in_all_than_the_other_seams_of_its_waist()
    {
        // An elastica is stationary for the integral of kg^2 at given length; at one waist it lies below both other families, whose lengths
        // are within 3 %.
        const double waist = Math.PI / 3;
        double Bending(SeamCurve seam) =>
            Enumerable.Range(0, 800)
                .Select(i => seam.At((i + 0.5) * Math.PI / 400))
                .Sum(jet => jet.GeodesicCurvature * jet.GeodesicCurvature * jet.Speed) * Math.PI / 400;

        Assert.True(Bending(ElasticaSeam.ForWaist(waist)) < Bending(TwoHarmonicSeam.ForWaist(waist)));
    }
}
