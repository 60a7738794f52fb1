using FeltNest.Book;
using FeltNest.Book.Check;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Book;

/// <summary>Checks a book: all entries folded anew against the figures kept, and the sums that must come out.</summary>
internal sealed class BookCheckRun
{
    /// <summary>Checks a book.</summary>
    /// <exception cref="InputException">It cannot be read.</exception>
    public BookCheckRun(BookStore store)
    {
        List<string> found = [];
        if (store is SqliteBook file && file.Damage() is { } damage)
        {
            found.Add($"the file is damaged: {damage}");
        }

        (IReadOnlyList<BookEntry> entries, IReadOnlyList<(Subject Subject, long Rank, string State)> kept) =
            store.Read(book => (book.AllEntries(), book.AllKept()));
        Dictionary<Subject, string> folded = new WholeBook(entries).Figures().ToDictionary(f => f.Subject, f => BookFold.Text(f.State));
        foreach ((Subject subject, _, string state) in kept)
        {
            if (!folded.Remove(subject, out string? anew) || anew != state)
            {
                found.Add($"{EnumWord.Of(subject.Kind)} {subject.Name}: the figures kept are not those that follow from the entries");
            }
        }

        found.AddRange(folded.Keys.Select(subject => $"{EnumWord.Of(subject.Kind)} {subject.Name}: no figures are kept of it"));
        (Subject Subject, object State)[] ledger =
        [
            .. kept.Where(k => k.Subject.Kind is SubjectKind.Roll or SubjectKind.Die or SubjectKind.Order)
                .Select(k => (k.Subject, BookFold.State(k.Subject.Kind, k.State))),
        ];
        found.AddRange(LedgerCheck.Of(entries, ledger));
        Violations = [.. found.Distinct()];
        Line = Violations.Count > 0 ? Invariant($"{Violations.Count} violations") : Sound(entries, ledger);
    }

    /// <summary>What is wrong.</summary>
    public IReadOnlyList<string> Violations { get; }

    /// <summary>The verdict.</summary>
    public string Line { get; }

    private static string Sound(IReadOnlyList<BookEntry> entries, (Subject Subject, object State)[] kept)
    {
        RollState[] rolls = [.. kept.Select(k => k.State).OfType<RollState>()];
        DieState[] dies = [.. kept.Select(k => k.State).OfType<DieState>()];
        OrderState[] orders = [.. kept.Select(k => k.State).OfType<OrderState>()];
        return Invariant($"sound: {entries.Count} entries\n")
            + Invariant($"felt, m:  received {rolls.Sum(r => r.ReceivedM):0.###} = cut {rolls.Sum(r => r.CutM):0.###} ")
            + Invariant(
                $"+ left {rolls.Sum(r => r.LeftM):0.###} + scrapped {rolls.Sum(r => r.ScrappedM):0.###}, on each of {rolls.Length} rolls\n")
            + Invariant($"strikes:  given {dies.Sum(d => d.Given)} = struck {dies.Sum(d => d.Struck)} + left {dies.Sum(d => d.Left)} ")
            + Invariant($"+ given up {dies.Sum(d => d.GivenUp)}, of each of {dies.Length} dies\n")
            + Invariant($"balls:    wanted {orders.Sum(o => (long)o.Order.Balls)} = done {orders.Sum(o => (long)o.Done)} ")
            + Invariant($"+ left {orders.Sum(o => (long)o.Left)}, of each of {orders.Length} orders");
    }
}
