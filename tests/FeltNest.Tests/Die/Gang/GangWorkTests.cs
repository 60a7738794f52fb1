using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Effort;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Layout;
using FeltNest.Rolls;
using Xunit;

namespace FeltNest.Tests.Die.Gang;

/// <summary>How much is built and looked at for a die: counted, never timed.</summary>
public sealed class GangWorkTests
{
    // Rows of plates, two plates to a row, as many rows across as make the repeat.
    private static RollLayout Lay(int panels)
    {
        PlacedPanel[] placed =
        [
            .. Enumerable.Range(0, panels).Select(i => new PlacedPanel
            {
                Part = 0,
                XMm = (i % 2 * 44) + (i / 2 % 2 * 22),
                YMm = 25 + (i / 2 * 24),
                AngleDeg = 0,
            }),
        ];
        RollLayout lay = DieCases.Of(88, placed);
        double top = 49 + (panels / 2 * 24);
        return lay with
        {
            RollWidthMm = top + 30,
            Bands = [new LayoutBand { YFromMm = 15, YToMm = top, Repeat = new LayoutRepeat(88, placed) }],
        };
    }

    [Theory]
    [InlineData(2)]
    [InlineData(32)]
    [InlineData(300)]
    public void Without_a_press_one_gang_is_built_however_many_would_tile(int panels)
    {
        DieWork work = new(default);
        RollLayout lay = Lay(panels);
        DieGang gang = GangChooser.Choose(
            new GangRequest(lay, 0, DieCases.Order, null, null), EdgeFitter.Edges(lay, 0, TestContext.Current.CancellationToken), work);

        Assert.Equal((panels, 1), (gang.Cavities.Count, gang.Repeats));
        Assert.Equal(1, work.Gangs);
    }

    [Fact]
    public void A_count_that_is_asked_for_builds_one_gang_and_one_that_does_not_tile_none()
    {
        RollLayout lay = Lay(32);
        IReadOnlyList<DieEdge?> edges = EdgeFitter.Edges(lay, 0, TestContext.Current.CancellationToken);
        foreach (int cavities in new[] { 1, 8, 64 })
        {
            DieWork work = new(default);
            Assert.Equal(cavities, GangChooser.Choose(new GangRequest(lay, 0, DieCases.Order, null, cavities), edges, work).Cavities.Count);
            Assert.Equal(1, work.Gangs);
        }

        DieWork none = new(default);
        Assert.Contains(
            "7919 cavities do not tile",
            Assert.Throws<NoAnswerException>(() =>
                GangChooser.Choose(new GangRequest(lay, 0, DieCases.Order, null, 7919), edges, none)).Message, StringComparison.Ordinal);
        Assert.Equal(0, none.Gangs);
    }

    [Fact]
    public void A_press_is_tried_from_the_largest_die_that_its_bed_may_take()
    {
        RollLayout lay = Lay(32);
        IReadOnlyList<DieEdge?> edges = EdgeFitter.Edges(lay, 0, TestContext.Current.CancellationToken);
        DieWork placeholder = new(default);
        DieWork measured = new(default);
        PressSpec press = DieCases.Press(2000, 300, 200);
        Assert.NotEmpty(GangChooser.Choose(new GangRequest(lay, 0, DieCases.Order, press, null), edges, placeholder).Cavities);
        Assert.Equal(1, placeholder.Gangs);

        // A measured force decides too: close rules add a quarter at most, so few are built in vain.
        Assert.NotEmpty(GangChooser.Choose(new GangRequest(lay, 0, DieCases.Measured(20), press, null), edges, measured).Cavities);
        Assert.InRange(measured.Gangs, 1, 12);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Work_grows_with_the_cavities_and_not_with_their_square(bool common)
    {
        DieOrder order = common
            ? DieCases.Order with { CommonCut = true, Rule = DieCases.Order.Rule with { Bevel = RuleBevel.Centre } }
            : DieCases.Order;
        long few = Looks(Lay(16), order);
        long many = Looks(Lay(160), order);

        // Ten times the cavities: twenty times the looks at most, where their square would be a hundred.
        Assert.InRange(few, 16, long.MaxValue);
        Assert.InRange(many, 0, 20 * few);
    }

    [Fact]
    public void A_die_ends_at_the_next_look_when_it_is_broken_off()
    {
        using CancellationTokenSource source = new();
        RollLayout lay = Lay(300);
        IReadOnlyList<DieEdge?> edges = EdgeFitter.Edges(lay, 0, TestContext.Current.CancellationToken);
        source.Cancel();
        DieWork work = new(source.Token);

        Assert.Throws<OperationCanceledException>(() =>
            GangChooser.Choose(new GangRequest(lay, 0, DieCases.Order, null, null), edges, work));
        Assert.Equal(0, work.Looks);
    }

    private static long Looks(RollLayout lay, DieOrder order)
    {
        DieWork work = new(TestContext.Current.CancellationToken);
        Assert.NotEmpty(
            DieDesigner.Run(new GangRequest(lay, 0, order, null, null), work, TestContext.Current.CancellationToken).Gang.Cavities);
        return work.Looks;
    }
}
