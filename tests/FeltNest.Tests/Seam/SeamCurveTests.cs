using FeltNest.Ball;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Seam;

/// <summary>What every family of seam must be.</summary>
public sealed class SeamCurveTests
{
    public static TheoryData<SeamFamily, double> Seams
    {
        get
        {
            TheoryData<SeamFamily, double> data = [];
            foreach (SeamFamily family in new[] { SeamFamily.TwoHarmonic, SeamFamily.FourArc, SeamFamily.Elastica })
            {
                foreach (double waist in new[] { 20, 47, 60, 90 })
                {
                    data.Add(family, waist);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Seams))]
    public void The_curve_lies_on_the_sphere_with_the_waist_asked_and_the_derivatives_given(SeamFamily family, double waistDeg)
    {
        SeamCurve seam = SeamCurve.For(family, waistDeg * Math.PI / 180);
        const double h = 1e-5;
        for (double s = 0.05; s < 6.2; s += 0.31)
        {
            SeamJet jet = seam.At(s);
            Assert.Equal(1, jet.Point.Length, 12);
            Assert.Equal(0, (jet.First - ((0.5 / h) * (seam.At(s + h).Point - seam.At(s - h).Point))).Length, 1e-7);
            Assert.Equal(0, (jet.Second - ((0.5 / h) * (seam.At(s + h).First - seam.At(s - h).First))).Length, 1e-6);
        }

        Assert.Equal(waistDeg * Math.PI / 180, 2 * Math.Asin(-seam.At(0).Point.Y), 1e-12);
        Assert.Equal(seam.LengthAngle, 2 * (Math.PI - Math.Asin(seam.At(Math.PI / 2).Point.X)), 1e-10);
    }

    [Theory]
    [MemberData(nameof(Seams))]
    public void Half_turns_keep_it_and_lay_the_second_panel(SeamFamily family, double waistDeg)
    {
        SeamCurve seam = SeamCurve.For(family, waistDeg * Math.PI / 180);
        for (double s = 0.01; s < 6.28; s += 0.3)
        {
            SpherePoint here = seam.At(s).Point;
            SpherePoint mate = seam.At((Math.PI / 2) - s).Point;
            SpherePoint opposite = seam.At(s + Math.PI).Point;
            SpherePoint mirror = seam.At(-s).Point;
            Assert.Equal(0, (mate - new SpherePoint(-here.Y, -here.X, -here.Z)).Length, 12);
            Assert.Equal(0, (opposite - new SpherePoint(-here.X, -here.Y, here.Z)).Length, 12);
            Assert.Equal(0, (mirror - new SpherePoint(-here.X, here.Y, here.Z)).Length, 12);
        }
    }

    [Theory]
    [MemberData(nameof(Seams))]
    public void Its_turning_is_zero_and_its_stated_figures_are_those_of_the_curve(SeamFamily family, double waistDeg)
    {
        // Gauss-Bonnet: the turning is 2 pi less the panel's area, 0 for half the sphere.
        SeamCurve seam = SeamCurve.For(family, waistDeg * Math.PI / 180);
        SeamJet[] jets = [.. Enumerable.Range(0, 4000).Select(i => seam.At((i + 0.5) * Math.PI / 2000))];

        Assert.Equal(0, jets.Sum(jet => jet.GeodesicCurvature * jet.Speed) * Math.PI / 2000, 1e-9);
        Assert.Equal(seam.Length, jets.Sum(jet => jet.Speed) * Math.PI / 2000, 1e-9);
        Assert.Equal(seam.GreatestCurvature, jets.Max(jet => Math.Abs(jet.GeodesicCurvature)), 1e-5);
        Assert.Equal(seam.WidthAngle, 2 * Math.Asin(jets.Max(jet => Math.Abs(jet.Point.Y))), 1e-5);
    }

    [Theory]
    [InlineData(SeamFamily.FourArc)]
    [InlineData(SeamFamily.Elastica)]
    public void A_waist_out_of_range_is_refused_in_millimetres(SeamFamily family)
    {
        InputException error =
            Assert.Throws<InputException>(() => SeamCurve.For(new SeamSpec { Curve = family, WaistMm = 60, SeamGapMm = 0 }, 31.75));

        Assert.Equal("seam.waistMm", error.Field);
        Assert.Contains(
            "60 mm on a fitted sphere of radius 31.75 mm; 11.09 to 49.87 mm are allowed", error.Message, StringComparison.Ordinal);
    }
}
