using FeltNest.Book;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Book;

/// <summary>Finds on a ticket that came back what can hardly be.</summary>
internal static class TicketSlips
{
    // A run may be longer than planned by so many strikes and by this share: a foreman evens out a panel or two.
    private const int FewStrikes = 5;
    private const decimal Share = 0.1m;

    // Rolls vary in width by less, as a share.
    private const decimal WidthShare = 0.05m;

    /// <summary>Everything that can hardly be, each with its roll.</summary>
    /// <param name="ticket">The ticket.</param>
    /// <param name="before">Strikes made of it before.</param>
    /// <param name="fill">What came back.</param>
    public static IEnumerable<string> Of(TicketBody ticket, int before, FillBody fill)
    {
        int most = FewStrikes + (int)Math.Floor((1 + Share) * ticket.Strikes) - before;
        if (fill.Strikes > most)
        {
            yield return Invariant($"{fill.Strikes} strikes where {Math.Max(0, ticket.Strikes - before)} are planned");
        }

        int strikes = fill.Strikes ?? most;
        int perStrike = ticket.GroupPanels.Sum();
        long panels = Sum(fill);
        decimal metres = fill is { FromM: { } from, ToM: { } to } ? to - from : ticket.MetresOf(strikes);
        if (panels > (long)strikes * perStrike)
        {
            yield return Invariant(
                $"{panels} panels from {metres:0.###} m: {strikes} strikes of die {ticket.Die} give {(long)strikes * perStrike}");
        }

        if (fill.UnpairedPanels > fill.GoodPanels)
        {
            yield return Invariant($"{fill.UnpairedPanels} panels without a partner of {fill.GoodPanels} good ones");
        }

        foreach (string slip in OfPlaces(ticket, fill, before))
        {
            yield return slip;
        }
    }

    private static IEnumerable<string> OfPlaces(TicketBody ticket, FillBody fill, int before)
    {
        if (fill.WidthMm is { } width && Math.Abs(width - ticket.WidthMm) > WidthShare * ticket.WidthMm)
        {
            yield return Invariant($"a width of {width:0.###} mm where the roll is {ticket.WidthMm:0.###} mm wide");
        }

        if (fill is { FromM: { } from, ToM: { } to, Strikes: { } strikes })
        {
            decimal run = ticket.MetresOf(before + strikes) - ticket.MetresOf(before);
            decimal slack = Math.Max(1, Share * run);
            if (Math.Abs(to - from - run) > slack)
            {
                yield return Invariant(
                    $"{to - from:0.###} m from {from:0.###} to {to:0.###} m for {strikes} strikes, which take {run:0.###} m");
            }
        }
    }

    private static long Sum(FillBody fill) =>
        (long)(fill.GoodPanels ?? 0) + (fill.FaultPanels ?? 0) + (fill.Rejects?.Values.Sum(count => (long)count) ?? 0);
}
