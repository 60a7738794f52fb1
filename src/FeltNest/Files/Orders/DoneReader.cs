using FeltNest.Files.Csv;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Files.Orders;

/// <summary>Reads a list of what is cut of a plan (CSV).</summary>
internal static class DoneReader
{
    // A run of strikes may be longer than planned by so many, and by this share: a foreman evens out a panel or two. More is a slip.
    private const int FewStrikes = 5;
    private const double StrikesShare = 0.1;

    // Places this near are equal, m.
    private const double Slack = 1e-6;

    /// <summary>What is done, in the order of the list.</summary>
    /// <param name="text">The list.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="stock">Rolls of the stock list, those that are not available too.</param>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<DoneWork> Read(InputText text, OrderPlan plan, IReadOnlyList<StockRoll> stock)
    {
        HashSet<int> tickets = [];
        return CsvTable.Read(text, DoneListing.Listing).Each(row =>
        {
            DoneWork work = Read(row, plan, stock);
            return tickets.Add(work.Cut.Number)
                ? work
                : throw row.Fault(DoneListing.Ticket, $"{work.Cut.Number} stands in the list twice: one line a ticket");
        });
    }

    private static DoneWork Read(CsvRow row, OrderPlan plan, IReadOnlyList<StockRoll> stock)
    {
        int ticket = row.Whole(DoneListing.Ticket);
        OrderCut cut = plan.Cuts.FirstOrDefault(c => c.Number == ticket)
            ?? throw row.Fault(DoneListing.Ticket, $"{ticket} is no ticket of the plan: it has {plan.Cuts.Count}");
        int strikes = row.Whole(DoneListing.Strikes);
        int most = FewStrikes + (int)Math.Floor((1 + StrikesShare) * cut.Strikes);
        if (strikes > most)
        {
            throw row.Fault(DoneListing.Strikes, $"{strikes} is far above the {cut.Strikes} of ticket {ticket}: at most {most}");
        }

        int expected = cut.Die.Shape.BallsOf(strikes, plan.Question.GoodShare(cut.Roll, cut.Die));
        string? named = row.OptionalText(DoneListing.Roll);
        string[] rolls = [.. stock.Select(r => r.Name)];
        if (named is not null && !rolls.Contains(named))
        {
            throw row.Fault(DoneListing.Roll, $"'{named}' is not in the stock list{NearestWord.Hint(named, rolls)}");
        }

        return new DoneWork
        {
            Cut = cut,
            Strikes = strikes,
            Balls = Balls(row, cut, strikes) ?? expected,
            Roll = named ?? cut.Roll.Name,
            UsableFromM = UsableFrom(row, cut, strikes, plan.Question.Rolls.Concat(stock).FirstOrDefault(r => r.Name == named)),
        };
    }

    // No more than both panels of every ball came from the strikes.
    private static int? Balls(CsvRow row, OrderCut cut, int strikes)
    {
        int? balls = row.OptionalWhole(DoneListing.Balls);
        long most = (long)strikes * cut.Die.Shape.ClassPanels.Sum() / 2;
        return balls is { } said && said > most
            ? throw row.Fault(DoneListing.Balls, $"{said} is above the {most} that {strikes} strikes of die {cut.Die.Name} can give")
            : balls;
    }

    private static double UsableFrom(CsvRow row, OrderCut cut, int strikes, StockRoll? named)
    {
        StockRoll roll = named ?? cut.Roll;
        bool asPlanned = roll.Name == cut.Roll.Name;
        if (row.OptionalNumber(DoneListing.UsableFromM) is not { } from)
        {
            return asPlanned
                ? Math.Min(cut.Roll.EndM, cut.FromM + cut.Die.Shape.MetresOf(strikes))
                : throw row.Fault(
                    DoneListing.UsableFromM, $"is blank: roll {roll.Name} is not the one of the ticket, so say where it is usable from");
        }

        if (from < roll.BeginM - Slack)
        {
            throw row.Fault(
                DoneListing.UsableFromM,
                Invariant($"{from} would leave roll {roll.Name} longer than it was: it was usable from {roll.BeginM:0.###} m"));
        }

        return from <= roll.EndM + Slack
            ? from
            : throw row.Fault(DoneListing.UsableFromM, Invariant($"{from} is behind the end of roll {roll.Name} at {roll.EndM:0.###} m"));
    }
}
