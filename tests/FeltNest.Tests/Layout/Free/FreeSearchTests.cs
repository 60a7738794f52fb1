using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;
using FeltNest.Layout;
using FeltNest.Layout.Free;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Scan;
using Xunit;

namespace FeltNest.Tests.Layout.Free;

/// <summary>The free search, and the depths it runs on.</summary>
public sealed class FreeSearchTests
{
    // A panel of about 165 x 50 mm.
    private static readonly Outline Bone = Shapes.DogBone(2.3, 0.7, 24, 25);

    [Fact]
    public void Two_discs_stand_in_each_other_by_the_sum_of_their_radii_less_their_distance()
    {
        Outline disc = Shapes.Polygon(360, 10);
        DepthField field = DepthField.Of(disc, disc, 4);
        foreach (double distance in new[] { 3.0, 12, 19, 23.5, 25 })
        {
            // Within a grid step of 48 mm / 140.
            Assert.Equal(Math.Max(0, 24 - distance), field.At(distance * 0.6, distance * 0.8), 0.35);
        }
    }

    [Fact]
    public void A_depth_is_zero_wherever_the_exact_region_allows_the_place()
    {
        NoFitRegion region = NoFitRegion.Of(Bone, Bone);
        DepthField field = DepthField.Of(Bone, Bone, 0);
        double step = (field.MaxX - field.MinX) / 137;
        for (double x = field.MinX; x < field.MaxX; x += 7.3)
        {
            for (double y = field.MinY; y < field.MaxY; y += 5.1)
            {
                Assert.True(region.Forbids(new Point2(x, y)) || field.At(x, y) <= 2 * step, $"{x} {y} {field.At(x, y)}");
            }
        }
    }

    [Fact]
    public void Overlapping_panels_are_driven_apart_where_there_is_room()
    {
        // Three panels on a repeat with room for four.
        LayoutRequest request = Shapes.Request(Bone, 130, gap: 2);
        FreeAngles angles = new(request, [0, Math.PI / 2]);
        FreeLay lay = new(360, [10, 20, 15], [60, 62, 64], [0, 0, 0]);
        Assert.True(OverlapSearch.Separated(angles, lay, 82, new Random(1), 2_000_000, TestContext.Current.CancellationToken));
        for (int i = 0; i < 3; i++)
        {
            for (int k = 0; k < i; k++)
            {
                Assert.InRange(angles.Depth(lay.Angle[k], lay.Angle[i], lay.X[i] - lay.X[k], lay.Y[i] - lay.Y[k], lay.Repeat), 0, 0.2);
            }
        }
    }

    [Fact]
    public void Upright_panels_in_a_narrow_roll_gain_from_panels_that_move_on_their_own()
    {
        // From one panel a row and repeat, as if rows of two panels were not known.
        LayoutRequest request = Shapes.Request(Bone, 290, gap: 2, warp: 90);
        LayoutRepeat rows = new WidthScan(request).At(290)!.Bands[0].Repeat;
        LayCandidate free = FreeSearch.Better(
            request, TiltRange.Of(request.Rules), rows, hasHalfTurn: true, SearchEffort.Of(request),
            TestContext.Current.CancellationToken)!;
        Assert.True(free.Density > 1.01 * rows.Panels.Count / rows.LengthMm);
        Assert.All(free.Bands[0].Repeat.Panels, p => Assert.Equal(90, p.AngleDeg % 180, 1e-6));
    }
}
