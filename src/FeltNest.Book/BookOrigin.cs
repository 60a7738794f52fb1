namespace FeltNest.Book;

/// <summary>Who writes, when, and from which file.</summary>
internal sealed record BookOrigin
{
    /// <summary>Who.</summary>
    public required string By { get; init; }

    /// <summary>When, as 2026-03-02T06:30:00.</summary>
    public required string At { get; init; }

    /// <summary>Name of the file, or null.</summary>
    public string? Source { get; init; }

    /// <summary>SHA-256 of the file, or null.</summary>
    public string? Hash { get; init; }
}
