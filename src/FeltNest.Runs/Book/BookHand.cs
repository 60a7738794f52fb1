using FeltNest.Book;

namespace FeltNest.Runs.Book;

/// <summary>Who writes in the book, and when.</summary>
internal sealed record BookHand
{
    /// <summary>Who.</summary>
    public required string By { get; init; }

    /// <summary>When, by the clock on the wall.</summary>
    public required string At { get; init; }

    /// <summary>Where what is written by hand comes from.</summary>
    public BookOrigin Origin => new() { By = By, At = At };

    /// <summary>Where what a file tells comes from.</summary>
    public BookOrigin OriginOf(string file, string hash) => new() { By = By, At = At, Source = Path.GetFileName(file), Hash = hash };
}
