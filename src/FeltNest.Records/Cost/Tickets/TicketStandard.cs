namespace FeltNest.Cost.Tickets;

/// <summary>What felt was promised for a ball from a day on. A later version never changes an earlier one.</summary>
internal sealed record TicketStandard
{
    /// <summary>Ball.</summary>
    public required string Ball { get; init; }

    /// <summary>Version, from 1 on.</summary>
    public required int Version { get; init; }

    /// <summary>First day it holds, as 2026-03-02.</summary>
    public required string From { get; init; }

    /// <summary>Width its felt is bought in, mm.</summary>
    public required decimal WidthMm { get; init; }

    /// <summary>Felt of full width for one panel, without any loss, m2.</summary>
    public required decimal PanelM2 { get; init; }

    /// <summary>Felt lost at the ends of a roll, whatever its length, m.</summary>
    public required decimal EndsM { get; init; }

    /// <summary>Length of roll that the figures a thousand balls are for, m.</summary>
    public required decimal RollLengthM { get; init; }

    /// <summary>Panels lost to faults, %.</summary>
    public required decimal FaultPercent { get; init; }

    /// <summary>Of the others, panels rejected, %.</summary>
    public required decimal RejectPercent { get; init; }

    /// <summary>Of those that pass, panels without a partner, %.</summary>
    public required decimal UnpairedPercent { get; init; }

    /// <summary>Price of a square metre; null where none was promised.</summary>
    public decimal? PricePerM2 { get; init; }

    /// <summary>Its currency.</summary>
    public string? Currency { get; init; }

    /// <summary>Felt for a thousand good balls, by cause, m2: in panels of good balls, then what is lost besides.</summary>
    internal IReadOnlyList<(TicketCause? Cause, decimal M2)> ByCause
    {
        get
        {
            const decimal panels = 2000;
            decimal passed = panels / (1 - (UnpairedPercent / 100));
            decimal cut = passed / (1 - (RejectPercent / 100));
            decimal struck = cut / (1 - (FaultPercent / 100));
            decimal ends = struck * PanelM2 * EndsM / (RollLengthM - EndsM);
            return
            [
                (null, panels * PanelM2), (TicketCause.Unpaired, (passed - panels) * PanelM2),
                (TicketCause.Rejects, (cut - passed) * PanelM2), (TicketCause.Faults, (struck - cut) * PanelM2),
                (TicketCause.RollEnds, ends),
            ];
        }
    }

    /// <summary>Felt for a thousand good balls, m2.</summary>
    internal decimal M2PerThousandBalls => ByCause.Sum(part => part.M2);
}
