using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Seam;

public sealed class ShapedSeamTests
{
    private static readonly (int Order, double Angle)[] Mirrored = [(2, 0.01), (6, 0.05), (10, 0.02), (14, -0.015)];
    private static readonly (int Order, double Angle)[] Skewed = [(4, 0.03), (6, 0.05), (8, -0.02), (12, 0.01)];

    public static TheoryData<bool> Both => [true, false];

    [Theory]
    [MemberData(nameof(Both))]
    public void Both_panels_are_the_same_part(bool skewed)
    {
        ShapedSeam seam = Seam(skewed);
        Assert.All(Places(), s =>
        {
            SpherePoint here = seam.At(s).Point;

            // The half-turn about (1, -1, 0) lays the second panel: it must carry the seam into itself, s into pi/2 - s. That about the
            // pole carries each panel into itself.
            Near(new SpherePoint(-here.Y, -here.X, -here.Z), seam.At((Math.PI / 2) - s).Point);
            Near(new SpherePoint(-here.X, -here.Y, here.Z), seam.At(s + Math.PI).Point);
        });
    }

    [Fact]
    public void Waves_of_order_2_6_10_keep_the_mirrors_and_those_of_order_4_8_12_do_not()
    {
        Assert.True(Seam(false).IsMirrorSymmetric);
        Assert.False(Seam(true).IsMirrorSymmetric);
        Assert.All(Places(), s =>
        {
            SpherePoint here = Seam(false).At(s).Point;
            Near(new SpherePoint(-here.X, here.Y, here.Z), Seam(false).At(-s).Point);
        });
        Assert.True(Places().Max(s =>
        {
            SpherePoint here = Seam(true).At(s).Point;
            return (new SpherePoint(-here.X, here.Y, here.Z) - Seam(true).At(-s).Point).Length;
        }) > 0.01);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public void Derivatives_are_those_of_the_places(bool skewed)
    {
        const double h = 1e-4;
        ShapedSeam seam = Seam(skewed);
        Assert.All(Places(), s =>
        {
            SeamJet here = seam.At(s);
            SpherePoint first = (1 / (2 * h)) * (seam.At(s + h).Point - seam.At(s - h).Point);
            SpherePoint second = (1 / (2 * h)) * (seam.At(s + h).First - seam.At(s - h).First);
            Near(first, here.First, 1e-5);
            Near(second, here.Second, 1e-3);
            Assert.Equal(1, here.Point.Length, 1e-12);
        });
    }

    [Theory]
    [MemberData(nameof(Both))]
    public void Each_panel_is_half_of_the_sphere(bool skewed)
    {
        // Gauss and Bonnet: area + integral of the geodesic curvature = 2 pi.
        const int steps = 2000;
        ShapedSeam seam = Seam(skewed);
        double turning = Enumerable.Range(0, steps).Sum(i =>
        {
            SeamJet here = seam.At(2 * Math.PI * i / steps);
            return here.GeodesicCurvature * here.Speed * 2 * Math.PI / steps;
        });

        Assert.Equal(0, turning, 1e-10);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public void The_waist_asked_for_is_the_waist(bool skewed)
    {
        SpherePoint waist = Seam(skewed).At(0).Point;

        Assert.Equal(0, waist.X, 1e-12);
        Assert.Equal(0.9, 2 * Math.Asin(-waist.Y), 1e-12);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(0)]
    [InlineData(32)]
    public void An_order_that_is_no_wave_of_a_seam_is_refused(int order) =>
        Assert.Contains("even numbers 2 to 30", Assert.Throws<InputException>(() => ShapedSeam.Of(0.9, [(order, 0.01)])).Problem,
            StringComparison.Ordinal);

    [Fact]
    public void Waves_that_leave_no_seam_to_draw_them_beside_are_refused() =>
        Assert.Contains("20 to 90", Assert.Throws<InputException>(() => ShapedSeam.Of(0.4, [(6, -0.1)])).Problem, StringComparison.Ordinal);

    private static ShapedSeam Seam(bool skewed) => ShapedSeam.Of(0.9, skewed ? Skewed : Mirrored);

    private static IEnumerable<double> Places() => Enumerable.Range(0, 37).Select(i => 0.05 + (i * 2 * Math.PI / 37));

    private static void Near(SpherePoint expected, SpherePoint found, double room = 1e-12) =>
        Assert.InRange((expected - found).Length, 0, room);
}
