using FeltNest.Layout;
using FeltNest.Rolls.Plan;
using Xunit;

namespace FeltNest.Tests.Rolls;

/// <summary>What a layout made for the roll would give.</summary>
public sealed class LayoutForRollTests
{
    // On 129 mm stand ten squares a row, wherever a row begins. Rows 14 apart need 34 mm and rows 12 apart 32: on a roll of 32.5 the loose
    // layout loses its upper row, and one made for the roll has both.
    [Fact]
    public void A_roll_narrower_than_its_layout_would_give_more_with_one_of_its_own()
    {
        RollPlan plan = Plan(RollCases.LooseRows, 32.5);

        Assert.Equal(10, plan.GoodPanels);
        Assert.Equal(
            new BetterLayout { WidthMm = 32.5, GoodPanels = 20, GainPercent = 100 }, LayoutForRoll.Of(plan, CancellationToken.None));
    }

    [Fact]
    public void A_roll_wider_than_its_layout_would_give_more_with_one_of_its_own() =>
        Assert.Equal(
            (33, 20), LayoutForRoll.Of(Plan(RollCases.Squares, 33), CancellationToken.None) is { } better
                ? (better.WidthMm, better.GoodPanels)
                : default);

    [Theory]
    [InlineData(20.4)]
    [InlineData(19.6)]
    public void A_roll_that_fits_within_half_a_millimetre_is_not_laid_out_again(double width)
    {
        // Room to spare inside the layout: none of its panels is lost at 19.6 either, as the trims are 4.5.
        RollLayout layout = RollCases.Squares with { Trims = FeltNest.Layout.Limits.EdgeTrims.Both(4.5) };

        Assert.Null(LayoutForRoll.Of(Plan(layout, width), CancellationToken.None));
    }

    [Fact]
    public void A_wider_roll_without_room_for_more_panels_has_no_better_layout() =>
        Assert.Null(LayoutForRoll.Of(Plan(RollCases.Squares, 22), CancellationToken.None));

    [Fact]
    public void A_search_that_is_stopped_says_nothing() =>
        Assert.Null(LayoutForRoll.Of(Plan(RollCases.Squares, 33), new CancellationToken(canceled: true)));

    private static RollPlan Plan(RollLayout layout, double width) => StrikePlanner.Run(new RollRequest
    {
        Layout = layout,
        Roll = RollCases.Roll(129, width),
        RepeatsPerStrike = 1,
        GuidePlayMm = 0,
        FromMm = 0,
    });
}
