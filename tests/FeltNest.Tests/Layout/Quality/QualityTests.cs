using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Files.Balls;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Quality;
using FeltNest.Panel;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Layout.Quality;

/// <summary>How good a layout is: bound, loss split, what rules cost.</summary>
public sealed class QualityTests
{
    private static readonly Outline Bone = Shapes.DogBone(2.3, 0.7, 24, 25);

    [Fact]
    public void The_bound_of_discs_is_their_area_over_that_of_discs_half_a_gap_larger_times_the_width_factor()
    {
        // pi 25^2 / pi 27^2 (usable 970 + gap 4) / 1000; the polygon of 2000 corners and the chords of the grown corners are off by 2e-6
        // and 1e-3 of a small band.
        LayoutRequest request = Shapes.Request(Shapes.Polygon(2000, 25), 1000, gap: 4, edge: 15);
        Assert.Equal(100 * (625.0 / 729) * 0.974, UtilisationBound.Percent(request), 0.02);
    }

    [Fact]
    public void Without_a_gap_nothing_but_the_trims_is_sure_to_be_lost() =>
        Assert.Equal(97, UtilisationBound.Percent(Shapes.Request(Bone, 1000, edge: 15)), 1e-9);

    [Fact]
    public void A_tile_without_a_gap_reaches_the_bound_and_loses_nothing_to_its_shape()
    {
        // Squares tile: ten across and no trims.
        RollLayout layout = Shapes.Lay(Shapes.Request(Shapes.Of(1, 0, 0, 10, 0, 10, 10, 0, 10), 100));
        Assert.Equal(100, layout.Search.UpperBoundPercent, 1e-9);
        Assert.Equal(0, layout.Search.Loss!.ShapePercent, 1e-3);
        Assert.Equal(0, layout.Search.Loss.EdgesPercent + layout.Search.Loss.RowFitPercent, 1e-3);
    }

    [Theory]
    [InlineData(400, 4, 15, null)]
    [InlineData(700, 2, 0, 90.0)]
    public void The_losses_and_the_good_panels_make_a_hundred_and_stay_under_the_bound(double width, double gap, double edge, double? warp)
    {
        RollLayout layout = Shapes.Lay(Shapes.Request(Bone, width, gap: gap, edge: edge, warp: warp));
        LossSplit loss = layout.Search.Loss!;
        double good = layout.PanelsPerMetre / 1000 * Bone.Area / width * 100;
        Assert.Equal(100, good + loss.ShapePercent + loss.GapPercent + loss.TrimPercent + loss.EdgesPercent + loss.RowFitPercent, 1e-9);
        Assert.True(good <= layout.Search.UpperBoundPercent);
        Assert.True(loss.GapPercent > 0);
        Assert.Equal(edge > 0, loss.TrimPercent > 0);
    }

    [Fact]
    public void One_way_costs_a_panel_with_a_half_turn_nothing_and_a_held_angle_something()
    {
        RollLayout layout = Shapes.Lay(Shapes.Request(Bone, 400, gap: 3, warp: 60, oneWay: true));
        RuleCost oneWay = layout.Search.RuleCosts.Single(c => c.Rule == "one way");
        RuleCost angle = layout.Search.RuleCosts.Single(c => c.Rule == "warp angle held");
        Assert.Equal(layout.PanelsPerMetre, oneWay.PanelsPerMetreWithout);
        Assert.Contains("costs nothing", oneWay.Words, StringComparison.Ordinal);
        Assert.True(angle.PanelsPerMetreWithout > layout.PanelsPerMetre);
    }

    [Fact]
    public void What_the_rules_on_dies_forbid_is_not_said_to_be_reached()
    {
        // On this width bands of two tilts are denser than parallel rows, but a die of one panel cannot cut them.
        BallSpec ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;
        LayoutRequest request =
            Shapes.Request(Bone, 870, gap: 2, rows: RowRule.Any) with { Part = CoverPart.Of(ball, PanelFlattener.Flatten(ball)) };
        RollLayout layout = Shapes.Lay(
            request with { Rules = request.Rules with { Die = new DieLimit { MostPanels = 1, BedLengthMm = null, BedWidthMm = null } } });
        Assert.Equal(layout.Search.Method, layout.Search.Methods[0].Method);
        Assert.All(layout.Search.Methods, m => Assert.True(m.PanelsPerMetre <= layout.PanelsPerMetre * (1 + 1e-9)));
    }

    [Fact]
    public void With_two_parts_no_rule_is_priced_and_a_held_angle_refuses_nothing()
    {
        LayoutRequest request = Shapes.Request(Bone, 520, gap: 3, warp: 30, oneWay: true);
        RollLayout layout = Shapes.Lay(request with { Second = new SecondPart(Shapes.Part(Shapes.DogBone(2.3, 0.7, 16, 12)), 60) });
        Assert.Empty(layout.Search.RuleCosts);
        Assert.Equal(2, layout.Parts.Count);
    }

    [Fact]
    public void One_way_costs_a_dart_its_half_turns()
    {
        // The dart tiles only together with its half-turn (Conway criterion; D. Schattschneider, Math. Magazine 53, 1980).
        RollLayout layout = Shapes.Lay(Shapes.Request(Shapes.Of(5, 0, 0, 4, 2, 0, 4, 1, 2), 200, oneWay: true));
        Assert.True(layout.Search.RuleCosts.Single(c => c.Rule == "one way").PanelsPerMetreWithout > 1.05 * layout.PanelsPerMetre);
    }
}
