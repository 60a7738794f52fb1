namespace FeltNest.Cost.Tickets;

/// <summary>Splits the difference between the felt of one ticket and its standard into causes that add up to it.</summary>
/// <remarks>Felt is a sum: invoiced but not there, wider than the standard, cut beyond the strikes, ends, and the felt of the panels
/// struck; of these every panel is in a ball, without a partner, rejected, lost to a fault, lost with a row, or told by nobody. The same
/// sum for the standard is taken from it line by line, so no order of the causes plays a part. What a count says decides; a width decides
/// nothing where the panels are there. All is decimal, and the last line takes what rounding leaves, so the parts add up to the last
/// digit.</remarks>
internal sealed class TicketSplitting
{
    // Digits of felt and money that are kept, so few that sums of them are exact.
    private const int Digits = 9;

    private readonly CutTicket ticket;
    private readonly TicketStandard? standard;
    private readonly decimal width;
    private readonly decimal panelM2;

    private TicketSplitting(CutTicket ticket, TicketStandard? standard)
    {
        this.ticket = ticket;
        this.standard = standard;
        width = (standard?.WidthMm ?? ticket.LeastWidthMm ?? ticket.PlannedWidthMm) / 1000;
        panelM2 = ticket.FeedMm / 1000 * width / ticket.StrikePanels;
    }

    /// <summary>Splits a ticket; null where it tells neither strikes nor felt, or gave no ball.</summary>
    /// <param name="ticket">The ticket.</param>
    /// <param name="standard">What was promised on its day; null for the figures it was printed with.</param>
    public static TicketSplit? Of(CutTicket ticket, TicketStandard? standard) => new TicketSplitting(ticket, standard).Run();

    // Long because each line of the sum stands beside that of the standard.
    private TicketSplit? Run()
    {
        (decimal fault, decimal reject, decimal unpaired) = Shares();
        if (ticket.Strikes is null && !ticket.HasPlaces)
        {
            return null;
        }

        decimal feedM = ticket.FeedMm / 1000;
        decimal runM = ticket.Strikes is { } made ? (made * feedM) + ticket.OverM : ticket.CutM;
        decimal struck = ticket.Strikes is { } strikes
            ? (decimal)strikes * ticket.StrikePanels : Math.Max(0, ticket.CutM - ticket.OverM) / feedM * ticket.StrikePanels;
        PanelCount panels = PanelCount.Of(ticket, struck, width, fault, reject, unpaired);
        if (panels.Paired <= 0 || struck <= 0)
        {
            return null;
        }

        PanelCount allowed = PanelCount.Standard(panels.Paired, fault, reject, unpaired);
        decimal standardPanelM2 = standard?.PanelM2 ?? panelM2;
        decimal needed = allowed.Paired + allowed.Unpaired + allowed.Rejected + allowed.Faults;
        decimal allowedEndsM = EndsM();
        decimal standardM2 = Kept((needed * standardPanelM2) + (allowedEndsM * width));
        decimal invoicedM = ticket.DrawnM * ticket.InvoicedShare;
        decimal actualM2 = Kept(invoicedM * ticket.InvoicedWidthMm / 1000);

        // A width that nobody measured is taken as invoiced.
        decimal present = ticket.DrawnM * (ticket.WidthMm ?? ticket.InvoicedWidthMm) / 1000;
        Dictionary<TicketCause, decimal> parts = new()
        {
            [TicketCause.Invoiced] = Kept(actualM2 - present),
            [TicketCause.Width] = Kept(present - (ticket.DrawnM * width) + (panels.ByWidth * panelM2)),
            [TicketCause.Layout] = Kept(needed * (panelM2 - standardPanelM2)),
            [TicketCause.Feed] = Kept((ticket.CutM - runM) * width),
            [TicketCause.RollEnds] = Kept((ticket.LeadM + ticket.OverM - allowedEndsM) * width),
            [TicketCause.Faults] = Kept((panels.Faults - allowed.Faults) * panelM2),
            [TicketCause.Rejects] = Kept((panels.Rejected - allowed.Rejected) * panelM2),
            [TicketCause.Unpaired] = Kept((panels.Unpaired - allowed.Unpaired) * panelM2),
            [TicketCause.Price] = 0,
        };
        parts[TicketCause.Rest] = actualM2 - standardM2 - parts.Values.Sum();
        decimal price = PriceOf();
        decimal paid = Kept(invoicedM * ticket.PricePerMetre);
        decimal standardMoney = Kept(standardM2 * price);
        return new TicketSplit
        {
            Ticket = ticket,
            StandardVersion = standard?.Version ?? 0,
            Balls = panels.Paired / 2,
            StruckPanels = struck,
            StandardM2 = standardM2,
            ActualM2 = actualM2,
            StandardMoney = standardMoney,
            ActualMoney = paid,
            Parts = Priced(parts, price, paid - standardMoney, paid - Kept(actualM2 * price)),
            Reasons =
            [
                .. (ticket.Rejects ?? new Dictionary<string, int>()).Select(r => KeyValuePair.Create(r.Key, Kept(r.Value * panelM2)))
                    .OrderByDescending(r => r.Value).ThenBy(r => r.Key, StringComparer.Ordinal),
            ],
            NotCounted = [.. NotCounted()],
        };
    }

    private (decimal Fault, decimal Reject, decimal Unpaired) Shares() => standard is { } promised
        ? (promised.FaultPercent / 100, promised.RejectPercent / 100, promised.UnpairedPercent / 100)
        : (ticket.FaultPercent / 100, ticket.RejectPercent / 100, ticket.UnpairedPercent / 100);

    // The metres that a roll loses at its ends do not grow with it: a piece is allowed its share of its own roll.
    private decimal EndsM() => standard is { } promised
        ? promised.EndsM * Math.Min(1, ticket.DrawnM / Math.Max(ticket.RollLengthM, ticket.DrawnM))
        : ticket.LeadM + ticket.OverM;

    private decimal PriceOf() => standard is { PricePerM2: { } promised } && standard.Currency == ticket.Currency
        ? promised
        : ticket.PricePerMetre / (ticket.InvoicedWidthMm / 1000);

    // What rounding leaves of money stands under the rest.
    private static TicketPart[] Priced(Dictionary<TicketCause, decimal> parts, decimal price, decimal more, decimal ofPrice)
    {
        Dictionary<TicketCause, decimal> money = parts.ToDictionary(p => p.Key, p => Kept(p.Value * price));
        money[TicketCause.Price] = ofPrice;
        money[TicketCause.Rest] = 0;
        money[TicketCause.Rest] = more - money.Values.Sum();
        return
        [
            .. Enum.GetValues<TicketCause>().Select(cause => new TicketPart { Cause = cause, M2 = parts[cause], Money = money[cause] }),
        ];
    }

    private IEnumerable<string> NotCounted()
    {
        (string Name, bool Blank)[] fields =
        [
            ("strikes", ticket.Strikes is null), ("good panels", ticket.GoodPanels is null),
            ("faults", ticket.FaultPanels is null), ("rejects", ticket.Rejects is null),
            ("panels without a partner", ticket.UnpairedPanels is null), ("width", ticket.WidthMm is null),
        ];
        return fields.Where(f => f.Blank).Select(f => f.Name);
    }

    private static decimal Kept(decimal value) => Math.Round(value, Digits);
}
