using System.CommandLine;
using FeltNest.Book;
using FeltNest.Runs.Book;

namespace FeltNest.Cli.Options;

/// <summary>Options by which a command finds the book, and says whose hand writes in it.</summary>
internal sealed class DeskOptions
{
    /// <summary>The book.</summary>
    public Option<string> Book { get; } = new("--book")
    {
        Description = "The cutting room's book: a file, or Host=...;Database=...;Username=... of a PostgreSQL database.",
        HelpName = "BOOK",
        Required = true,
    };

    /// <summary>Who writes.</summary>
    public Option<string?> By { get; } = new("--by") { Description = "Whose hand writes (default: the login name).", HelpName = "name" };

    /// <summary>When.</summary>
    public Option<string?> At { get; } = new("--at")
    {
        Description = "When, as 2026-03-02 or 2026-03-02T06:30 (default: now).",
        HelpName = "moment",
        CustomParser = result =>
        {
            string? at = DeskClock.Read(result.Tokens[0].Value);
            if (at is null)
            {
                result.AddError($"--at: '{result.Tokens[0].Value}' is not allowed: a moment as 2026-03-02T06:30");
            }

            return at;
        },
    };

    /// <summary>Whose hand writes, and when.</summary>
    public BookHand HandOf(ParseResult parse) => new()
    {
        By = parse.GetValue(By) ?? DeskClock.Login(),
        At = parse.GetValue(At) ?? DeskClock.Now(),
    };

    /// <summary>Opens the book that is asked for.</summary>
    /// <exception cref="InputException">It cannot be opened.</exception>
    public BookDesk Desk(ParseResult parse, Terminal terminal) => new(Books.Open(parse.GetValue(Book)!, terminal.Say), HandOf(parse));
}
