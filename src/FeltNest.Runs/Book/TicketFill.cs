using FeltNest.Book;

namespace FeltNest.Runs.Book;

/// <summary>Works out what a ticket that came back takes and gives.</summary>
internal static class TicketFill
{
    /// <summary>The entry with its felt and balls.</summary>
    /// <param name="ticket">The ticket.</param>
    /// <param name="fill">What came back.</param>
    /// <param name="before">Strikes made of it before.</param>
    /// <param name="first">Whether nothing came back before.</param>
    public static FillBody Of(TicketBody ticket, FillBody fill, int before, bool first)
    {
        int strikes = before + (fill.Strikes ?? 0);
        decimal run = ticket.MetresOf(strikes) - ticket.MetresOf(before);
        bool places = fill is { FromM: not null, ToM: not null };
        decimal cut = places ? fill.ToM!.Value - fill.FromM!.Value : run;
        return fill with
        {
            CutM = cut,
            LeadM = first && cut > 0 ? ticket.LeadM : 0,
            Balls = BallsOf(ticket, fill, before),
            Over = fill.Over,
        };
    }

    // Both panels of a ball are good; where nobody counted, what the plan expects of the strikes.
    private static int BallsOf(TicketBody ticket, FillBody fill, int before) => fill.GoodPanels is { } good
        ? Math.Max(0, good - (fill.UnpairedPanels ?? 0)) / 2
        : ticket.BallsOf(before + (fill.Strikes ?? 0)) - ticket.BallsOf(before);
}
