using FeltNest.Ball;
using FeltNest.Layout.Check;
using FeltNest.Report;
using FeltNest.Tests.Drawing;
using FeltNest.Tests.Files;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Report;

public sealed class ReportTests
{
    private static string PanelText { get; } = PanelReport.Text(SamplePanel.Ball, SamplePanel.Panel, ["core.massG", "felt.poisson"]);

    [Fact]
    public void A_panel_held_by_its_edge_limit_and_its_chord_says_what_that_costs()
    {
        string held = PanelReport.Text(SamplePanel.Ball, SamplePanel.Held, []);
        string free = PanelReport.Text(SamplePanel.Ball, SamplePanel.Panel, []);

        Assert.Matches("edge limit acts on +40 %", held);
        Assert.Matches("costs in panel area +-0.10 cm2", held);
        Assert.Matches("costs in energy +\\+0.25 N mm", held);
        Assert.Matches("torque on the chord +-2.50 N mm", held);
        Assert.DoesNotContain("edge limit", free, StringComparison.Ordinal);
        Assert.DoesNotContain("torque", free, StringComparison.Ordinal);
    }

    [Fact]
    public void No_line_is_wider_than_eighty_columns()
    {
        string[] lines =
        [
            .. (PanelText + LayoutReport.Text(SampleLayout.OneRepeat, SampleLayout.Yields)
                + LayoutReport.Text(SampleLayout.TwoBands, SampleLayout.Yields))
                .Split('\n'),
        ];

        Assert.All(lines, line => Assert.True(line.Length <= 80, line));
        Assert.All(lines, line => Assert.Equal(line.TrimEnd(), line));
    }

    [Fact]
    public void The_panel_report_names_edition_row_and_assumed_fields()
    {
        string flat = Flat(PanelText);

        Assert.Contains("check the current rule book.", flat, StringComparison.Ordinal);
        Assert.Contains("outside (from memory: check the current rule book); rule 63.0 to 68.6 mm", flat, StringComparison.Ordinal);
        Assert.Contains("Assumed in the ball file, not sourced: core.massG, felt.poisson.", flat, StringComparison.Ordinal);
        Assert.Contains("not known; rule 120.0 to 135.0 cm", flat, StringComparison.Ordinal);
        Assert.Contains("1 seam gap 0.4 mm length -0.40 mm, width -0.40 mm", flat, StringComparison.Ordinal);
    }

    [Fact]
    public void The_layout_report_states_the_base_of_the_waste()
    {
        string flat = Flat(LayoutReport.Text(SampleLayout.OneRepeat, SampleLayout.Yields));

        Assert.Contains("Yield (full roll width, one repeat, before roll ends and faults)", flat, StringComparison.Ordinal);
        Assert.Contains("Where the felt goes (per cent of the full roll width)", flat, StringComparison.Ordinal);
        Assert.Contains("waste 74.76 %", flat, StringComparison.Ordinal);
        Assert.Contains(
            "every row count at every tilt was tried, 0.25 degrees apart, on tables sampled every 0.5 mm.", flat, StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_cut_short_and_what_freer_rows_would_give_are_said()
    {
        string flat = Flat(LayoutReport.Text(SampleLayout.TwoBands, SampleLayout.Yields));

        Assert.Contains("Cut short: the best so far, not promised to repeat.", flat, StringComparison.Ordinal);
        Assert.Contains("Rows of any angle would give 41.500 panels per metre", flat, StringComparison.Ordinal);
        Assert.DoesNotContain("every row count", flat, StringComparison.Ordinal);
    }

    [Fact]
    public void Felt_without_a_mass_and_layouts_without_a_pair_show_no_number()
    {
        YieldFigures none = SampleLayout.Yields with
        {
            BallsPerMetre = 0,
            PerThousandBalls = new FeltUsage
            {
                Metres = double.PositiveInfinity,
                SquareMetres = double.PositiveInfinity,
                Kilograms = null,
            },
        };

        string flat = Flat(LayoutReport.Text(SampleLayout.OneRepeat, none));

        Assert.Contains("felt per thousand balls none", flat, StringComparison.Ordinal);
        Assert.Contains("not known mass per area of the felt not given", flat, StringComparison.Ordinal);
    }

    [Fact]
    public void Strains_over_the_limits_of_the_ball_file_are_warned_of()
    {
        IReadOnlyList<string> warnings =
            PanelWarnings.Of(SamplePanel.Ball, SamplePanel.Panel, new MassBudget { CoreG = 5, CementG = 1, FeltG = 3 });

        Assert.Equal(2, warnings.Count);
        Assert.Equal("the felt is stretched by up to 5.0 %, more than the 4.0 % the ball file allows", warnings[0]);
        Assert.StartsWith("felt weighs 3.0 g a ball", warnings[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_lists_every_violation()
    {
        string flat = Flat(CheckReport.Text("a.json", SampleLayout.OneRepeat.GapMm, new CheckVerdict(3.9, 2, ["one", "two"])));

        Assert.Contains("verdict violated", flat, StringComparison.Ordinal);
        Assert.Contains("least gap found 3.9000 mm", flat, StringComparison.Ordinal);
        Assert.Contains("- one - two", flat, StringComparison.Ordinal);
    }

    private static string Flat(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
