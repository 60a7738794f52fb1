namespace FeltNest.Book;

/// <summary>Writes the entries of one act, and brings the present figures in step with them.</summary>
internal sealed class BookWriter
{
    private readonly BookTables tables;
    private readonly BookOrigin origin;
    private readonly long act;
    private readonly Dictionary<Subject, (object? State, long Rank)> changed = [];
    private long last;

    /// <summary>A writer of one act.</summary>
    public BookWriter(BookTables tables, BookOrigin origin)
    {
        (this.tables, this.origin) = (tables, origin);
        last = tables.LastEntry();
        act = last + 1;
    }

    /// <summary>Number of the last entry.</summary>
    public long Last => last;

    /// <summary>Writes an entry.</summary>
    /// <returns>Its number.</returns>
    public long Add(BookDraft draft)
    {
        BookEntry entry = EntryOf(draft);
        tables.Insert(entry);
        IReadOnlyList<Subject> own = Touched.Of(entry);
        IReadOnlyList<Subject> subjects = entry.IsCorrection ? [.. own.Concat(Before(entry.Corrects!.Value)).Distinct()] : own;
        foreach (Subject subject in subjects)
        {
            tables.Touch(subject, entry.Number);
            if (!entry.IsCorrection)
            {
                (object? state, long rank) = Known(subject, entry.Number);
                changed[subject] = (BookFold.After(subject, state, entry), rank);
            }
        }

        if (entry.IsCorrection)
        {
            FoldAgain(subjects);
        }

        return entry.Number;
    }

    /// <summary>Takes an act back.</summary>
    /// <returns>The number of the entry that says so.</returns>
    public long TakeBack(long target, string? why)
    {
        BookEntry entry = EntryOf(new BookDraft
        {
            Kind = EntryKind.Undone,
            Subject = new Subject(SubjectKind.Act, FormattableString.Invariant($"{target}")),
            Body = BookJson.Write(new NoBody()),
            Corrects = target,
            Why = why,
        });
        tables.Insert(entry);
        Subject[] subjects = [.. tables.OfAct(target).SelectMany(e => tables.TouchedBy(e.Number)).Distinct()];
        foreach (Subject subject in subjects)
        {
            tables.Touch(subject, entry.Number);
        }

        FoldAgain(subjects);
        return entry.Number;
    }

    /// <summary>What is known of something, this act's entries in.</summary>
    public T? State<T>(SubjectKind kind, string name)
        where T : class => (T?)Known(new Subject(kind, name), last).State;

    /// <summary>All that is known of a kind, this act's entries in.</summary>
    public IReadOnlyList<(string Name, T State)> States<T>(SubjectKind kind, bool openOnly)
    {
        Finish();
        return [.. tables.States(kind, openOnly).Select(s => (s.Name, (T)s.State))];
    }

    /// <summary>How many there are of a kind.</summary>
    public long Count(SubjectKind kind)
    {
        Finish();
        return tables.Count(kind, openOnly: false);
    }

    /// <summary>The tables.</summary>
    public BookTables Tables => tables;

    /// <summary>Keeps the figures.</summary>
    /// <exception cref="InputException">More felt would be cut from a roll than it has.</exception>
    public void Finish()
    {
        foreach ((Subject subject, (object? state, long rank)) in changed)
        {
            if (state is RollState { LeftM: < 0 } roll)
            {
                throw new InputException(FormattableString.Invariant(
                    $"roll {subject.Name} would be {-roll.LeftM:0.###} m short: of {roll.ReceivedM:0.###} m received, {roll.CutM:0.###} m ")
                    + FormattableString.Invariant($"would be cut and {roll.ScrappedM:0.###} m scrapped; measure the roll first"));
            }

            if (state is null)
            {
                tables.Forget(subject);
            }
            else
            {
                tables.Keep(subject, rank, state);
            }
        }

        tables.Send();
        changed.Clear();
    }

    private BookEntry EntryOf(BookDraft draft) => new()
    {
        Number = ++last,
        Act = act,
        Kind = draft.Kind,
        Subject = draft.Subject,
        At = origin.At,
        By = origin.By,
        Source = origin.Source,
        Hash = origin.Hash,
        Body = draft.Body,
        Corrects = draft.Corrects,
        Why = draft.Why,
    };

    private (object? State, long Rank) Known(Subject subject, long number) =>
        changed.TryGetValue(subject, out (object? State, long Rank) known) ? known : (tables.State(subject), number);

    // A correction is about all that the entry and the corrections before it were about: a ticket may have been moved from roll to roll.
    private IEnumerable<Subject> Before(long root) => tables.TouchedBy(root)
        .Concat(tables.CorrectionsOf(root).SelectMany(tables.TouchedBy));

    private void FoldAgain(IEnumerable<Subject> subjects)
    {
        foreach (Subject subject in subjects.Distinct())
        {
            IReadOnlyList<BookEntry> entries = tables.OfSubject(subject);
            changed[subject] = (BookFold.Of(subject, entries), entries.Count > 0 ? entries[0].Number : last);
        }
    }
}
