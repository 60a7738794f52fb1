namespace FeltNest.Book;

/// <summary>What is known of the standards of a ball.</summary>
internal static class StandardFold
{
    /// <summary>After one more entry.</summary>
    public static StandardState? After(StandardState? state, BookEntry entry) => entry.Kind == EntryKind.StandardSet
        ? new StandardState { Versions = [.. state?.Versions ?? [], BookJson.Read<StandardBody>(entry.Body)] }
        : state;
}
