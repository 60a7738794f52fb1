using FeltNest.Cost.Sheet;
using FeltNest.Layout;
using FeltNest.Tests.Files;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Cost.Sheet;

public sealed class FeltAccountTests
{
    // Half a unit of the last printed digit.
    private const double Two = 0.005;
    private const double Three = 0.0005;

    [Fact]
    public void The_constructed_example_comes_out_to_its_printed_digits()
    {
        FeltAccount account = FeltAccount.Of(ConstructedExample.Plan, ConstructedExample.Losses, 780);

        Assert.Equal(282, account.Repeats);
        Assert.Equal(50, account.RemnantMm, 1e-9);
        Assert.Equal(9588, account.PanelsCut, 1e-9);
        Assert.Equal(9396.96, account.PanelsGood, Two);
        Assert.Equal(4698.48, account.Balls, Two);
        Assert.Equal(10.642, account.PerThousandBalls.Metres, Three);
        Assert.Equal(16.175, account.PerThousandBalls.SquareMetres, Three);
        Assert.Equal(12.617, account.PerThousandBalls.Kilograms!.Value, Three);
        Assert.Equal(13.000, account.NetSquareMetres, Three);
        Assert.Equal(60.02, account.StrikesPerThousandBalls, Two);
        Assert.Equal(194.29, ConstructedExample.Plan.PanelsPerMetre, Two);
        Assert.Equal(34, account.PanelsPerStrike, 1e-9);
    }

    [Fact]
    public void Its_closed_account_comes_out_to_its_printed_digits()
    {
        FeltShares s = FeltAccount.Of(ConstructedExample.Plan, ConstructedExample.Losses, 780).Shares;

        Assert.Equal(80.369, s.Good, Three);
        Assert.Equal(14.749, s.BetweenPanels, Three);
        Assert.Equal(0, s.UnusedEdge, 1e-9);
        Assert.Equal(1.974, s.EdgeTrim, Three);
        Assert.Equal(1.176, s.RollEnds, Three);
        Assert.Equal(0.098, s.Remnant, Three);
        Assert.Equal(1.230, s.Faults, Three);
        Assert.Equal(0.404, s.Rejects, Three);
        Assert.Equal(0, s.Unpaired);
        Assert.Equal(100, s.Named.Sum(share => share.Percent), 1e-9);
    }

    [Theory]
    [InlineData(30, 84.756)] // of the usable width
    [InlineData(0, 83.083)] // of the full width
    public void Its_lay_efficiency_comes_out_on_either_base(double trim, double percent)
    {
        LayPlan plan = ConstructedExample.Plan with { RollWidthMm = 1520 - trim, TrimMm = 0 };
        Assert.Equal(percent, FeltAccount.Of(plan, FeltLosses.None, null).Shares.Good, Three);
    }

    [Theory]
    [InlineData(50, 300, 1.5, 0.5, 0)]
    [InlineData(33.3, 120, 4, 2, 1.5)]
    [InlineData(12, 0, 0, 0, 3)]
    public void Gross_is_net_over_the_product_of_all_yields(double length, double end, double fault, double reject, double unpaired)
    {
        // Lay on the usable width x width x length kept x shares kept: multiplied up here, added up there.
        FeltAccount account = FeltAccount.Of(ConstructedExample.Plan, new FeltLosses
        {
            RollLengthM = length,
            EndLossMm = end,
            FaultPercent = fault,
            RejectPercent = reject,
            UnpairedPercent = unpaired,
            MostPanelsPerStrike = null,
        }, 780);
        double lay = 34 * 6500.0 / (1490 * 175);
        double width = 1490.0 / 1520;
        double kept = account.Repeats!.Value * 0.175 / length;
        double product = lay * width * kept * (1 - (fault / 100)) * (1 - (reject / 100)) * (1 - (unpaired / 100));

        Assert.Equal(account.NetSquareMetres / product, account.PerThousandBalls.SquareMetres, 1e-9);
        Assert.Equal(100 * product, account.Shares.Good, 1e-9);
        Assert.Equal(100, account.Shares.Named.Sum(s => s.Percent), 1e-9);
    }

    [Fact]
    public void Interlocked_trapezoids_on_a_sheet_lose_220_square_inches()
    {
        // E. M. Longfield, Sheet Metal Drafting, ch. 1, problem 4: 7 trapezoids of 10 sq in across, 38 along; offcuts 95 x 1 1/2 and 30 x
        // 1. Its waste leaves out the slivers at the slant ends, 38 x 2 x 5/8 = 47.5 sq in; the 30 x 96 in sheet is inferred from the
        // offcuts. A square inch is 645.16 mm2.
        const double inch = 25.4;
        const double square = inch * inch;
        LayPlan plan = new()
        {
            RollWidthMm = 30 * inch,
            TrimMm = 0,
            UnusedEdgeMm = 1.5 * inch,
            Plies = 1,
            Bands = [new CutBand
            {
                RepeatMm = 2.5 * inch,
                Panels = 7,
                PanelAreaMm2 = 70 * square,
                HeightMm = 30 * inch,
                StrikesPerRepeat = 1,
            }],
        };
        FeltAccount account = FeltAccount.Of(plan, new FeltLosses
        {
            RollLengthM = 96 * inch / 1000,
            EndLossMm = 0,
            FaultPercent = 0,
            RejectPercent = 0,
            UnpairedPercent = 0,
            MostPanelsPerStrike = null,
        }, null);
        FeltShares s = account.Shares;
        const double sheet = 30 * 96;

        Assert.Equal(266, account.PanelsCut, 1e-9);
        Assert.Equal(142.5, s.UnusedEdge * sheet / 100, 1e-6);
        Assert.Equal(30, s.Remnant * sheet / 100, 1e-6);
        Assert.Equal(47.5, s.BetweenPanels * sheet / 100, 1e-6);
        Assert.Equal(220, (100 - s.Good) * sheet / 100, 1e-6);
        Assert.Equal(7.64, 100 - s.Good, Two);
    }

    [Theory]
    [InlineData(30.75, 73.94)]
    [InlineData(32, 71.05)]
    public void A_blank_from_a_strip_uses_the_published_share(double strip, double percent)
    {
        // Press-tool course: part 10 x 27, web 1.875, advance 11.875, strip 30.75 or from stock of 32; shares derived.
        LayPlan plan = new()
        {
            RollWidthMm = strip,
            TrimMm = 0,
            UnusedEdgeMm = strip - 27,
            Plies = 1,
            Bands = [new CutBand
            {
                RepeatMm = 11.875,
                Panels = 1,
                PanelAreaMm2 = 270,
                HeightMm = strip,
                StrikesPerRepeat = 1,
            }],
        };
        Assert.Equal(percent, FeltAccount.Of(plan, FeltLosses.None, null).Shares.Good, Two);
    }

    [Fact]
    public void Whole_strikes_of_several_repeats_leave_a_longer_remnant()
    {
        // 49.4 m clear; at most 200 panels are five repeats, 875 mm: 56 strikes, 49.0 m, 400 mm left; by hand.
        FeltAccount account = FeltAccount.Of(ConstructedExample.Plan, ConstructedExample.Losses with { MostPanelsPerStrike = 200 }, 780);

        Assert.Equal(280, account.Repeats);
        Assert.Equal(400, account.RemnantMm, 1e-6);
        Assert.Equal(170, account.PanelsPerStrike, 1e-9);
    }

    [Fact]
    public void A_die_for_less_than_a_repeat_strikes_it_several_times()
    {
        // 34 panels at most 10 a strike are 4 strikes a repeat; nothing else changes.
        FeltAccount whole = FeltAccount.Of(ConstructedExample.Plan, ConstructedExample.Losses, 780);
        FeltAccount account = FeltAccount.Of(ConstructedExample.Plan, ConstructedExample.Losses with { MostPanelsPerStrike = 10 }, 780);

        Assert.Equal(4 * whole.StrikesPerThousandBalls, account.StrikesPerThousandBalls, 1e-9);
        Assert.Equal(8.5, account.PanelsPerStrike, 1e-9);
        Assert.Equal(whole.Shares, account.Shares);
    }

    // By hand, areas of one layer in mm2. Clear of its ends the roll has 9800: 24 strikes of 400 and 31 of 310, 200 and 190 left. Of
    // 10,000,000 in all, 24 x 80,000 + 31 x 45,000 are panels, 9610 x 20 lie at an edge no panel reaches, 9600 x 380 + 9610 x 480 + the 40
    // between the bands x 9610 less these two are web, and 200 x 380 + 190 x 480 + 190 x 40 remain.
    [Fact]
    public void A_roll_of_two_bands_is_accounted_for_to_the_last_square_millimetre()
    {
        LayPlan plan = new()
        {
            RollWidthMm = 1000,
            TrimMm = 100,
            UnusedEdgeMm = 20,
            Plies = 2,
            Bands = [new CutBand
            {
                RepeatMm = 400,
                Panels = 4,
                PanelAreaMm2 = 80_000,
                HeightMm = 380,
                StrikesPerRepeat = 1,
            }, new CutBand
            {
                RepeatMm = 310,
                Panels = 3,
                PanelAreaMm2 = 45_000,
                HeightMm = 480,
                StrikesPerRepeat = 1,
            }],
        };
        FeltAccount account = FeltAccount.Of(plan, FeltLosses.None with { RollLengthM = 10, EndLossMm = 100 }, 1000);
        FeltShares shares = account.Shares;

        Assert.Equal((24.0, 200.0, 189.0, 189.0), (account.Repeats, account.RemnantMm, account.PanelsCut, account.PanelsGood));
        Assert.Equal(
            [33.15, 51.38, 1.922, 10, 1.8, 1.748],
            new[] { shares.Good, shares.BetweenPanels, shares.UnusedEdge, shares.EdgeTrim, shares.RollEnds, shares.Remnant }
                .Select(share => Math.Round(share, 9)));
        Assert.Equal(189 * 2 / 55.0, account.PanelsPerStrike, 1e-12);
        Assert.Equal(1000 * 55 / (2 * 94.5), account.StrikesPerThousandBalls, 1e-9);
        Assert.Equal(
            (10 / 94.5, 10 / 94.5), (account.PerThousandBalls.Metres / 1000, account.PerThousandBalls.Kilograms!.Value / 1000),
            (a, b) => Math.Abs(a.Item1 - b.Item1) < 1e-12 && Math.Abs(a.Item2 - b.Item2) < 1e-12);
        Assert.Equal(10 + (3 / 0.31), plan.PanelsPerMetre, 1e-9);
        Assert.Equal(1, account.GoodShare);
    }

    [Fact]
    public void A_plan_takes_bands_as_the_lay_has_them()
    {
        RollLayout layout = SampleLayout.TwoBands;
        LayPlan plan = LayPlan.Of(layout);

        Assert.Equal(layout.PanelsPerMetre, plan.PanelsPerMetre, 1e-9);
        Assert.Equal(layout.Bands.Select(b => b.YToMm - b.YFromMm), plan.Bands.Select(b => b.HeightMm));
        Assert.Equal(
            layout.Bands.Select(b => (double)b.Repeat.Panels.Count),
            plan.Bands.Select(b => Math.Round(b.PanelAreaMm2 / layout.Parts[0].AreaMm2, 9)));
    }

    [Fact]
    public void A_roll_shorter_than_a_strike_has_no_answer() => Assert.Contains(
        "shorter than one strike",
        Assert.Throws<NoAnswerException>(() =>
            FeltAccount.Of(ConstructedExample.Plan, ConstructedExample.Losses with { RollLengthM = 0.7 }, null)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Without_losses_the_account_is_that_of_the_yield()
    {
        foreach (RollLayout layout in new[] { SampleLayout.OneRepeat, SampleLayout.TwoBands })
        {
            YieldFigures yields = YieldAccount.Of(layout);
            FeltAccount account = FeltAccount.Of(LayPlan.Of(layout), FeltLosses.None, 800);

            Assert.Equal(yields.PerThousandBalls.Metres, account.PerThousandBalls.Metres, 1e-9);
            Assert.Equal(yields.PerThousandBalls.Kilograms!.Value, account.PerThousandBalls.Kilograms!.Value, 1e-9);
            Assert.Equal(yields.Account.BetweenPanelsPercent, account.Shares.BetweenPanels, 1e-9);
            Assert.Equal(yields.Account.UnusedEdgePercent, account.Shares.UnusedEdge, 1e-9);
        }
    }
}
