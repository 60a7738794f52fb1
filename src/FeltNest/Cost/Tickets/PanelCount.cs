namespace FeltNest.Cost.Tickets;

/// <summary>Where the panels that were struck are. What was not counted is taken at its standard.</summary>
internal sealed record PanelCount
{
    /// <summary>Good panels with a partner.</summary>
    public required decimal Paired { get; init; }

    public required decimal Unpaired { get; init; }

    public required decimal Rejected { get; init; }

    public required decimal Faults { get; init; }

    /// <summary>Panels of rows that the felt was too narrow for.</summary>
    public decimal ByWidth { get; init; }

    /// <summary>The panels of a ticket.</summary>
    /// <param name="ticket">The ticket.</param>
    /// <param name="struck">Panels struck.</param>
    /// <param name="standardWidth">Width of the standard, m.</param>
    /// <param name="fault">Standard shares of faults, rejects, panels without a partner.</param>
    /// <param name="reject">Of the panels without a fault.</param>
    /// <param name="unpaired">Of those that pass.</param>
    public static PanelCount Of(CutTicket ticket, decimal struck, decimal standardWidth, decimal fault, decimal reject, decimal unpaired)
    {
        decimal byRows = ByRows(ticket, struck);
        if (ticket.GoodPanels is not { } good)
        {
            decimal paired = (struck - byRows) * (1 - fault) * (1 - reject) * (1 - unpaired);
            return Standard(paired, fault, reject, unpaired) with { ByWidth = byRows };
        }

        decimal alone = ticket.UnpairedPanels ?? (good * unpaired);
        decimal rejected = ticket.RejectedPanels ?? (good * reject / (1 - reject));
        decimal faults = ticket.FaultPanels ?? ((good + rejected) * fault / (1 - fault));
        decimal missing = Math.Max(0, struck - good - rejected - faults);
        bool narrow = ticket.WidthMm < (ticket.LeastWidthMm ?? (standardWidth * 1000));
        return new PanelCount
        {
            Paired = good - alone,
            Unpaired = alone,
            Rejected = rejected,
            Faults = faults,
            ByWidth = ticket.Rows is null && narrow ? Math.Min(missing, OneRow(ticket, struck)) : byRows,
        };
    }

    /// <summary>What the standard allows besides panels with a partner.</summary>
    public static PanelCount Standard(decimal paired, decimal fault, decimal reject, decimal unpaired)
    {
        decimal alone = paired * unpaired / (1 - unpaired);
        decimal rejected = (paired + alone) * reject / (1 - reject);
        return new PanelCount
        {
            Paired = paired,
            Unpaired = alone,
            Rejected = rejected,
            Faults = (paired + alone + rejected) * fault / (1 - fault),
        };
    }

    // Rows really cut, where they were counted.
    private static decimal ByRows(CutTicket ticket, decimal struck) => ticket is { Rows: { } cut, LayoutRows: { } rows and > 0 }
        ? struck * Math.Max(0, rows - cut) / rows
        : 0;

    // Felt a little too narrow loses one row at most; without a count of rows no more is put down to it.
    private static decimal OneRow(CutTicket ticket, decimal struck) => ticket.LayoutRows is { } rows and > 0 ? struck / rows : struck;
}
