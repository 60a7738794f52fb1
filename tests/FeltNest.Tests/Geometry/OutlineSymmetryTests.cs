using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Geometry;

/// <summary>Half-turns and mirrors of plain shapes.</summary>
public sealed class OutlineSymmetryTests
{
    private const double Tolerance = 1e-6;

    // A bar, a parallelogram, a kite along x, and a square notched down to its centre, whose corners all fall on its boundary when it is
    // turned.
    private static readonly Outline Bar = Outline.From([new(-2, -1), new(2, -1), new(2, 1), new(-2, 1)]);
    private static readonly Outline Leaning = Outline.From([new(-2, -1), new(1, -1), new(2, 1), new(-1, 1)]);
    private static readonly Outline Kite = Outline.From([new(-1, 0), new(0, -1), new(3, 0), new(0, 1)]);
    private static readonly Outline Notched =
        Outline.From([new(-1, -1), new(1, -1), new(1, 1), new(0.5, 1), new(0, 0), new(-0.5, 1), new(-1, 1)]);

    [Fact]
    public void Bars_and_parallelograms_are_their_half_turns_and_kites_and_notched_squares_are_not() => Assert.Equal(
        [true, true, false, false], new[] { Bar, Leaning, Kite, Notched }.Select(o => OutlineSymmetry.HasHalfTurn(o, default, Tolerance)));

    [Fact]
    public void Bars_and_kites_are_their_mirrors_in_x_and_parallelograms_and_notched_squares_are_not() => Assert.Equal(
        [true, false, true, false], new[] { Bar, Leaning, Kite, Notched }.Select(o => OutlineSymmetry.HasMirror(o, Tolerance)));

    [Fact]
    public void A_mirror_must_send_the_sides_on_sides_too() =>
        Assert.False(
            OutlineSymmetry.HasMirror(
                Outline.From([new(-1, -1), new(1, -1), new(1, 1), new(0.5, 1), new(0.3, 0), new(-0.3, 0), new(-0.5, 1), new(-1, 1)]),
                Tolerance));

    [Fact]
    public void A_half_turn_is_about_the_centre_asked_for()
    {
        Outline moved = Bar.Moved(new Point2(5, 7));
        Assert.True(OutlineSymmetry.HasHalfTurn(moved, new Point2(5, 7), Tolerance));
        Assert.False(OutlineSymmetry.HasHalfTurn(moved, new Point2(5, 7.001), Tolerance));
        Assert.True(OutlineSymmetry.HasHalfTurn(moved, new Point2(5, 7.001), 0.003));
    }

    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(1.5, 0, 0.5)]
    [InlineData(5, 5, 5)]
    [InlineData(-2, 0.3, 0)]
    [InlineData(0.5, -3, 2)]
    public void The_distance_to_the_boundary_is_to_the_nearest_side_or_corner(double x, double y, double distance) =>
        Assert.Equal(distance, OutlineSymmetry.DistanceToBoundary(Bar, new Point2(x, y)), 1e-12);
}
