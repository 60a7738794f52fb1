using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Files.Balls;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Design;

public sealed class WaistStudyTests
{
    private static readonly BallSpec Ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;

    [Fact]
    public void A_range_holds_both_ends_where_the_step_meets_them()
    {
        Assert.Equal([20, 20.1, 20.2, 20.3], WaistStudy.Range(20, 20.3, 0.1));
        Assert.Equal([20, 22], WaistStudy.Range(20, 23, 2));
        Assert.Equal([20], WaistStudy.Range(20, 20, 1));
    }

    [Theory]
    [InlineData(30, 20, 1)]
    [InlineData(20, 30, -1)]
    [InlineData(20, 30, 0)]
    [InlineData(20, 30, 0.01)]
    public void A_range_that_leads_nowhere_or_on_and_on_is_refused(double from, double to, double step) =>
        Assert.Throws<InputException>(() => WaistStudy.Range(from, to, step));

    [Fact]
    public void A_wider_waist_shortens_the_seam_and_the_least_felt_within_the_limits_is_marked()
    {
        WaistTradeOff study = WaistStudy.Run(Ball, [24, 28, 32], Lay, stop: TestContext.Current.CancellationToken);

        Assert.Equal([24, 28, 32], study.Points.Select(p => p.WaistMm));
        Assert.Equal(study.Points.Select(p => p.SeamLengthMm).OrderDescending(), study.Points.Select(p => p.SeamLengthMm));
        Assert.All(study.Points, p => Assert.True(p.Allowed));
        Assert.Equal(study.Points.Min(p => p.Yield.PerThousandBalls.SquareMetres), study.Best!.Yield.PerThousandBalls.SquareMetres);
        Assert.False(study.CutShort);
        Assert.StartsWith(
            FormattableString.Invariant($"waist {study.Best.WaistMm} mm: least felt per thousand balls"), study.Finding,
            StringComparison.Ordinal);
    }

    [Fact, Trait("tier", "long")]
    public void A_waist_above_a_limit_of_the_felt_is_never_marked()
    {
        WaistTradeOff all = WaistStudy.Run(Ball, [24, 28, 32], Lay, stop: TestContext.Current.CancellationToken);
        double between = (all.Points[0].Strain.MaxStretchPercent + all.Points[1].Strain.MaxStretchPercent) / 2;
        WaistTradeOff strict = WaistStudy.Run(
            Ball with { Felt = Ball.Felt with { MaxStretchPercent = between } }, [24, 28, 32], Lay,
            stop: TestContext.Current.CancellationToken);
        WaistTradeOff none = WaistStudy.Run(
            Ball with { Felt = Ball.Felt with { MaxStretchPercent = 1 } }, [24, 28], Lay, stop: TestContext.Current.CancellationToken);

        Assert.Equal([true, false, false], strict.Points.Select(p => p.StretchAllowed));
        Assert.Equal(24, strict.Best!.WaistMm);
        Assert.Null(none.Best);
        Assert.StartsWith(
            "no waist keeps both limits (edge 15 %, stretch 1 %); waist 24 mm comes nearest", none.Finding, StringComparison.Ordinal);
    }

    [Fact]
    public void A_panel_solved_to_lie_on_the_edge_limit_keeps_it() =>
        Assert.True(
            Assert.Single(
                WaistStudy.Run(
                    Ball with { Felt = Ball.Felt with { MaxEdgeCompressionPercent = 8 } }, [28], Lay,
                    stop: TestContext.Current.CancellationToken).Points).EdgeAllowed);

    [Fact]
    public void A_waist_without_an_answer_is_kept_with_its_reason_and_none_at_all_is_an_error()
    {
        LayoutRequest Narrow(LayoutPart part) =>
            Lay(part) with { RollWidthMm = 30 + 50, Rules = new LayoutRules(0, 0, RowRule.Same, false) };
        BallSpec four = Ball with { Panel = Ball.Panel with { WarpAngleDeg = 0 } };

        // The panel of a narrow waist has wider heads; a usable width of 50 mm lies between the two.
        WaistTradeOff study = WaistStudy.Run(four, [14, 40], Narrow, stop: TestContext.Current.CancellationToken);

        Assert.Equal(14, Assert.Single(study.Unanswered).WaistMm);
        Assert.Equal(40, Assert.Single(study.Points).WaistMm);
        Assert.False(study.CutShort);
        Assert.Throws<NoAnswerException>(() => WaistStudy.Run(four, [14], Narrow, stop: TestContext.Current.CancellationToken));
    }

    [Fact]
    public void A_study_that_is_stopped_keeps_the_waists_that_were_done()
    {
        using CancellationTokenSource stop = new();

        WaistTradeOff study = WaistStudy.Run(Ball, [24, 28, 32], Lay, new AfterFirst(stop.Cancel), stop.Token);

        Assert.Equal(24, Assert.Single(study.Points).WaistMm);
        Assert.True(study.CutShort);
    }

    [Fact]
    public void A_study_stopped_before_its_first_waist_has_no_result()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();

        Assert.Throws<OperationCanceledException>(() => WaistStudy.Run(Ball, [24], Lay, null, stop.Token));
    }

    [Fact]
    public void A_waist_out_of_range_is_told_before_any_work() =>
        Assert.Contains(
            "seam.waistMm: 90 mm is outside",
            Assert.Throws<InputException>(() => WaistStudy.Run(Ball, [24, 90], Lay, stop: TestContext.Current.CancellationToken)).Message,
            StringComparison.Ordinal);

    private static LayoutRequest Lay(LayoutPart part) => new()
    {
        Part = part,
        RollWidthMm = 400,
        Trims = EdgeTrims.Both(15),
        GapMm = 4,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Effort = 1,
        Seed = 1,
    };

    private sealed class AfterFirst(Action then) : IProgress<WaistPoint>
    {
        public void Report(WaistPoint value) => then();
    }
}
