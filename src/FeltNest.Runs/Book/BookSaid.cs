namespace FeltNest.Runs.Book;

/// <summary>What is said after something was written in the book.</summary>
/// <param name="Line">What was written.</param>
/// <param name="Notes">What has to be looked at besides.</param>
internal sealed record BookSaid(string Line, IReadOnlyList<string> Notes)
{
    /// <summary>Words without notes.</summary>
    public static BookSaid Of(string line) => new(line, []);
}
