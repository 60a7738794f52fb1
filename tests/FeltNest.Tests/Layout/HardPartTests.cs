using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Tests.Geometry;
using Xunit;

namespace FeltNest.Tests.Layout;

/// <summary>Parts that are nearly no parts, and the same part drawn otherwise: the lay passes the independent check and does not depend on how it was drawn.</summary>
public sealed class HardPartTests
{
    public static TheoryData<string, double[]> Parts => new()
    {
        { "cusp of a hundredth of a degree", [0, 0, 40, 0, 40, 10, 90, 10.005, 40, 10.01, 40, 20, 0, 20] },
        { "notch as sharp", [0, 0, 40, 0, 40, 9.995, 5, 10, 40, 10.005, 40, 20, 0, 20] },
        { "waist of a thousandth", [0, 0, 20, 9.9995, 40, 0, 40, 20, 20, 10.0005, 0, 20] },
        { "waist of a billionth", [0, 0, 20, 9.9999999995, 40, 0, 40, 20, 20, 10.0000000005, 0, 20] },
        { "slot of a billionth", [0, 0, 20, 0, 20, 15, 20.000000001, 15, 20.000000001, 0, 40, 0, 40, 20, 0, 20] },
        { "step of a billionth", [0, 0, 20, 0, 20, 1e-9, 40, 1e-9, 40, 20, 0, 20] },
        { "two corners a billionth apart", [0, 0, 40, 0, 40.000000001, 1e-9, 40, 20, 0, 20] },
        { "needle", [0, 0, 100, 0, 100, 0.5, 0, 0.5] },
    };

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_part_that_is_nearly_none_is_laid_soundly(string name, double[] xy)
    {
        Outline part = Shapes.Of(1, xy);
        foreach (double gap in (double[])[0, 0.5])
        {
            RollLayout layout = Shapes.Lay(Shapes.Request(part, 130, Math.Min(gap, OutlineWidth.Least(part, 0, Math.PI).Height), 2));

            Assert.True(LayoutCheck.Verify(layout).Passed, $"{name}, gap {gap}: {string.Join("; ", LayoutCheck.Verify(layout).Violations)}");
        }
    }

    [Fact]
    public void A_part_so_thin_that_thousands_of_rows_would_lie_over_the_cloth_has_no_answer() => Assert.Contains(
        "0.001 mm across: more than 3000 rows would lie over 126 mm of cloth",
        Assert.Throws<NoAnswerException>(() => Shapes.Lay(Shapes.Request(Shapes.Of(1, 0, 0, 100, 0, 100, 0.001, 0, 0.001), 130, 0, 2))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("edges that touch", new double[] { 0, 0, 20, 0, 20, 15, 20, 0, 40, 0, 40, 20, 0, 20 })]
    [InlineData("corner on an edge", new double[] { 0, 0, 40, 0, 40, 20, 20, 0, 0, 20 })]
    [InlineData("bow tie", new double[] { 0, 0, 40, 20, 40, 0, 0, 20 })]
    [InlineData("line", new double[] { 0, 0, 40, 0, 20, 0 })]
    public void A_part_that_is_none_is_refused(string name, double[] xy) => Assert.NotEmpty(name + Assert.Throws<GeometryException>(() => Shapes.Of(1, xy)).Message);

    [Fact]
    public void The_same_part_turned_mirrored_or_drawn_with_more_points_fills_the_roll_alike()
    {
        for (int seed = 0; seed < Runs.Count(5); seed++)
        {
            Random random = new(seed);
            Outline part = RandomOutlines.Next(random, seed % 3 == 2 ? 5 : seed % 3, 12).Centred();
            double width = 7 * part.Points.Max(p => p.Length), angle = random.NextDouble();
            double usual = Rate(part.Points, width);

            // The search samples tilts and boundary at its least effort: a thousandth is what its start may differ by.
            Assert.Equal(usual, Rate(part.Points.Select(p => new Point2(-p.X, p.Y)), width), 2e-3 * usual);
            Assert.Equal(usual, Rate(part.Points.Select(p => p.Turned(angle)), width), 2e-3 * usual);
            Assert.Equal(usual, Rate(Denser(part.Points), width), 2e-3 * usual);
        }
    }

    private static double Rate(IEnumerable<Point2> points, double width) => Shapes.Lay(Shapes.Request(Outline.From(points).Centred(), width, gap: 0.5)).PanelsPerMetre;

    private static IEnumerable<Point2> Denser(IReadOnlyList<Point2> points) =>
        points.SelectMany((p, i) => new[] { p, (p * 0.75) + (points[(i + 1) % points.Count] * 0.25), (p * 0.4) + (points[(i + 1) % points.Count] * 0.6) });
}
