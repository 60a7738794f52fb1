using FeltNest.Cost.Tickets;

namespace FeltNest.Tests.Cost.Tickets;

/// <summary>Tickets for tests: a die of 10 panels a strike and 300 mm of feed on felt of 1,500 mm, 45 dm2 a strike.</summary>
internal static class TicketCases
{
    public static CutTicket Ticket => new()
    {
        Number = 1,
        Entry = 5,
        Day = "2026-03-02",
        Ball = "T2",
        Roll = "R1",
        Lot = "L1",
        Press = "P1",
        StrikePanels = 10,
        FeedMm = 300,
        OverM = 0.1m,
        LeadM = 0.3m,
        CutM = 30.1m,
        HasPlaces = false,
        PlannedWidthMm = 1500,
        LeastWidthMm = 1500,
        LayoutRows = 10,
        InvoicedWidthMm = 1500,
        InvoicedShare = 1,
        RollLengthM = 50,
        PricePerMetre = 18,
        Currency = "EUR",
        FaultPercent = 0,
        RejectPercent = 0,
        UnpairedPercent = 0,
        Strikes = 100,
        GoodPanels = 1000,
        Rejects = new Dictionary<string, int>(),
        UnpairedPanels = 0,
        FaultPanels = 0,
        WidthMm = 1500,
    };

    public static TicketStandard Standard => new()
    {
        Ball = "T2",
        Version = 1,
        From = "2026-01-01",
        WidthMm = 1500,
        PanelM2 = 0.045m,
        EndsM = 1,
        RollLengthM = 100,
        FaultPercent = 2,
        RejectPercent = 1,
        UnpairedPercent = 0.5m,
        PricePerM2 = 12,
        Currency = "EUR",
    };

    /// <summary>Six tickets of two presses: three of them with faults of the cloth, all with figures of every chart.</summary>
    public static PeriodUsage Period => PeriodStudy.Run(new PeriodQuestion
    {
        Book = "room",
        Since = "2026-03-01",
        Until = null,
        By = TicketGrouping.Press,
        Tickets =
        [
            .. Enumerable.Range(1, 6).Select(i => Ticket with
            {
                Number = i,
                Entry = 10 + i,
                Press = i % 2 == 0 ? "P1" : "P2",
                GoodPanels = 960 - (3 * i),
                FaultPanels = 10 + i,
                FaultsSeen = 3 + i,
                UnpairedPanels = 1,
                Rejects = new Dictionary<string, int> { ["edge"] = 4 + (i % 3), ["hole"] = 3 },
            }),
        ],
        Standards = [Standard],
    });

    public static decimal M2(TicketSplit split, TicketCause cause) => split.Parts[(int)cause].M2;
}
