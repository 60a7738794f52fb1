namespace FeltNest.Book;

/// <summary>An entry before it has a number.</summary>
internal sealed record BookDraft
{
    /// <summary>What it tells.</summary>
    public required EntryKind Kind { get; init; }

    /// <summary>What it is about.</summary>
    public required Subject Subject { get; init; }

    /// <summary>What there is to tell, as JSON.</summary>
    public required string Body { get; init; }

    /// <summary>Entry that it corrects, or null.</summary>
    public long? Corrects { get; init; }

    /// <summary>Why, or null.</summary>
    public string? Why { get; init; }

    /// <summary>An entry about something.</summary>
    public static BookDraft Of<T>(EntryKind kind, SubjectKind subject, string name, T body, string? why = null) =>
        new() { Kind = kind, Subject = new Subject(subject, name), Body = BookJson.Write(body), Why = why };
}
