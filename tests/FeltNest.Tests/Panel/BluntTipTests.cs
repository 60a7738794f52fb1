using FeltNest.Ball;
using FeltNest.Files.Balls;
using FeltNest.Panel;
using FeltNest.Report;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Panel;

public sealed class BluntTipTests
{
    [Fact]
    public void A_panel_that_folds_at_hollow_tips_is_refused_in_one_line()
    {
        BallSpec ball = BallReader.Read(RepositoryFile.PathOf("tests", "FeltNest.Tests", "Panel", "hollow-tips-ball.json")).Ball;

        NoAnswerException refused = Assert.Throws<NoAnswerException>(() => PanelFlattener.Flatten(ball));

        Assert.StartsWith("the panel folds over itself", refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', refused.Message);
    }

    [Fact]
    public void A_spike_at_a_blunt_tip_is_told_from_a_real_extreme()
    {
        // Read at the tips 36 %; a seam 3e-4 beside it has 15.4 % at most, found with a panel solved apart.
        BallSpec ball = BallReader.Read(RepositoryFile.PathOf("tests", "FeltNest.Tests", "Panel", "blunt-tips-ball.json")).Ball;

        FlatPanel panel = PanelFlattener.Flatten(ball);

        Assert.True(panel.Strain.HasTipSpike);
        Assert.InRange(panel.Strain.MaxCompressionPercent, 15, 15.6);
        Assert.Contains(
            PanelWarnings.Of(ball, panel, MassBudget.Of(ball, panel.AreaMm2)),
            line => line.Contains("no real extremes", StringComparison.Ordinal));
    }

    [Fact]
    public void A_usual_panel_has_no_spike() => Assert.False(PanelFlattener.Flatten(Balls.Usual()).Strain.HasTipSpike);
}
