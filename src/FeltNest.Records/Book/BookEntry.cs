namespace FeltNest.Book;

/// <summary>One entry of the book. It is never changed and never taken out.</summary>
internal sealed record BookEntry
{
    /// <summary>Number, from 1 on without a gap.</summary>
    public required long Number { get; init; }

    /// <summary>Number of the first entry that was written with it: they came in together and are taken back together.</summary>
    public required long Act { get; init; }

    /// <summary>What it tells.</summary>
    public required EntryKind Kind { get; init; }

    /// <summary>What it is about.</summary>
    public required Subject Subject { get; init; }

    /// <summary>When, as 2026-03-02T06:30:00 by the clock on the wall.</summary>
    public required string At { get; init; }

    /// <summary>Who.</summary>
    public required string By { get; init; }

    /// <summary>File it came from, or null.</summary>
    public string? Source { get; init; }

    /// <summary>SHA-256 of that file, or null.</summary>
    public string? Hash { get; init; }

    /// <summary>What there is to tell, as JSON.</summary>
    public required string Body { get; init; }

    /// <summary>Number of the entry that it corrects, or of the act that it takes back; null for neither.</summary>
    public long? Corrects { get; init; }

    /// <summary>Why, where it corrects, takes back, closes or throws away.</summary>
    public string? Why { get; init; }

    /// <summary>True for a correction of an entry.</summary>
    public bool IsCorrection => Corrects is not null && Kind != EntryKind.Undone;
}
