using FeltNest.Book;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Book;

/// <summary>What happens to a die beside tickets.</summary>
internal static class DieEntries
{
    /// <summary>A die that was to be made is there.</summary>
    /// <exception cref="InputException">No such die, or one that is there already.</exception>
    public static BookSaid Ready(BookDesk desk, string name, int? strikes) => desk.Write(book =>
    {
        DieState die = BookDesk.Known<DieState>(book, SubjectKind.Die, name);
        if (die.Die.MakePrice is null)
        {
            throw new InputException($"die '{name}' is there already: it is no die to be made");
        }

        StrikesBody body = new() { Strikes = strikes ?? die.Die.LifeStrikes };
        book.Add(BookDraft.Of(EntryKind.DieReady, SubjectKind.Die, name, body));
        return BookSaid.Of(Invariant($"die {name} is there, with {body.Strikes} strikes"));
    });

    /// <summary>A die was put on a press.</summary>
    /// <exception cref="InputException">No such die.</exception>
    public static BookSaid Mounted(BookDesk desk, string name, string press) => desk.Write(book =>
    {
        BookDesk.Known<DieState>(book, SubjectKind.Die, name);
        book.Add(BookDraft.Of(EntryKind.DieMounted, SubjectKind.Die, name, new MountedBody { Press = press }));
        return BookSaid.Of($"die {name} stands on press {press}");
    });

    /// <summary>A die was struck without a ticket: a trial, a first article.</summary>
    /// <exception cref="InputException">No such die.</exception>
    public static BookSaid Struck(BookDesk desk, string name, int strikes, string? why) => desk.Write(book =>
    {
        DieState die = BookDesk.Known<DieState>(book, SubjectKind.Die, name);
        book.Add(BookDraft.Of(EntryKind.DieStruck, SubjectKind.Die, name, new StrikesBody { Strikes = strikes }, why));
        return BookSaid.Of(Invariant($"die {name} struck {strikes} times: {die.Left - strikes} strikes left"));
    });

    /// <summary>A die got new rules.</summary>
    /// <exception cref="InputException">No such die, or nobody said how many strikes new rules last.</exception>
    public static BookSaid Ruled(BookDesk desk, string name, int? strikes, string? why) => desk.Write(book =>
    {
        DieState die = BookDesk.Known<DieState>(book, SubjectKind.Die, name);
        int life = strikes ?? die.Die.LifeStrikes;
        if (life < 1)
        {
            throw new InputException($"die '{name}' has no life of a new rule in the book: say how many strikes it has now");
        }

        book.Add(BookDraft.Of(EntryKind.DieRuledAgain, SubjectKind.Die, name, new StrikesBody { Strikes = life, WasLeft = die.Left }, why));
        return BookSaid.Of(Invariant($"die {name} ruled again: {life} strikes left (the rules before had {die.Left})"));
    });
}
