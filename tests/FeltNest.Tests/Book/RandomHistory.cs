using FeltNest.Book;
using FeltNest.Runs.Book;
using static FeltNest.Tests.Book.BookCases;

namespace FeltNest.Tests.Book;

/// <summary>Months in a cutting room, drawn by lot: what cannot be is refused by the book, and leaves nothing.</summary>
internal sealed class RandomHistory
{
    private readonly BookStore store;
    private readonly Random random;
    private int made;

    public RandomHistory(BookStore store, int seed)
    {
        (this.store, random) = (store, new Random(seed));
        for (int i = 0; i < 4; i++)
        {
            New();
        }
    }

    private BookDesk Desk => BookRoom.Desk(store);

    public long Entries => store.Read(book => book.LastEntry());

    public int Corrected { get; private set; }

    public int Undone { get; private set; }

    /// <summary>One more act.</summary>
    public void Go()
    {
        try
        {
            Act(random.Next(20));
        }
        catch (InputException)
        {
            // More felt than there is, or an entry that was taken back: nothing was written.
        }
    }

    private string Any(SubjectKind kind)
    {
        IReadOnlyList<(string Name, object State)> there = store.Read(book => book.States(kind, openOnly: false));
        if (there.Count == 0)
        {
            throw new InputException("all was taken back");
        }

        return there[random.Next(there.Count)].Name;
    }

    private decimal Metres(int most) => Math.Round((decimal)(random.NextDouble() * most), 6);

    private void New()
    {
        made++;
        Write(
            store, Roll($"R{made}", 20 + Metres(60)), BookCases.Die($"D{made}", random.Next(1, 2000)),
            Order($"K{made}", random.Next(1, 4000)),
            Ticket(made, $"R{made}", $"D{made}", $"K{made}", random.Next(1, 120)));
    }

    private void Act(int lot)
    {
        switch (lot)
        {
            case 0 or 1 or 2:
                New();
                break;
            case 3 or 4 or 5 or 6 or 7 or 8:
                Fill();
                break;
            case 9 or 10 or 11:
                Correct();
                break;
            case 12 or 13:
                Corrections.Undo(Desk, null, false);
                Undone++;
                break;
            case 14:
                RollEntries.Measured(Desk, Any(SubjectKind.Roll), new RollMeasure
                {
                    LeftM = Metres(40),
                    PutBack = random.Next(2) == 0,
                    MeantSo = true,
                });
                break;
            case 15:
                RollEntries.Scrapped(Desk, Any(SubjectKind.Roll), random.Next(4) == 0 ? null : Metres(5), "wet");
                break;
            default:
                Rarely(lot);
                break;
        }
    }

    private void Rarely(int lot)
    {
        switch (lot)
        {
            case 16:
                CutBody cut = new()
                {
                    LengthM = Metres(3),
                    Order = Any(SubjectKind.Order),
                    Balls = random.Next(50),
                    Die = Any(SubjectKind.Die),
                    Strikes = random.Next(20),
                };
                RollEntries.Cut(Desk, Any(SubjectKind.Roll), cut, "sample");
                break;
            case 17:
                DieEntries.Ruled(Desk, Any(SubjectKind.Die), random.Next(1, 5000), null);
                break;
            case 18:
                Write(store, Order(Any(SubjectKind.Order), random.Next(1, 4000), EntryKind.OrderChanged));
                break;
            default:
                OrderEntries.Closed(Desk, Any(SubjectKind.Order), "enough");
                break;
        }
    }

    private void Fill() => TicketEntries.FilledIn(Desk, new TicketAsk
    {
        Number = long.Parse(Any(SubjectKind.Ticket), System.Globalization.CultureInfo.InvariantCulture),
        Strikes = random.Next(5) == 0 ? null : random.Next(0, 60),
        GoodPanels = random.Next(3) == 0 ? null : random.Next(0, 600),
        UnpairedPanels = random.Next(3) == 0 ? random.Next(5) : null,
        Roll = random.Next(4) == 0 ? Any(SubjectKind.Roll) : null,
        More = random.Next(2) == 0,
        Over = random.Next(4) == 0,
        MeantSo = true,
    });

    private void Correct()
    {
        long number = random.NextInt64(1, Entries + 1);
        BookEntry entry = store.Read(book => book.Entry(number))!;
        KeyValuePair<string, string> set = entry.Kind switch
        {
            EntryKind.TicketFilledIn when random.Next(2) == 0 => new("roll", Any(SubjectKind.Roll)),
            EntryKind.TicketFilledIn or EntryKind.DieRuledAgain or EntryKind.DieStruck => new("strikes", Text(random.Next(90))),
            EntryKind.RollMeasured or EntryKind.RollPutBack => new("leftM", Text(Metres(40))),
            EntryKind.DieMade => new("strikesLeft", Text(random.Next(3000))),
            EntryKind.OrderTaken or EntryKind.OrderChanged => new("balls", $"{random.Next(1, 4000)}"),
            _ => new("lengthM", Text(Metres(60))),
        };
        Corrections.Correct(Desk, number, [set], "counted again", true);
        Corrected++;
    }

    private static string Text(decimal value) => FormattableString.Invariant($"{value}");
}
