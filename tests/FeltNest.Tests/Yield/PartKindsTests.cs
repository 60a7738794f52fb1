using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Tests.Layout;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Yield;

/// <summary>Layers face to face mirror the warp of panels that lie askew to it.</summary>
public sealed class PartKindsTests
{
    private static readonly Outline Bone = Shapes.DogBone(2.3, 0.7, 12, 25);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(90, 1)]
    [InlineData(30, 2)]
    public void A_symmetric_panel_makes_two_kinds_only_askew_to_the_warp(double angle, int expected)
    {
        Assert.Equal(expected, PartKinds.Of(Lay(Bone, true, angle)));
        Assert.Equal(1, PartKinds.Of(Lay(Bone, false, angle)));
    }

    [Fact]
    public void Rows_at_plus_and_minus_make_the_same_two_kinds_either_way() => Assert.Equal(2, PartKinds.Of(Lay(Bone, true, 30, -30)));

    [Fact]
    public void A_panel_without_a_mirror_is_another_part_face_down_at_any_angle()
    {
        Outline slanted = Shapes.Of(1, 0, 0, 40, 0, 50, 20, 10, 20);
        Assert.Equal(2, PartKinds.Of(Lay(slanted, true, 0)));
    }

    private static RollLayout Lay(Outline outline, bool faceToFace, params double[] angles) => new()
    {
        Parts = [Shapes.Part(outline)],
        RollWidthMm = 1000,
        Trims = EdgeTrims.Both(0),
        GapMm = 0,
        Rules = new LayoutRules(null, 0, RowRule.Any, false) { Plies = new Plies(2, faceToFace) },
        Bands = [new LayoutBand
        {
            YFromMm = 0,
            YToMm = 1000,
            Repeat = new LayoutRepeat(
                200, [.. angles.Select((a, i) => new PlacedPanel { Part = 0, XMm = 0, YMm = 100 + (200 * i), AngleDeg = a })]),
        }],
        Search = Shapes.ByHand(leastGapMm: 0),
    };
}
