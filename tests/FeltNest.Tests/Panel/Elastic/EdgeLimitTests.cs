using FeltNest.Ball;
using FeltNest.Panel;
using FeltNest.Panel.Elastic;
using FeltNest.Seam;
using FeltNest.Tests.Panel.Flatten;
using Xunit;

namespace FeltNest.Tests.Panel.Elastic;

/// <summary>The edge take-up limit on the two-harmonic seam with beta = 1/4, isotropic felt with Poisson's ratio 0.3.</summary>
public sealed class EdgeLimitTests
{
    private static readonly TwoHarmonicSeam Seam = TwoHarmonicSeam.ForWaist(Math.PI / 3);

    [Fact]
    public void A_limit_that_is_nowhere_reached_changes_nothing()
    {
        FlatPanel limited = Flat(0.15);
        FlatPanel plain = PanelFlattener.Flatten(PanelTableTests.Request(Seam, FlatteningMethod.Elastic, EdgeRule.Mated));

        Assert.Equal(plain.EdgeMap, limited.EdgeMap);
        Assert.Null(plain.EdgeLimit);
        EdgeLimitReport report = limited.EdgeLimit!;
        Assert.False(report.IsActive);
        Assert.Equal(0, report.SharePercent);
        Assert.Equal(report.UnlimitedAreaMm2, report.EdgeAreaMm2);
        Assert.Equal(limited.Strain.EdgeMaxCompressionPercent, report.UnlimitedCompressionPercent, 1e-9);
    }

    [Fact]
    public void No_compression_at_all_is_the_edge_true_panel()
    {
        FlatPanel limited = Flat(0);
        FlatPanel kept = PanelFlattener.Flatten(PanelTableTests.Request(Seam, FlatteningMethod.Elastic, EdgeRule.True));

        for (int i = 0; i < kept.EdgeMap.Count; i++)
        {
            Assert.Equal(kept.EdgeMap[i].U, limited.EdgeMap[i].U, 1e-5);
            Assert.Equal(kept.EdgeMap[i].V, limited.EdgeMap[i].V, 1e-5);
        }

        Assert.Equal(100, limited.EdgeLimit!.SharePercent, 1e-9);
        Assert.Equal([new SeamInterval { FromS = 0, ToS = 2 * Math.PI }], limited.EdgeLimit.Where);
    }

    [Fact]
    public void Between_the_two_the_limit_acts_on_a_part_of_the_edge_then_on_all_of_it()
    {
        // Derived independently (own derivation): not at all above about 14 %, on a part below that, on the whole edge well below.
        double[] shares = [.. new[] { 0.145, 0.14, 0.135, 0.13, 0.125, 0.1 }.Select(limit => Flat(limit).EdgeLimit!.SharePercent)];

        Assert.Equal(0, shares[0]);
        Assert.InRange(shares[1], 10, 60);
        Assert.Equal(shares.Order(), shares);
        Assert.InRange(shares[4], 70, 99);
        Assert.Equal(100, shares[5], 1e-9);
    }

    [Theory, Trait("tier", "long")]
    [InlineData(0.14)]
    [InlineData(0.13)]
    [InlineData(0.12)]
    [InlineData(0.11)]
    [InlineData(0.05)]
    public void The_edge_keeps_its_limit_everywhere_and_still_mates(double limit)
    {
        PanelRequest request = PanelTableTests.Request(Seam, FlatteningMethod.Elastic, EdgeRule.Mated) with { EdgeLimit = limit };
        FlatPanel panel = PanelFlattener.Flatten(request);

        // Where it is lowered so as to be kept between nodes, up to 0.02 per cent of it are given away.
        Assert.InRange(panel.Strain.EdgeMaxCompressionPercent, (100 * limit) - 0.02, (100 * limit) + 0.01);
        Assert.InRange(panel.Strain.EdgeMismatchPercent, 0, 0.006);
        Assert.InRange(FlatPanelCheck.Of(panel, request).EdgeAboveLimitPercent, 0, 0.01);
        Assert.InRange(FlatPanelCheck.Of(panel, request with { EdgeLimit = limit - 0.01 }).EdgeAboveLimitPercent, 0.97, 1.01);
    }

    [Theory, Trait("tier", "long")]
    [InlineData(14)]
    [InlineData(13)]
    [InlineData(12)]
    [InlineData(8)]
    public void Askew_the_limit_is_kept_everywhere_too(double percent)
    {
        BallSpec ball = Balls.Usual() with { Panel = new PanelSpec(FlatteningMethod.Elastic, EdgeRule.Mated, 30) };
        ball = ball with
        {
            Felt = ball.Felt with
            {
                WarpModulusNPerMm = 3,
                WeftModulusNPerMm = 1.8,
                ShearModulusNPerMm = 0.6,
                Poisson = 0.25,
                MaxEdgeCompressionPercent = percent,
            },
        };

        FlatPanel panel = PanelFlattener.Flatten(ball);

        Assert.InRange(panel.Strain.EdgeMaxCompressionPercent, percent - 0.02, percent + 0.01);
        Assert.InRange(FlatPanelCheck.Of(panel, PanelRequest.For(ball)).EdgeAboveLimitPercent, 0, 0.01);
    }

    [Fact, Trait("tier", "long")]
    public void A_tighter_limit_costs_energy_and_saves_felt_without_a_jump()
    {
        double[] limits = [.. Enumerable.Range(0, 12).Select(i => 0.15 - (0.005 * i))];
        EdgeLimitReport[] reports = [.. limits.Select(limit => Flat(limit).EdgeLimit!)];

        for (int i = 1; i < reports.Length; i++)
        {
            // At most 2 units of relative area for a unit of limit: an edge-true panel is 14.5 % smaller for 14 % of limit.
            Assert.InRange(1 - (reports[i].EdgeAreaMm2 / reports[i - 1].EdgeAreaMm2), -1e-9, 0.01);
            Assert.InRange(reports[i].EnergyNmm / reports[i - 1].EnergyNmm, 1 - 1e-9, 1.15);
        }
    }

    [Fact]
    public void The_held_parts_lie_around_the_places_where_the_edge_is_pushed_most()
    {
        FlatPanel panel = Flat(0.135);
        FlatPanel plain = PanelFlattener.Flatten(PanelTableTests.Request(Seam, FlatteningMethod.Elastic, EdgeRule.Mated));

        Assert.Equal(4, panel.EdgeLimit!.Where.Count);
        for (int i = 0; i < 720; i++)
        {
            double s = 2 * Math.PI * (i + 0.5) / 720;
            if (-plain.EdgeMap[i].StretchPercent > 14.2)
            {
                Assert.Contains(panel.EdgeLimit.Where, part => s >= part.FromS && s <= part.ToS);
            }
        }
    }

    [Fact, Trait("tier", "long")]
    public void Askew_the_held_parts_are_kept_by_the_half_turn_and_by_mating()
    {
        BallSpec ball = Balls.Usual() with { Panel = new PanelSpec(FlatteningMethod.Elastic, EdgeRule.Mated, 30) };
        ball = ball with
        {
            Felt = ball.Felt with
            {
                WarpModulusNPerMm = 2.4,
                WeftModulusNPerMm = 1.6,
                ShearModulusNPerMm = 0.6,
                Poisson = 0.35,
                MaxEdgeCompressionPercent = 13,
            },
        };

        FlatPanel panel = PanelFlattener.Flatten(ball);

        Assert.InRange(panel.EdgeLimit!.SharePercent, 20, 90);
        Assert.InRange(panel.Strain.EdgeMaxCompressionPercent, 12.98, 13.01);
        foreach (SeamInterval part in panel.EdgeLimit.Where)
        {
            double middle = (part.FromS + part.ToS) / 2;
            double half = (part.ToS - part.FromS) / 2;
            Assert.Contains(panel.EdgeLimit.Where, other => Same(other, middle + Math.PI, half));
            Assert.Contains(panel.EdgeLimit.Where, other => Same(other, (Math.PI / 2) - middle, half));
        }

        static bool Same(SeamInterval part, double middle, double half) =>
            Math.Abs(Math.IEEERemainder(((part.FromS + part.ToS) / 2) - middle, 2 * Math.PI)) < 1e-9
                && Math.Abs(((part.ToS - part.FromS) / 2) - half) < 1e-9;
    }

    [Theory]
    [InlineData(25)]
    [InlineData(45)]
    [InlineData(85)]
    public void Every_waist_has_a_panel_for_a_middling_limit(double waistDeg)
    {
        PanelRequest request = PanelTableTests.Request(
            TwoHarmonicSeam.ForWaist(waistDeg * Math.PI / 180), FlatteningMethod.Elastic, EdgeRule.Mated) with
        {
            EdgeLimit = 0.06,
        };

        Assert.InRange(PanelFlattener.Flatten(request).Strain.EdgeMaxCompressionPercent, 0, 6.01);
    }

    [Fact]
    public void The_limit_comes_from_the_felt()
    {
        BallSpec ball = Balls.Usual();

        Assert.Equal(0.15, PanelRequest.For(ball).EdgeLimit!.Value, 1e-15);
        Assert.Null(PanelRequest.For(ball with { Felt = ball.Felt with { MaxEdgeCompressionPercent = 100 } }).EdgeLimit);
        Assert.Equal(
            "felt.maxEdgeCompressionPercent",
            Assert.Throws<InputException>(() =>
                PanelRequest.For(ball with { Felt = ball.Felt with { MaxEdgeCompressionPercent = -1 } })).Field);
    }

    private static FlatPanel Flat(double limit) =>
        PanelFlattener.Flatten(PanelTableTests.Request(Seam, FlatteningMethod.Elastic, EdgeRule.Mated) with { EdgeLimit = limit });
}
