using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.SharedRule;
using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Die.SharedRule;

public sealed class CommonCutsTests
{
    [Fact]
    public void Bricks_share_every_side_that_touches_and_each_is_one_run_for_a_pair()
    {
        DieDesign design = DieCases.Common(DieCases.Bricks);
        int repeats = design.Gang.Repeats;

        // Two rows of so many plates of 40 x 20, the upper one half a plate further on.
        double ends = 2 * (repeats - 1) * 20;
        double sides = (40 * repeats) - 20;
        Assert.True(repeats > 2);
        Assert.Equal(ends + sides, design.Gang.Common.SharedMm, 1e-9);
        Assert.Equal((2 * repeats * 120) - ends - sides, design.RuleLengthMm, 1e-9);
        Assert.Equal(design.RuleLengthMm, design.Force.EdgeMm, 1e-9);
        Assert.Equal((2 * (repeats - 1)) + (2 * repeats) - 1, design.Gang.Common.Runs.Count(r => r.Other is not null));
    }

    [Fact]
    public void A_round_end_in_a_hollow_one_is_one_arc()
    {
        DieDesign design = DieCases.Common(DieCases.RoundEnds);

        // A chord of 20 and a sixth of a circle: its radius is 20.
        Assert.Equal((design.Gang.Repeats - 1) * 20 * Math.PI / 3, design.Gang.Common.SharedMm, 1e-9);
    }

    [Theory]
    [InlineData("bricks")]
    [InlineData("round ends")]
    public void Runs_end_where_others_begin_to_the_last_digit(string name)
    {
        CommonCuts common = DieCases.Common(name == "bricks" ? DieCases.Bricks : DieCases.RoundEnds).Gang.Common;
        Dictionary<Point2, int> ends = [];
        foreach (Point2 end in common.Runs.SelectMany(r => new[] { r.Line[0].Point, r.Line[^1].Point }))
        {
            ends[end] = ends.GetValueOrDefault(end) + 1;
        }

        Assert.All(ends, e => Assert.True(e.Value >= 2, $"a run ends alone at {e.Key}"));
    }

    [Fact]
    public void Without_being_asked_for_no_cut_is_common()
    {
        DieDesign design = DieDesigner.Run(
            new GangRequest(DieCases.Plates, 0, DieCases.Order, DieCases.Press(200, 200), null), TestContext.Current.CancellationToken);

        Assert.Empty(design.Gang.Common.Runs);
        Assert.Equal(design.Gang.Cavities.Count * 120, design.EdgeLengthMm, 1e-9);
    }

    [Fact]
    public void The_load_centre_counts_shared_rule_once()
    {
        DieGang gang = DieCases.Common(DieCases.RoundEnds).Gang;

        // Runs weighed by their length, worked out from the runs alone: every cavity of this die shares a cut.
        double total = gang.Common.Runs.Sum(r => r.LengthMm);
        Point2 centre = gang.Common.Runs.Aggregate(default(Point2), (sum, r) => sum + (r.Centre * (r.LengthMm / total)));

        // The load is worked out from the layout's polygon, whose chords are shorter than the arcs by less than a tenth of a millimetre.
        Assert.Equal(centre.X, gang.LoadCentre.X, 0.1);
        Assert.Equal(centre.Y, gang.LoadCentre.Y, 1e-6);
    }

    [Fact]
    public void Close_rules_count_a_shared_one_once()
    {
        // Two rows of one plate above each other, 20 apart: the common side is 20 from the two that are left, nothing is close but at the
        // ends.
        DieDesign design = DieCases.Common(DieCases.Bricks);

        Assert.True(design.Force.CloseAddedMm < 0.25 * design.Force.EdgeMm);
        Assert.Contains(design.Notes, n => n.Text.StartsWith("common cut: ", StringComparison.Ordinal));
        Assert.DoesNotContain(
            design.Notes,
            n => n.Text.Contains("a centre bevel is usual", StringComparison.Ordinal)
                || n.Text.Contains("without being the same line", StringComparison.Ordinal));
        Assert.Contains(design.Notes, n => n.Text.StartsWith("strikes join without a gap", StringComparison.Ordinal));
    }
}
