using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;
using Xunit;

namespace FeltNest.Tests.Geometry.NoFit;

/// <summary>Areas of no-fit regions derived by hand from the definition (sum of one part and the negative of the other).</summary>
public sealed class NoFitRegionTests
{
    private static readonly Outline UnitSquare = Box(1);

    [Theory]
    [InlineData("square", 4.0)]
    [InlineData("L tromino", 14.0)]
    [InlineData("plus", 24.0)]
    [InlineData("I-beam", 44.0)]
    [InlineData("trapezoid dog bone", 43.2)]
    public void A_part_against_itself_has_the_derived_area(string name, double area)
    {
        Outline part = name == "square" ? UnitSquare : Tiles.Named(name).Part;
        Assert.Equal(area, NoFitRegion.Of(part, part).FilledArea, 1e-9);
    }

    [Theory]
    [InlineData("plus")]
    [InlineData("L tromino")]
    [InlineData("I-beam")]
    [InlineData("trapezoid dog bone")]
    public void Tile_vectors_lie_on_the_boundary(string name)
    {
        Tiles.Tile tile = Tiles.Named(name);
        NoFitRegion region = NoFitRegion.Of(tile.Part, tile.Part);
        foreach (Point2 vector in new[] { tile.First, tile.Second })
        {
            Assert.False(region.Forbids(vector));
            Assert.True(region.Forbids(vector * 0.999));
        }
    }

    [Fact]
    public void A_square_that_just_fits_a_slot_may_slide_along_a_segment()
    {
        NoFitRegion region = NoFitRegion.Of(Slot(), UnitSquare);
        Assert.Equal(16, region.FilledArea, 1e-9);
        NoFitSlit slit = Assert.Single(region.Slits);
        Assert.Equal(1, slit.From.X, 1e-9);
        Assert.Equal(1, slit.To.X, 1e-9);
        Assert.Equal(1, Math.Min(slit.From.Y, slit.To.Y), 1e-9);
        Assert.Equal(3, Math.Max(slit.From.Y, slit.To.Y), 1e-9);
    }

    [Theory]
    [InlineData(0.9, 15.01)]
    [InlineData(1.1, 16.81)]
    public void A_slot_is_open_to_a_smaller_square_and_closed_to_a_larger(double side, double area)
    {
        NoFitRegion region = NoFitRegion.Of(Slot(), Box(side));
        Assert.Equal(area, region.FilledArea, 1e-9);
        Assert.Empty(region.Slits);
    }

    [Fact]
    public void A_frame_has_a_hole_for_a_small_square_and_one_point_for_a_square_that_just_fits()
    {
        // A frame cannot be one simple outline: it is closed but for a cut of no width at its lower side, made 1e-9 wide here.
        Outline frame = Outline.From([
            new(0, 0), new(2, 0), new(2, 1), new(1, 1), new(1, 3), new(3, 3), new(3, 1), new(2 + 1e-9, 1), new(2 + 1e-9, 0), new(4, 0),
            new(4, 4), new(0, 4),
        ]);
        Assert.Equal(24, NoFitRegion.Of(frame, UnitSquare).FilledArea, 1e-6);
        NoFitRegion tight = NoFitRegion.Of(frame, Box(2));
        Assert.Equal(36, tight.FilledArea, 1e-6);
        Point2 only = Assert.Single(tight.IsolatedPoints);
        Assert.Equal(1, only.X, 1e-8);
        Assert.Equal(1, only.Y, 1e-8);
    }

    private static Outline Box(double side) => Outline.From([new(0, 0), new(side, 0), new(side, side), new(0, side)]);

    private static Outline Slot() => Outline.From([new(0, 0), new(3, 0), new(3, 3), new(2, 3), new(2, 1), new(1, 1), new(1, 3), new(0, 3)]);
}
