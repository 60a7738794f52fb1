using FeltNest.Layout;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Layout.Limits;

/// <summary>Which tilts the rules leave, in degrees here.</summary>
public sealed class TiltRangeTests
{
    [Theory]
    [InlineData(30, 5, 25, 35)]
    [InlineData(210, 5, 25, 35)]
    [InlineData(-150, 5, 25, 35)]
    [InlineData(120, 0, -60, -60)]
    [InlineData(0, 89, -89, 89)]
    public void A_held_angle_leaves_its_tolerance_on_both_sides(double warp, double tolerance, double least, double most)
    {
        TiltRange range = TiltRange.Of(new LayoutRules(warp, tolerance, RowRule.Same, false));
        Assert.False(range.IsFree);
        Assert.Equal(least, double.RadiansToDegrees(range.Least), 1e-9);
        Assert.Equal(most, double.RadiansToDegrees(range.Most), 1e-9);
    }

    [Theory]
    [InlineData(null, 0.0)]
    [InlineData(30.0, 90.0)]
    public void A_free_angle_or_a_right_angle_of_tolerance_leaves_every_tilt(double? warp, double tolerance) =>
        Assert.Equal(
            (true, double.NegativeInfinity, double.PositiveInfinity),
            Parts(TiltRange.Of(new LayoutRules(warp, tolerance, RowRule.Same, false))));

    [Theory]
    [InlineData(30, 5, 2.5, "25 27.5 30 32.5 35")]
    [InlineData(30, 5, 3, "25 27.5 30 32.5 35")]
    [InlineData(30, 5, 10, "25 35")]
    [InlineData(30, 0, 1, "30")]
    public void A_grid_holds_both_ends_and_steps_no_longer_than_asked(double warp, double tolerance, double step, string tilts) =>
        Assert.Equal(tilts, Words(TiltRange.Of(new LayoutRules(warp, tolerance, RowRule.Same, false)), step));

    [Fact]
    public void A_free_grid_leaves_out_its_far_end() =>
        Assert.Equal("0 45 90 135", Words(TiltRange.Of(new LayoutRules(null, 0, RowRule.Same, false)), 45));

    [Theory]
    [InlineData(0, 0, 10, 0)]
    [InlineData(90, 0, 30, 90)]
    [InlineData(90, 60, 23.660254, 30)]
    [InlineData(20, 30, 10, 0)]
    public void The_flattest_allowed_tilt_is_found_within_the_range(double warp, double tolerance, double height, double tilt)
    {
        // A bar of 30 by 10 is 30 sin t + 10 cos t high: least where the tilt is nearest to 0.
        (double least, double at) =
            TiltRange.Of(new LayoutRules(warp, tolerance, RowRule.Same, false)).Flattest(Shapes.Of(1, 0, 0, 30, 0, 30, 10, 0, 10));
        Assert.Equal(height, least, 1e-6);
        Assert.Equal(tilt, Math.Abs(double.RadiansToDegrees(at)), 1e-6);
    }

    private static (bool IsFree, double Least, double Most) Parts(TiltRange range) => (range.IsFree, range.Least, range.Most);

    private static string Words(TiltRange range, double step) =>
        string.Join(
            ' ',
            range
                .Grid(step)
                .Select(t => Math.Round(double.RadiansToDegrees(t), 9).ToString(System.Globalization.CultureInfo.InvariantCulture)));
}
