using FeltNest.Book;
using FeltNest.Cost.Tickets;

namespace FeltNest.Runs.Book;

/// <summary>Standards as the book keeps them, and as tickets are held against them.</summary>
internal static class BookStandards
{
    /// <summary>As the book keeps it.</summary>
    public static StandardBody Kept(TicketStandard standard) => new()
    {
        Version = standard.Version,
        From = standard.From,
        WidthMm = standard.WidthMm,
        PanelM2 = standard.PanelM2,
        EndsM = standard.EndsM,
        RollLengthM = standard.RollLengthM,
        FaultPercent = standard.FaultPercent,
        RejectPercent = standard.RejectPercent,
        UnpairedPercent = standard.UnpairedPercent,
        PricePerM2 = standard.PricePerM2,
        Currency = standard.Currency,
    };

    /// <summary>As tickets are held against it.</summary>
    public static TicketStandard Of(string ball, StandardBody body) => new()
    {
        Ball = ball,
        Version = body.Version,
        From = body.From,
        WidthMm = body.WidthMm,
        PanelM2 = body.PanelM2,
        EndsM = body.EndsM,
        RollLengthM = body.RollLengthM,
        FaultPercent = body.FaultPercent,
        RejectPercent = body.RejectPercent,
        UnpairedPercent = body.UnpairedPercent,
        PricePerM2 = body.PricePerM2,
        Currency = body.Currency,
    };
}
