using static FeltNest.InvariantText;

namespace FeltNest.Book.Check;

/// <summary>Adds up the entries of a book by itself and holds the figures kept against the sums. It shares no code with the
/// folding.</summary>
/// <remarks>Of a roll: received + found = cut + left + scrapped. Of a die: strikes given = struck + left + given up. Of an order: balls
/// wanted = done + left. Felt is added in whole micrometres.</remarks>
internal sealed class LedgerCheck
{
    private readonly Dictionary<string, RollSum> rolls = [];
    private readonly Dictionary<string, DieSum> dies = [];
    private readonly Dictionary<string, OrderSum> orders = [];
    private readonly List<string> violations = [];

    private LedgerCheck(IReadOnlyList<BookEntry> entries)
    {
        for (int i = 0; i < entries.Count; i++)
        {
            if (entries[i].Number != i + 1)
            {
                violations.Add(Invariant($"entry {i + 1} is missing: number {entries[i].Number} stands in its place"));
                break;
            }
        }

        foreach (BookEntry entry in Standing(entries))
        {
            Add(entry);
        }
    }

    /// <summary>What does not add up.</summary>
    /// <param name="entries">All entries, in the order of their numbers.</param>
    /// <param name="kept">The figures kept of rolls, dies and orders, by name.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<BookEntry> entries, IReadOnlyList<(Subject Subject, object State)> kept)
    {
        LedgerCheck check = new(entries);
        foreach ((Subject subject, object state) in kept)
        {
            check.Compare(subject.Name, state);
        }

        check.Missing("roll", check.rolls.Keys, kept, SubjectKind.Roll);
        check.Missing("die", check.dies.Keys, kept, SubjectKind.Die);
        check.Missing("order", check.orders.Keys, kept, SubjectKind.Order);
        return check.violations;
    }

    // From the last entry back: an act that is taken back, and what a later entry corrects, is passed over.
    private static List<BookEntry> Standing(IReadOnlyList<BookEntry> entries)
    {
        HashSet<long> gone = [];
        HashSet<long> corrected = [];
        List<BookEntry> standing = [];
        for (int i = entries.Count - 1; i >= 0; i--)
        {
            BookEntry entry = entries[i];
            if (entry.Kind == EntryKind.Undone)
            {
                gone.Add(entry.Corrects!.Value);
            }
            else if (!gone.Contains(entry.Act) && corrected.Add(entry.Corrects ?? entry.Number))
            {
                standing.Add(entry);
            }
        }

        standing.Sort((a, b) => (a.Corrects ?? a.Number).CompareTo(b.Corrects ?? b.Number));
        return standing;
    }

    private void Add(BookEntry entry)
    {
        string name = entry.Subject.Name;
        switch (entry.Kind)
        {
            case EntryKind.RollReceived:
                rolls[name] = new RollSum { Received = Micro(BookJson.Read<RollBody>(entry.Body).LengthM) };
                break;
            case EntryKind.RollMeasured or EntryKind.RollPutBack:
                MeasuredBody found = BookJson.Read<MeasuredBody>(entry.Body);
                Of(rolls, name).Received += Micro((found.LeftM ?? found.WasM) - found.WasM);
                break;
            case EntryKind.RollScrapped:
                Of(rolls, name).Scrapped += Micro(BookJson.Read<ScrappedBody>(entry.Body).LengthM);
                break;
            case EntryKind.OrderTaken or EntryKind.OrderChanged:
                Of(orders, name).Wanted = BookJson.Read<OrderBody>(entry.Body).Balls;
                break;
            default:
                AddWork(entry, name);
                break;
        }
    }

    private void AddWork(BookEntry entry, string name)
    {
        switch (entry.Kind)
        {
            case EntryKind.RollCut:
                AddCut(name, BookJson.Read<CutBody>(entry.Body));
                break;
            case EntryKind.TicketFilledIn:
                AddFill(BookJson.Read<FillBody>(entry.Body));
                break;
            case EntryKind.DieMade:
                dies[name] = new DieSum { Given = BookJson.Read<DieBody>(entry.Body).StrikesLeft };
                break;
            case EntryKind.DieReady:
                Of(dies, name).Given += BookJson.Read<StrikesBody>(entry.Body).Strikes;
                break;
            case EntryKind.DieStruck:
                Of(dies, name).Struck += BookJson.Read<StrikesBody>(entry.Body).Strikes;
                break;
            case EntryKind.DieRuledAgain:
                StrikesBody ruled = BookJson.Read<StrikesBody>(entry.Body);
                Of(dies, name).Given += ruled.Strikes;
                Of(dies, name).GivenUp += ruled.WasLeft ?? 0;
                break;
        }
    }

    private void AddCut(string roll, CutBody cut)
    {
        Of(rolls, roll).Cut += Micro(cut.LengthM);
        if (cut.Die is { } die)
        {
            Of(dies, die).Struck += cut.Strikes ?? 0;
        }

        if (cut.Order is { } order)
        {
            Of(orders, order).Done += cut.Balls ?? 0;
        }
    }

    private void AddFill(FillBody fill)
    {
        Of(rolls, fill.Roll).Cut += Micro(fill.CutM);
        Of(rolls, fill.Roll).Scrapped += Micro(fill.LeadM);
        Of(dies, fill.Die).Struck += fill.Strikes ?? 0;
        Of(orders, fill.Order).Done += fill.Balls;
    }

    private void Compare(string name, object state)
    {
        switch (state)
        {
            case RollState roll when rolls.TryGetValue(name, out RollSum? sum):
                Same($"roll {name}", "received, um", Micro(roll.ReceivedM), sum.Received);
                Same($"roll {name}", "cut, um", Micro(roll.CutM), sum.Cut);
                Same($"roll {name}", "scrapped, um", Micro(roll.ScrappedM), sum.Scrapped);
                Same($"roll {name}", "left, um (received - cut - scrapped)", Micro(roll.LeftM), sum.Received - sum.Cut - sum.Scrapped);
                break;
            case DieState die when dies.TryGetValue(name, out DieSum? sum):
                Same($"die {name}", "struck", die.Struck, sum.Struck);
                Same($"die {name}", "strikes left (given - struck - given up)", die.Left, sum.Given - sum.Struck - sum.GivenUp);
                break;
            case OrderState order when orders.TryGetValue(name, out OrderSum? sum):
                Same($"order {name}", "balls done", order.Done, sum.Done);
                Same($"order {name}", "balls left (wanted - done)", order.Left, sum.Wanted - sum.Done);
                break;
            default:
                violations.Add($"{name}: figures are kept of it, and no entry tells of it");
                break;
        }
    }

    private void Same(string thing, string figure, long kept, long sum)
    {
        if (kept != sum)
        {
            violations.Add(Invariant($"{thing}: {figure}: {kept} is kept, the entries give {sum}"));
        }
    }

    private void Missing(string word, IEnumerable<string> names, IReadOnlyList<(Subject Subject, object State)> kept, SubjectKind kind)
    {
        HashSet<string> there = [.. kept.Where(k => k.Subject.Kind == kind).Select(k => k.Subject.Name)];
        violations.AddRange(names.Where(name => !there.Contains(name)).Select(name => $"{word} {name}: no figures are kept of it"));
    }

    private static long Micro(decimal metres) => (long)Math.Round(metres * 1_000_000);

    private static T Of<T>(Dictionary<string, T> sums, string name)
        where T : new()
    {
        if (!sums.TryGetValue(name, out T? sum))
        {
            sums.Add(name, sum = new T());
        }

        return sum;
    }

    private sealed class RollSum
    {
        public long Received { get; set; }

        public long Cut { get; set; }

        public long Scrapped { get; set; }
    }

    private sealed class DieSum
    {
        public long Given { get; set; }

        public long Struck { get; set; }

        public long GivenUp { get; set; }
    }

    private sealed class OrderSum
    {
        public long Wanted { get; set; }

        public long Done { get; set; }
    }
}
