using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Seam;

/// <summary>Values: closed forms and tables derived independently with their own code (own derivation); Gauss-Bonnet and the four
/// inflections by V. I. Arnold, 1994.</summary>
public sealed class TwoHarmonicSeamTests
{
    private const double Relative = 1e-9;

    public static TheoryData<double, double, double, double, double> Table => new()
    {
        { 0.15, 8.75328293841, 88.854008, 94.87247526, 1.39448010735 },
        { 0.20, 9.4756669669, 73.73979529, 90.93375033, 1.38775510204 },
        { 0.25, 10.1668764191, 60, 90, 1.34715062811 },
        { 1.0 / 3, 11.2651914811, 38.94244127, 91.65072406, 1.24450793489 },
    };

    [Theory]
    [MemberData(nameof(Table))]
    public void Length_waist_width_and_curvature_keep_the_derived_values(
        double beta, double length, double waistDeg, double widthDeg, double curvature)
    {
        TwoHarmonicSeam seam = WithBeta(beta);

        Near(beta, seam.Beta, Relative);
        Near(length, seam.Length, Relative);
        Near(waistDeg, Degrees(seam.WaistAngle), Relative * 10);
        Near(widthDeg, Degrees(seam.WidthAngle), Relative);
        Near(curvature, seam.GreatestCurvature, Relative);
        Near(360 - waistDeg, Degrees(seam.LengthAngle), Relative * 10);
    }

    [Theory]
    [InlineData(25)]
    [InlineData(47)]
    [InlineData(60)]
    [InlineData(88)]
    public void Closed_forms_agree_with_the_curve_itself(double waistDeg)
    {
        TwoHarmonicSeam seam = TwoHarmonicSeam.ForWaist(waistDeg * Math.PI / 180);
        const int steps = 2000;
        double length = 0;
        double turning = 0;
        double curvature = 0;
        double width = 0;
        double area = 0;
        for (int i = 0; i < steps; i++)
        {
            SeamJet jet = seam.At(2 * Math.PI * i / steps);
            length += jet.Speed * 2 * Math.PI / steps;
            turning += jet.GeodesicCurvature * jet.Speed * 2 * Math.PI / steps;
            curvature = Math.Max(curvature, Math.Abs(jet.GeodesicCurvature));
            width = Math.Max(width, 2 * Math.Asin(Math.Abs(jet.Point.Y)));

            // Area by turning z about the axis: integral of (1 - z) d(longitude).
            SpherePoint p = jet.Point;
            SpherePoint d = jet.First;
            area += (1 - p.Z) * ((p.X * d.Y) - (p.Y * d.X)) / ((p.X * p.X) + (p.Y * p.Y)) * 2 * Math.PI / steps;
        }

        Near(seam.Length, length, 1e-12);
        Near(seam.GreatestCurvature, curvature, 1e-12);
        Assert.InRange(width, seam.WidthAngle * (1 - 1e-5), seam.WidthAngle * (1 + 1e-12));
        Near(SeamCurve.PanelArea, area, 1e-12);
        Assert.InRange(turning, -1e-11, 1e-11);
    }

    [Fact]
    public void Curvature_follows_its_closed_form_all_along()
    {
        TwoHarmonicSeam seam = WithBeta(0.25);
        const double a = 0.75;
        const double b = 0.25;
        for (double s = 0.05; s < 6; s += 0.37)
        {
            double c = Math.Cos(2 * s);
            double speed2 = 1 + (8 * b) - (4 * a * b * c * c);
            double expected = -2 * Math.Sqrt(a * b) * c * ((3 * (1 + (4 * b))) - (4 * a * b * c * c)) / Math.Pow(speed2, 1.5);
            Assert.Equal(expected, seam.At(s).GeodesicCurvature, 12);
            Assert.Equal(Math.Sqrt(speed2), seam.At(s).Speed, 12);
        }
    }

    [Fact]
    public void The_curve_stays_on_the_sphere_and_runs_counter_clockwise_from_the_waist_to_the_tip()
    {
        TwoHarmonicSeam seam = WithBeta(0.3);

        for (double s = 0; s < 6.28; s += 0.1)
        {
            Assert.Equal(1, seam.At(s).Point.Length, 14);
        }

        Assert.True(seam.At(0).Point.Y < 0);
        Assert.True(seam.At(Math.PI / 2).Point.X > 0);
        Assert.Equal(2 * Math.Asin(-seam.At(0).Point.Y), seam.WaistAngle, 14);
    }

    [Fact]
    public void The_second_panel_is_the_first_half_turned_about_an_axis_in_the_seam_plane()
    {
        TwoHarmonicSeam seam = WithBeta(0.25);
        for (double s = 0; s < 6.28; s += 0.3)
        {
            SpherePoint here = seam.At(s).Point;
            SpherePoint mate = seam.At((Math.PI / 2) - s).Point;
            SpherePoint opposite = seam.At(s + Math.PI).Point;
            Assert.Equal(0, (mate - new SpherePoint(-here.Y, -here.X, -here.Z)).Length, 14);
            Assert.Equal(0, (opposite - new SpherePoint(-here.X, -here.Y, here.Z)).Length, 14);
        }
    }

    [Fact]
    public void The_seam_bends_the_other_way_exactly_four_times()
    {
        TwoHarmonicSeam seam = WithBeta(0.25);
        int changes = 0;
        for (int i = 0; i < 400; i++)
        {
            double here = seam.At((i + 0.5) * Math.PI / 200).GeodesicCurvature;
            double next = seam.At((i + 1.5) * Math.PI / 200).GeodesicCurvature;
            changes += here * next < 0 ? 1 : 0;
        }

        Assert.Equal(4, changes);
    }

    [Fact]
    public void A_published_baseball_has_the_derived_beta()
    {
        // R. B. Thompson, "Designing a Baseball Cover", College Math. J. 29(1), 1998: circumference 9 1/8 in, waist 1 3/16 in; beta 0.30123
        // derived from them.
        double waist = 2 * Math.PI * 1.1875 / 9.125;

        Assert.Equal(46.8493, Degrees(waist), 4);
        Assert.Equal(0.30123, TwoHarmonicSeam.ForWaist(waist).Beta, 5);
    }

    [Theory]
    [InlineData(19.9)]
    [InlineData(90.1)]
    [InlineData(double.NaN)]
    public void A_waist_out_of_range_is_refused(double waistDeg) =>
        Assert.ThrowsAny<ArgumentException>(() => TwoHarmonicSeam.ForWaist(waistDeg * Math.PI / 180));

    private static TwoHarmonicSeam WithBeta(double beta) => TwoHarmonicSeam.ForWaist(2 * Math.Asin(1 - (2 * beta)));

    private static double Degrees(double radians) => radians * 180 / Math.PI;

    private static void Near(double expected, double actual, double relative) =>
        Assert.InRange(actual / expected, 1 - relative, 1 + relative);
}
