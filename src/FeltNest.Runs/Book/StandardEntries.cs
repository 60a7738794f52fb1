using FeltNest.Book;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Cost.Tickets;
using FeltNest.Files;
using FeltNest.Files.Costs;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Book;

/// <summary>Standards that are set.</summary>
internal static class StandardEntries
{
    /// <summary>Sets the next version of a ball's standard.</summary>
    /// <exception cref="InputException">Files that cannot be used, a day in the past, or one not after the version before.</exception>
    public static BookSaid Set(BookDesk desk, StandardAsk asked)
    {
        TicketStandard figures = Of(asked, LayoutReader.Read(asked.LayoutFile).Layout, CostsReader.Read(asked.CostsFile));
        return desk.Write(book =>
        {
            string today = desk.Hand.At[..10];
            if (string.CompareOrdinal(asked.From, today) < 0)
            {
                throw new InputException($"a standard from {asked.From} on, written on {today}, would change days that are over: no "
                    + $"version reaches back; the first day it may hold is {today}");
            }

            StandardBody? before = book.State<StandardState>(SubjectKind.Standard, asked.Ball)?.Versions[^1];
            if (before is not null && string.CompareOrdinal(asked.From, before.From) <= 0)
            {
                throw new InputException(
                    $"version {before.Version} of the standard for '{OneLine.Of(asked.Ball)}' holds from {before.From} on: a new one "
                        + "begins later");
            }

            TicketStandard standard = figures with { Version = (before?.Version ?? 0) + 1 };
            long entry = book.Add(BookDraft.Of(EntryKind.StandardSet, SubjectKind.Standard, asked.Ball, BookStandards.Kept(standard)));
            return BookSaid.Of(Invariant(
                $"entry {entry}: standard of {asked.Ball}, version {standard.Version}, from {standard.From} on: ")
                + Invariant($"{standard.M2PerThousandBalls:0.###} m2 a thousand good balls"));
        });
    }

    private static TicketStandard Of(StandardAsk asked, RollLayout layout, CostInputs costs)
    {
        if (layout.Parts.Count > 1)
        {
            throw new InputException(asked.LayoutFile, "panels", "the layout holds two parts: a standard is for one ball alone");
        }

        LayPlan plan = LayPlan.Of(layout);
        FeltLosses losses = costs.Losses;
        FeltAccount account = FeltAccount.Of(plan, losses, costs.MassPerAreaGsm);
        double length = account.RollLengthM
            ?? throw new InputException(asked.CostsFile, "rollLengthM", "is missing: what a roll loses at its ends hangs on its length");
        decimal width = (decimal)plan.RollWidthMm;
        return new TicketStandard
        {
            Ball = asked.Ball,
            Version = 0,
            From = asked.From,
            WidthMm = width,
            PanelM2 = Math.Round(width / 1000 / (decimal)plan.PanelsPerMetre, 12),
            EndsM = Math.Round((decimal)(length - (account.PanelsCut / plan.PanelsPerMetre)), 6),
            RollLengthM = (decimal)length,
            FaultPercent = (decimal)losses.FaultPercent,
            RejectPercent = (decimal)losses.RejectPercent,
            UnpairedPercent = (decimal)losses.UnpairedPercent,
            PricePerM2 = costs.Felt is { } price ? PerM2(price, width, costs) : null,
            Currency = costs.Felt is null ? null : costs.Currency,
        };
    }

    private static decimal PerM2(FeltPrice price, decimal widthMm, CostInputs costs)
    {
        decimal amount = price.Amount * costs.RateOf(price.Currency);
        return Math.Round(price.Unit switch
        {
            PriceUnit.Metre => amount / (widthMm / 1000),
            PriceUnit.SquareMetre => amount,
            _ => costs.MassPerAreaGsm is { } mass
                ? amount * (decimal)mass / 1000
                : throw new InputException(null, "felt.massPerAreaGsm", "is missing in the costs file, and felt is priced per kg"),
        }, 9);
    }
}
