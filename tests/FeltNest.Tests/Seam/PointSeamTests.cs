using FeltNest.Ball;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Seam;

public sealed class PointSeamTests
{
    // Half-turns about z and (1, -1, 0) but no mirrors.
    private static readonly SeamSeries Skew = new([0.75, 0.25], [0.02, -0.03], [0.866], [0.05]);

    [Theory]
    [InlineData(SeamFamily.TwoHarmonic, 60)]
    [InlineData(SeamFamily.Elastica, 45)]
    public void Points_of_a_known_seam_give_it_back(SeamFamily family, double waistDeg)
    {
        SeamCurve known = SeamCurve.For(family, waistDeg * Math.PI / 180);

        PointSeam seam = PointSeam.Through(Points(known.At, 120, 32));

        Assert.True(seam.IsMirrorSymmetric);
        Assert.InRange(seam.Deviation, 0, 1e-6);
        Assert.Equal(known.Length, seam.Length, 1e-6);
        Assert.Equal(known.WaistAngle, seam.WaistAngle, 1e-6);
        Assert.Equal(known.WidthAngle, seam.WidthAngle, 1e-6);
        Assert.Equal(known.GreatestCurvature, seam.GreatestCurvature, 1e-4);
    }

    [Fact]
    public void Order_start_and_unit_of_the_points_do_not_matter()
    {
        SeamPoint[] points = Points(TwoHarmonicSeam.ForWaist(1).At, 100, 1);
        PointSeam plain = PointSeam.Through(points);

        PointSeam other = PointSeam.Through([
            .. points.Skip(37).Concat(points.Take(38)).Reverse().Select(p => new SeamPoint(70 * p.X, 70 * p.Y, 70 * p.Z)),
        ]);

        for (double s = 0; s < 6; s += 0.5)
        {
            Assert.Equal(0, (plain.At(s).Point - other.At(s).Point).Length, 1e-6);
        }
    }

    [Theory]
    [InlineData(24)]
    [InlineData(52)]
    [InlineData(200)]
    public void A_seam_probed_to_a_fifth_of_a_millimetre_off_its_centre_is_fitted_with_its_sphere(int count)
    {
        // Radius 32 mm, the probe's zero 0.15 mm off the ball's centre each way; noise of 0.2 mm in each direction.
        Random noise = new(9);
        double Off() => 0.15 + (0.2 * Math.Sqrt(-2 * Math.Log(1 - noise.NextDouble())) * Math.Cos(2 * Math.PI * noise.NextDouble()));
        SeamCurve known = TwoHarmonicSeam.ForWaist(1);
        SeamPoint[] points = [.. Points(known.At, count, 32).Select(p => new SeamPoint(p.X + Off(), p.Y + Off(), p.Z + Off()))];

        PointSeam seam = PointSeam.Through(points);

        Assert.Equal(known.WaistAngle * 32, seam.WaistAngle * 32, 0.5);
        Assert.Equal(1, seam.Length / known.Length, 0.01);
    }

    [Fact]
    public void Points_read_off_to_a_tenth_of_a_millimetre_give_a_seam_within_that()
    {
        // Radius 32 mm; the pattern of errors is invented.
        SeamCurve known = TwoHarmonicSeam.ForWaist(1);
        SeamPoint[] points =
        [
            .. Points(known.At, 90, 32)
                .Select((p, i) =>
                    new SeamPoint(p.X + (0.1 * Math.Sin(17 * i)), p.Y + (0.1 * Math.Cos(29 * i)), p.Z + (0.1 * Math.Sin(41 * i)))),
        ];

        PointSeam seam = PointSeam.Through(points);

        Assert.InRange(seam.Deviation * 32, 0.05, 0.2);
        Assert.Equal(known.WaistAngle * 32, seam.WaistAngle * 32, 0.15);
        Assert.Equal(known.Length * 32, seam.Length * 32, 0.5);
    }

    [Fact]
    public void A_seam_without_mirrors_is_kept_as_it_is_and_halves_the_sphere()
    {
        PointSeam seam = PointSeam.Through(Points(Skew.At, 150, 1));

        Assert.False(seam.IsMirrorSymmetric);
        Assert.InRange(seam.Deviation, 0, 1e-5);
        double turning = 0;
        for (int i = 0; i < 2000; i++)
        {
            SeamJet jet = seam.At(i * Math.PI / 1000);
            turning += jet.GeodesicCurvature * jet.Speed * Math.PI / 1000;
            SpherePoint here = jet.Point;
            SpherePoint mate = seam.At((Math.PI / 2) - (i * Math.PI / 1000)).Point;
            Assert.Equal(0, (mate - new SpherePoint(-here.Y, -here.X, -here.Z)).Length, 1e-12);
        }

        Assert.Equal(0, turning, 1e-10);
        Assert.Equal(
            2 * Math.Asin(Math.Abs(Enumerable.Range(-500, 1000).Select(i => seam.At(i * 1e-3).Point).MinBy(p => Math.Abs(p.X)).Y)),
            seam.WaistAngle, 1e-3);
    }

    public static TheoryData<string, SeamPoint[]> Wrong()
    {
        SeamPoint[] sound = Points(TwoHarmonicSeam.ForWaist(1).At, 100, 1);
        return new TheoryData<string, SeamPoint[]>
        {
            { "0 points; at least 24", [] },
            {
                "distances from the centre run from 1 to 1.5",
                [new SeamPoint(1.5 * sound[0].X, 1.5 * sound[0].Y, 1.5 * sound[0].Z), .. sound[1..]] },
            { "distances from the centre", [new SeamPoint(double.NaN, 0, 1), .. sound] },
            { "times round the z axis", [.. sound.Select(p => new SeamPoint(p.Z, p.X, p.Y))] },
            { "between neighbours at point 60", [.. sound[..60], .. sound[70..]] },
            { "turn the points a quarter about z", [.. sound.Select(p => new SeamPoint(-p.Y, p.X, p.Z))] },
            { "off the nearest seam of two equal panels", [.. sound.Select(p => Unit(p.X, p.Y, p.Z + 0.1))] },
            { "off the nearest seam of two equal panels", [.. sound.Select(p => Unit(p.X + 0.1, p.Y, p.Z))] },
        };
    }

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Points_that_are_no_seam_of_two_equal_panels_are_refused(string message, SeamPoint[] points)
    {
        InputException error =
            Assert.Throws<InputException>(() =>
                SeamCurve.For(new SeamSpec { Curve = SeamFamily.Points, WaistMm = 0, SeamGapMm = 0, Points = points }, 32));

        Assert.Equal("seam.points", error.Field);
        Assert.Contains(message, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_waist_beside_points_and_points_beside_a_family_are_refused()
    {
        SeamPoint[] points = Points(TwoHarmonicSeam.ForWaist(1).At, 100, 1);

        Assert.Equal(
            "seam.waistMm",
            Assert.Throws<InputException>(() =>
                SeamCurve.For(new SeamSpec { Curve = SeamFamily.Points, WaistMm = 26, SeamGapMm = 0, Points = points }, 32)).Field);
        Assert.Equal(
            "seam.points",
            Assert.Throws<InputException>(() =>
                SeamCurve.For(new SeamSpec { Curve = SeamFamily.Elastica, WaistMm = 26, SeamGapMm = 0, Points = points }, 32)).Field);
        Assert.Equal(
            "seam.points",
            Assert.Throws<InputException>(() =>
                SeamCurve.For(new SeamSpec { Curve = SeamFamily.Points, WaistMm = 0, SeamGapMm = 0 }, 32)).Field);
    }

    internal static SeamPoint[] Points(Func<double, SeamJet> at, int count, double radius) =>
        [.. Enumerable.Range(0, count).Select(i => radius * at(2 * Math.PI * i / count).Point).Select(p => new SeamPoint(p.X, p.Y, p.Z))];

    private static SeamPoint Unit(double x, double y, double z)
    {
        double r = Math.Sqrt((x * x) + (y * y) + (z * z));
        return new SeamPoint(x / r, y / r, z / r);
    }
}
