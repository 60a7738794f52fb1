namespace FeltNest.Book;

/// <summary>All of a book folded anew from its entries alone.</summary>
internal sealed class WholeBook
{
    private readonly Dictionary<Subject, List<BookEntry>> about = [];
    private readonly List<(Subject Subject, long Entry)> touches = [];

    /// <summary>The book of these entries, in the order of their numbers.</summary>
    public WholeBook(IReadOnlyList<BookEntry> entries)
    {
        ILookup<long, BookEntry> acts = entries.ToLookup(e => e.Act);
        Dictionary<long, IReadOnlyList<Subject>> known = [];
        Dictionary<long, IReadOnlyList<Subject>> corrected = [];
        foreach (BookEntry entry in entries)
        {
            IReadOnlyList<Subject> subjects = entry.Kind == EntryKind.Undone
                ? [.. acts[entry.Corrects!.Value].SelectMany(e => known[e.Number]).Distinct()]
                : Touched.Of(entry);
            if (entry.IsCorrection)
            {
                // About all that the entry and the corrections before it were about.
                long root = entry.Corrects!.Value;
                subjects = [.. subjects.Concat(corrected.GetValueOrDefault(root, known[root])).Distinct()];
                corrected[root] = subjects;
            }

            known.Add(entry.Number, subjects);
            foreach (Subject subject in subjects)
            {
                touches.Add((subject, entry.Number));
                if (!about.TryGetValue(subject, out List<BookEntry>? own))
                {
                    about.Add(subject, own = []);
                }

                own.Add(entry);
            }
        }
    }

    /// <summary>Which entries are about what.</summary>
    public IReadOnlyList<(Subject Subject, long Entry)> Touches => touches;

    /// <summary>What is known of everything.</summary>
    public IEnumerable<(Subject Subject, long Rank, object State)> Figures()
    {
        foreach ((Subject subject, List<BookEntry> entries) in about)
        {
            if (BookFold.Of(subject, entries) is { } state)
            {
                yield return (subject, entries[0].Number, state);
            }
        }
    }
}
