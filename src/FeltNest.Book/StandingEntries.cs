namespace FeltNest.Book;

/// <summary>Entries as they stand: without what was taken back, with the last correction of each.</summary>
internal static class StandingEntries
{
    /// <summary>The entries that stand, in the order of their numbers.</summary>
    /// <param name="entries">All entries of something in the order of their numbers.</param>
    public static IReadOnlyList<BookEntry> Of(IEnumerable<BookEntry> entries)
    {
        BookEntry[] all = [.. entries];
        HashSet<long> undone = [.. all.Where(e => e.Kind == EntryKind.Undone).Select(e => e.Corrects!.Value)];
        SortedDictionary<long, BookEntry> standing = [];
        foreach (BookEntry entry in all.Where(e => e.Kind != EntryKind.Undone && !undone.Contains(e.Act)))
        {
            long root = entry.Corrects ?? entry.Number;
            standing[root] = standing.TryGetValue(root, out BookEntry? before)
                ? before with { Body = entry.Body, Subject = entry.Subject }
                : entry with { Number = root };
        }

        return [.. standing.Values];
    }
}
