using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Die.Gang;

public sealed class GangChooserTests
{
    // Boards: two plates half a step apart are 62 mm long, every repeat adds 44; land of 20 on each side.
    [Theory]
    [InlineData(110, 2, 1)]
    [InlineData(146, 4, 2)]
    [InlineData(190, 6, 3)]
    [InlineData(233, 6, 3)]
    public void As_many_repeats_are_taken_as_the_bed_is_long(double bed, int cavities, int repeats)
    {
        DieGang gang = Choose(bed, 200);

        Assert.Equal((cavities, repeats), (gang.Cavities.Count, gang.Repeats));
        Assert.Equal(repeats * 44, gang.FeedMm, 9);
        Assert.Equal(Enumerable.Range(1, cavities), gang.Cavities.Select(c => c.Number));
    }

    [Fact]
    public void A_narrow_bed_takes_one_row_and_strikes_it_twice()
    {
        // One row is 20 wide with 40 of land: both rows need 84.
        DieGang gang = Choose(200, 70);

        Assert.Equal(2, gang.Places.Count);
        Assert.Equal(24, gang.Places[1].Y, 9);
        Assert.Equal(3, gang.Cavities.Count);
    }

    [Fact]
    public void Strikes_side_by_side_keep_their_gap_less_both_guides_and_edges()
    {
        // Rows of plates are 24 apart and 20 wide: 4 mm, of which the guide may take 0.5 for either strike, either edge half of 0.5, and
        // either place half of 0.4.
        StrikeJoint joint = DieDesigner.Run(Request(200, 70, DieCases.Order), TestContext.Current.CancellationToken).Joint;
        StrikeJoint whole = DieDesigner.Run(Request(200, 200, DieCases.Order), TestContext.Current.CancellationToken).Joint;

        Assert.Equal(4, joint.AcrossMm, 9);
        Assert.Equal(4 - (2 * 0.5) - 0.5 - 0.4, joint.AcrossWorstMm, 6);
        Assert.True(double.IsInfinity(whole.AcrossMm) && double.IsInfinity(whole.BandMm));
    }

    [Fact]
    public void A_guide_too_loose_for_strikes_side_by_side_is_refused()
    {
        // Along the roll nothing errs, so it is the joint across that fails.
        GangRequest loose =
            Request(200, 70, DieCases.Order) with { Press = DieCases.Press(200, 70, 600, 0) with { GuideToleranceMm = 1.8 } };

        Assert.Contains(
            "cut into each other",
            Assert.Throws<NoAnswerException>(() => DieDesigner.Run(loose, TestContext.Current.CancellationToken)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_die_that_can_reach_into_the_band_beside_is_refused()
    {
        double room = DieDesigner.Run(
            new GangRequest(SampleLayout.TwoBands, 0, DieCases.Order, null, null), TestContext.Current.CancellationToken).Joint.BandMm;
        GangRequest loose = new(
            SampleLayout.TwoBands, 0, DieCases.Order, DieCases.Press(200, 100) with { GuideToleranceMm = room / 2 }, null);

        Assert.True(room > 0);
        Assert.Contains(
            "into the band beside it",
            Assert.Throws<NoAnswerException>(() => DieDesigner.Run(loose, TestContext.Current.CancellationToken)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_load_is_central_where_the_bed_has_room()
    {
        DieGang gang = Choose(300, 300);

        Assert.Equal(0, gang.LoadOffBed.Length, 9);
    }

    [Fact]
    public void A_measured_force_decides_and_a_placeholder_does_not()
    {
        // 120 mm of edge a plate at 20 N/mm with all added: at least 3.4 kN a plate.
        Assert.Equal(2, Chosen(Request(400, 200, DieCases.Measured(20), 12)).Cavities.Count);
        Assert.Equal(14, Chosen(Request(400, 200, DieCases.Order, 12)).Cavities.Count);
    }

    [Fact]
    public void A_press_too_small_is_told_with_what_is_short()
    {
        Assert.Contains("board of 80 x 60 mm", Assert.Throws<NoAnswerException>(() => Choose(60, 60)).Message, StringComparison.Ordinal);
        string message = Assert.Throws<NoAnswerException>(() => Chosen(Request(400, 200, DieCases.Measured(500), 12))).Message;
        Assert.Contains("kN", message, StringComparison.Ordinal);
        Assert.Contains("a press of", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Cavities_that_do_not_tile_are_refused_with_those_that_do()
    {
        string message =
            Assert.Throws<NoAnswerException>(() => Chosen(Request(2000, 200, DieCases.Order) with { Cavities = 7919 })).Message;

        Assert.StartsWith("7919 cavities do not tile this layout: 1, 2, 3, 4,", message, StringComparison.Ordinal);
        Assert.Equal(4, Chosen(Request(400, 200, DieCases.Order) with { Cavities = 4 }).Cavities.Count);
    }

    [Fact]
    public void Strikes_that_can_cut_into_each_other_are_refused()
    {
        // The gap is 4 along and across: two strikes may err across by twice the guide's 0.5, both edges by half of 0.5, both
        // places by half of 0.4. A feed off by 3.9
        // leaves nothing.
        Assert.Equal(
            4 - (2 * 0.5) - 0.5 - 0.4,
            DieDesigner.Run(Request(146, 200, DieCases.Order), TestContext.Current.CancellationToken).Joint.WorstMm, 6);
        Assert.Contains(
            "cut into each other",
            Assert.Throws<NoAnswerException>(() =>
                DieDesigner.Run(
                    Request(146, 200, DieCases.Order) with { Press = DieCases.Press(146, 200, 600, 3.9) },
                    TestContext.Current.CancellationToken)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_without_room_is_refused_unless_a_common_cut_is_asked_for()
    {
        DieOrder thick = DieCases.Order with { Rule = DieCases.Order.Rule with { ThicknessMm = 2.13 } };

        Assert.Contains(
            "no room in a gap of 4.00 mm",
            Assert.Throws<NoAnswerException>(() =>
                DieDesigner.Run(Request(146, 200, thick), TestContext.Current.CancellationToken)).Message, StringComparison.Ordinal);
        Assert.Equal(
            4,
            DieDesigner.Run(Request(146, 200, thick with { CommonCut = true }), TestContext.Current.CancellationToken).Gang.Cavities.Count);
    }

    [Fact]
    public void A_band_that_is_not_there_is_bad_input() =>
        Assert.Contains(
            "2 is not there: the layout has 1 band",
            Assert.Throws<InputException>(() => Chosen(Request(146, 200, DieCases.Order) with { Band = 1 })).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Each_band_has_a_die_of_its_own()
    {
        // Bands with repeats of 50 and 60 mm, one plate of 40 each.
        foreach ((int band, double repeat) in new[] { (0, 50.0), (1, 60.0) })
        {
            DieDesign design = DieDesigner.Run(
                new GangRequest(SampleLayout.TwoBands, band, DieCases.Order, DieCases.Press(200, 100), null),
                TestContext.Current.CancellationToken);

            Assert.Equal(band, design.Gang.Band);
            Assert.Equal(design.Gang.Repeats * repeat, design.Gang.FeedMm, 9);
            Assert.Equal(design.Gang.Repeats, design.Gang.Cavities.Count);
            Assert.True(design.Gang.Repeats > 1);
        }
    }

    private static DieGang Chosen(GangRequest request) => GangChooser.Choose(request, EdgeFitter.Edges(request.Layout, request.Band));

    private static DieGang Choose(double length, double width) => Chosen(Request(length, width, DieCases.Order));

    private static GangRequest Request(double length, double width, DieOrder order, double kn = 600) =>
        new(DieCases.Plates, 0, order, DieCases.Press(length, width, kn), null);
}
