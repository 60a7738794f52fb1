using FeltNest.Book;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Begun;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Runs.Book;

/// <summary>Work that the book says is begun, for the next plan.</summary>
internal static class BookWork
{
    /// <summary>A question with the dies where they stand, and with the jobs that are begun first on their presses.</summary>
    /// <param name="question">The question of the book's lists.</param>
    /// <param name="book">The lists.</param>
    public static OrderRequest Begun(OrderRequest question, BookLists book)
    {
        OrderRequest mounted = question with { Presses = [.. question.Presses.Select(press => Mounted(question, press, book.Mounted))] };
        return BegunShop.Kept(mounted, [.. book.Begun.Select(ticket => Done(mounted, ticket.Number, ticket.State)).OfType<DoneWork>()]);
    }

    // What the press file itself names goes before; a die stands in one place.
    private static PressSpec Mounted(OrderRequest question, PressSpec press, IReadOnlyDictionary<string, string> mounted)
    {
        CutDie? die = press.MountedDie is null && mounted.TryGetValue(press.Name, out string? name)
            ? question.Dies.FirstOrDefault(d => d.Name == name && d.MakePrice is null && d.From is null)
            : null;
        bool stands = die is not null && OrderRequest.Takes(press, die) && question.Presses.All(p => p.MountedDie != die.Name);
        return stands ? press with { MountedDie = die!.Name } : press;
    }

    // Null where its order, roll, die or press is not there any more: then nothing is kept.
    private static DoneWork? Done(OrderRequest question, long number, TicketState state)
    {
        TicketBody ticket = state.Ticket;
        CoverOrder? order = question.Orders.FirstOrDefault(o => o.Name == ticket.Order);
        StockRoll? roll = question.Rolls.FirstOrDefault(r => r.Name == ticket.Roll);
        CutDie? die = question.Dies.FirstOrDefault(d => d.Name == ticket.Die);
        PressSpec? press = question.Presses.FirstOrDefault(p => p.Name == ticket.Press);
        if (order is null || roll is null || die is null || press is null)
        {
            return null;
        }

        return new DoneWork
        {
            Cut = new OrderCut
            {
                Number = (int)number,
                Order = order,
                Roll = roll,
                Die = die,
                Press = press,
                Strikes = ticket.Strikes,
                GoodBalls = ticket.Balls,
                FromM = (double)ticket.FromM,
                StartHour = 0,
                EndHour = 0,
            },
            Strikes = state.Strikes,
            Balls = state.Balls,
            Roll = roll.Name,
            UsableFromM = roll.BeginM,
        };
    }
}
