using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Handover;
using FeltNest.Cost.Sheet;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Report;
using FeltNest.Tests.Cost.Compare;
using FeltNest.Tests.Drawing;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Report;

/// <summary>What a comparison hands over: its page, its summary, and the charts on its sheet.</summary>
public sealed partial class CompareHandoverTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    private static Comparison All { get; } = HandoverCases.Of(HandoverCases.Costs, HandoverCases.Offers);

    [Fact]
    public void The_page_says_all_that_the_terminal_says_without_a_dump()
    {
        string page = PageOf(All);
        string[] headings = [.. Headings().Matches(CompareReport.Text(All)).Select(m => m.Groups[1].Value).Skip(3)];

        Assert.DoesNotContain("<pre", page, StringComparison.Ordinal);
        Assert.True(headings.Length >= 5, string.Join('|', headings));
        Assert.All(headings, heading => Assert.Contains($"<section><h2>{Html(heading)}</h2>", page, StringComparison.Ordinal));
        Assert.Equal(Regex.Count(page, "<h2>"), Regex.Count(page, "<section><h2>"));
        Assert.Equal(Regex.Count(page, "<table>"), Regex.Count(page, "</table>"));
        Assert.Contains(Html(All.Swings[0].Assumption), page, StringComparison.Ordinal);
        Assert.Contains("never", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Felt & <b>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_summary_names_the_best_the_money_at_stake_three_risks_and_the_conditions()
    {
        CompareSummary summary = CompareSummary.Of(All);
        CompareRow next = All.Ranking[1];
        decimal lead = next.Total!.Value - All.Best.Total!.Value;

        Assert.StartsWith($"Buy {All.Best.Case.Name} at ", summary.Recommendation, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"{lead:0.00} XTS for a thousand balls, {lead * 640:0} XTS a year"), summary.Stake[0],
            StringComparison.Ordinal);
        Assert.Equal(3, summary.Risks.Count);
        Assert.Contains(All.Outlook!.Shares[0].Figure, summary.Risks[0], StringComparison.Ordinal);
        Assert.Contains("% of the spread", summary.Risks[0], StringComparison.Ordinal);
        Assert.StartsWith("Chance that another is cheaper: ", summary.Risks[1], StringComparison.Ordinal);
        decimal even = All.BreakEvens.Single(e => e.Offer == All.Best.Case.Name && e.Against == next.Case.Name).Price.Amount;
        Assert.Contains(FormattableString.Invariant($"{even:0.00##}"), summary.Conditions[0], StringComparison.Ordinal);
        Assert.True(even > All.Best.Sheet!.Price.Amount);
        Assert.Empty(summary.Missing);
    }

    [Theory]
    [InlineData("ranges", "no figure has a range")]
    [InlineData("annual", "annualBalls of the costs file")]
    [InlineData("costs", "No costs file")]
    [InlineData("die", "Not in the costs, as no figure was given: die")]
    [InlineData("one", "there is nothing to choose between")]
    public void What_was_not_given_is_said_in_the_summary(string without, string told)
    {
        CostInputs? costs = without switch
        {
            "ranges" => HandoverCases.Costs with { Ranges = [] },
            "annual" => HandoverCases.Costs with { AnnualBalls = null },
            "die" => HandoverCases.Costs with { Die = null, Gang = null },
            "costs" => null,
            _ => HandoverCases.Costs,
        };
        bool single = without is "one" or "costs";
        Comparison comparison = HandoverCases.Of(costs, single ? HandoverCases.Offers[..1] : HandoverCases.Offers);
        string page = Encoding.UTF8.GetString(SummaryPage.Html(comparison));

        Assert.Contains(told, page, StringComparison.Ordinal);
        Assert.Contains(
            SheetWords.Of(SummarySheet.Draw(comparison)),
            words => words.Text.Contains(told.Split(' ')[0], StringComparison.Ordinal));
        Assert.DoesNotContain("NaN", page, StringComparison.Ordinal);
    }

    [Fact]
    public void No_word_of_the_summary_leaves_its_page()
    {
        Comparison comparison = HandoverCases.Of(
            HandoverCases.Costs with { Die = null, Gang = null, RecoveryPerKg = null, SetUp = null, OverheadPercent = null },
            [.. Enumerable.Range(0, 14).Select(i => HandoverCases.Offers[i % 3] with { Name = $"offer with a long name no {i:00}" })]);

        Assert.All(SheetWords.Of(SummarySheet.Draw(comparison)), words => Assert.InRange(words.At.Y, 10, 297));
    }

    [Fact]
    public void The_chart_shows_differences_from_the_best_and_says_the_edge_of_an_offer_with_its_own()
    {
        Comparison comparison = HandoverCases.Of(
            HandoverCases.Costs, [HandoverCases.Offers[0], HandoverCases.Offers[1] with { EdgeMm = 21 }]);
        string[] words = [.. SheetWords.Of(CompareSheet.Draw(comparison)).Select(w => w.Text)];
        CompareRow next = comparison.Ranking[1];

        Assert.Contains(
            words, w => w.StartsWith($"Cost of a thousand good balls above {comparison.Best.Case.Name}", StringComparison.Ordinal));
        Assert.Contains(FormattableString.Invariant($"{next.Total - comparison.Best.Total:+0.00} ({next.Total:0.00})"), words);
        Assert.Single(words, w => w.EndsWith("(edge 21)", StringComparison.Ordinal));
    }

    [Fact]
    public void From_the_least_possible_felt_the_steps_lead_to_the_felt_bought_and_from_its_price_to_line_10()
    {
        foreach (CompareRow row in All.Rows)
        {
            CompareRow bound = row with { Layout = row.Layout with { Search = row.Layout.Search with { UpperBoundPercent = 99.5 } } };
            foreach (StepBars bars in new[] { CompareFelt.Felt(row), CompareFelt.Felt(bound), CompareFelt.Money(row, row.Sheet!) })
            {
                double reached = 0;
                foreach ((string name, double value, bool isSum) in bars.Steps)
                {
                    reached = reached == 0 || !isSum ? reached + value : reached;
                    Assert.True(!isSum || Math.Abs(reached - value) < 1e-9, $"{name}: {reached} instead of {value}");
                }
            }

            double bought = row.Sheet!.Purchase!.BoughtM / row.Sheet.Purchase.ThousandBalls
                * (row.Case.Offer!.InvoicedWidthMm ?? row.Case.Offer.WidthMm) / 1000;
            Assert.Equal(bought, CompareFelt.Felt(row).Steps[^1].Value, 1e-9);
            Assert.Equal((double)row.Sheet.AmountOf(10), CompareFelt.Money(row, row.Sheet).Steps[^1].Value, 1e-9);
        }
    }

    [Fact, Trait("tier", "long")]
    public void Printed_the_page_takes_at_most_three_sheets_and_the_summary_one()
    {
        Assert.Equal(1, Printed(SummaryPage.Html(All)));
        Assert.InRange(Printed(Encoding.UTF8.GetBytes(PageOf(All))), 1, 3);
    }

    private static string PageOf(Comparison comparison) =>
        Encoding.UTF8.GetString(ComparePage.Html(comparison, SvgWriter.Write(CompareSheet.Draw(comparison))));

    private static string Html(string words) => System.Net.WebUtility.HtmlEncode(words);

    private int Printed(byte[] page)
    {
        const string browser = "/usr/bin/chromium";
        Assert.SkipUnless(File.Exists(browser), "chromium is not installed");
        File.WriteAllBytes(folder.Path("page.html"), page);
        ProcessStartInfo start = new(browser,
        [
            "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer", $"--user-data-dir={folder.Path("settings")}",
            $"--print-to-pdf={folder.Path("page.pdf")}", folder.Path("page.html"),
        ])
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        string errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, errors + output.Result);
        return Regex.Count(Encoding.Latin1.GetString(File.ReadAllBytes(folder.Path("page.pdf"))), @"/Type\s*/Page\b");
    }

    [GeneratedRegex(@"^(.+)\n-+\n", RegexOptions.Multiline)]
    private static partial Regex Headings();
}
