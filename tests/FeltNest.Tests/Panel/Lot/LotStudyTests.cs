using FeltNest.Ball;
using FeltNest.Ball.Passport;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Lot;
using FeltNest.Panel.Wrap;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Panel.Lot;

public sealed class LotStudyTests
{
    private static readonly BallSpec Ball = FeltNest.Files.Balls.BallReader.Read(
        RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;

    private static readonly Lazy<ArcOutline> Cut = new(() => PanelFlattener.Flatten(Ball).Arcs);

    [Fact]
    public void A_lot_like_the_felt_before_changes_nothing()
    {
        LotResult lot = Study(new() { [FeltQuantity.Thickness] = (3.2, null), [FeltQuantity.Poisson] = (0.3, null) });

        Assert.Equal(lot.AfterCure.Before.AtMm, lot.AfterCure.After.AtMm);
        Assert.Equal(0, lot.MeanChangeMm);
        Assert.Equal(0, lot.MeanIntervalMm);
        Assert.Equal(1, lot.Shares.Sum(), 9);
    }

    [Fact]
    [Trait("tier", "long")]
    public void Felt_that_shrinks_alike_both_ways_leaves_the_gap_of_a_smaller_outline()
    {
        const double percent = 2;
        LotResult lot = Study(new() { [FeltQuantity.ShrinkWarp] = (percent, null), [FeltQuantity.ShrinkWeft] = (percent, null) });

        ArcOutline smaller = ArcOutline.From(Cut.Value.Vertices.Select(v =>
            new ArcVertex(v.X * (1 - (percent / 100)), v.Y * (1 - (percent / 100)), v.Turn)));
        EdgeFreeWrap direct = PanelWrap.LayFree(WrapRequest.For(Ball, smaller));
        double greatest = Assert.NotNull(direct.LargestGapMm);

        Assert.Equal(greatest, lot.AfterCure.After.GreatestMm, 0.01);
        Assert.Equal(lot.AtFitting.Before.MeanMm, lot.AtFitting.After.MeanMm, 9);
        Assert.True(lot.MeanChangeMm > 0.5);
    }

    [Fact]
    public void Thicker_felt_with_its_layer_farther_out_opens_the_seam()
    {
        LotResult lot = Study(new() { [FeltQuantity.Thickness] = (3.5, 0.05), [FeltQuantity.NeutralLayer] = (0.6, 0.02) });

        Assert.True(lot.AtFitting.After.MeanMm > lot.AtFitting.Before.MeanMm + 0.1);
        Assert.Equal(3.5, lot.After.Felt.ThicknessMm);
        Assert.Equal(Ball.Felt.WarpModulusNPerMm, lot.After.Felt.WarpModulusNPerMm);
    }

    [Fact]
    [Trait("tier", "long")]
    public void What_the_spread_of_a_figure_leaves_open_is_the_change_that_it_makes()
    {
        LotResult with = Study(new() { [FeltQuantity.NeutralLayer] = (0.5, 0.1) });
        LotResult moved = Study(new() { [FeltQuantity.NeutralLayer] = (0.6, null) });

        Assert.Equal(moved.MeanChangeMm, Assert.Single(with.Changes).MeanGapMm!.Value, 0.01);
        Assert.Equal(Math.Abs(moved.MeanChangeMm), with.MeanIntervalMm, 0.01);
    }

    [Fact]
    [Trait("tier", "long")]
    public void Spreads_of_several_figures_join_by_their_squares()
    {
        LotResult both = Study(new() { [FeltQuantity.Thickness] = (3.2, 0.1), [FeltQuantity.NeutralLayer] = (0.5, 0.05) });

        double[] parts = [.. both.Changes.Select(change => change.MeanGapMm!.Value)];
        Assert.Equal(2, parts.Length);
        Assert.All(parts, part => Assert.True(part > 0.01));
        Assert.Equal(double.Hypot(parts[0], parts[1]), both.MeanIntervalMm, 12);
    }

    [Fact]
    public void The_verdict_is_by_the_share_of_the_seam_outside_the_glues_range()
    {
        LotResult lot = Study(new() { [FeltQuantity.Poisson] = (0.3, null) });

        Assert.Equal(LotVerdict.Within, Judged(5, 0).Verdict);
        Assert.Equal(LotVerdict.NoWorse, Judged(5, 5).Verdict);
        Assert.Equal(LotVerdict.NoWorse, Judged(5, 4).Verdict);
        Assert.Equal(LotVerdict.Worse, Judged(5, 6).Verdict);

        // Of this panel at a range of 0.2 to 0.9 mm: its gap runs from the seam gap to 0.73 mm.
        Assert.Equal(0, lot.AfterCure.Before.OutsidePercent, 6);

        LotResult Judged(double before, double after) => lot with
        {
            AfterCure = new LotState
            {
                Before = lot.AfterCure.Before with { OutsidePercent = before },
                After = lot.AfterCure.After with { OutsidePercent = after },
            },
        };
    }

    [Fact]
    public void A_lot_with_a_warp_is_refused_for_panels_that_lie_anyhow()
    {
        InputException error = Assert.Throws<InputException>(() => Study(new() { [FeltQuantity.ShrinkWarp] = (2, null) }));

        Assert.Equal("panel.warpAngleDeg", error.Field);
    }

    private static LotResult Study(
        Dictionary<FeltQuantity, (double Value, double? Interval)> values, (double From, double To)? glue = null) =>
        LotStudy.Run(
            Ball, Cut.Value,
            new FeltFile
            {
                Name = "new",
                Lot = new FeltLot { Name = "N", Date = "2026-03-02", FromPercent = 1, ToPercent = 8, CurveBends = false },
                Values = values,
            },
            glue ?? (0.2, 0.9));
}
