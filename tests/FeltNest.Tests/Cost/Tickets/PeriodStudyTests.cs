using FeltNest.Cost.Charts;
using FeltNest.Cost.Tickets;
using Xunit;
using static FeltNest.Tests.Cost.Tickets.TicketCases;

namespace FeltNest.Tests.Cost.Tickets;

/// <summary>Tickets of a period: which standard holds, how they are put together, what the charts count.</summary>
public sealed class PeriodStudyTests
{
    [Theory]
    [InlineData("2026-03-01", 1)]
    [InlineData("2026-03-02", 2)]
    [InlineData("2026-03-03", 2)]
    [InlineData("2025-12-31", null)]
    public void A_standard_holds_from_its_own_first_day_on(string day, int? version)
    {
        TicketStandard second = Standard with { Version = 2, From = "2026-03-02" };

        Assert.Equal(version, PeriodStudy.StandardOf([second, Standard], Ticket with { Day = day })?.Version);
        Assert.Null(PeriodStudy.StandardOf([Standard with { Ball = "other" }], Ticket));
    }

    [Fact]
    public void Tickets_of_two_currencies_are_not_added_up()
    {
        InputException fault = Assert.Throws<InputException>(
            () => Run(TicketGrouping.Roll, Ticket, Ticket with { Number = 2, Currency = "USD" }));

        Assert.Contains("are in EUR and USD", fault.Message, StringComparison.Ordinal);
    }

    // ISO 8601: week 1 is the one with the first Thursday. 1 January 2027 is a Friday.
    [Fact]
    public void The_first_days_of_a_year_may_be_of_the_last_week_of_the_year_before() => Assert.Equal(
        "2026-W53", Assert.Single(Run(TicketGrouping.Week, Ticket with { Day = "2027-01-01" }).Groups).Name);

    // 30 rejects beside 970 good panels: 30 of 1,000.
    [Fact]
    public void Rejects_are_a_share_of_all_that_were_looked_at()
    {
        CutTicket ticket = Ticket with { GoodPanels = 970, Rejects = new Dictionary<string, int> { ["edge"] = 30 } };

        ControlChart chart = Run(TicketGrouping.Roll, ticket, ticket with { Roll = "R2" }).Charts.First(c => c.Name == "rejects");

        Assert.Equal(0.03, chart.Centre, 12);
    }

    private static PeriodUsage Run(TicketGrouping by, params CutTicket[] tickets) => PeriodStudy.Run(new PeriodQuestion
    {
        Book = "room",
        Since = "2026-03-01",
        Until = null,
        By = by,
        Tickets = tickets,
        Standards = [],
    });
}
