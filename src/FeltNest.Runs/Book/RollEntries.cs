using FeltNest.Book;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Book;

/// <summary>What happens to a roll beside tickets.</summary>
internal static class RollEntries
{
    // A tape, and felt under pull, differ by less; more is asked about. A share.
    private const decimal Tolerance = 0.1m;

    /// <summary>A roll that was measured, or put back after it was.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="name">The roll.</param>
    /// <param name="asked">What was found.</param>
    /// <exception cref="InputException">No such roll, or figures that look like a slip.</exception>
    public static BookSaid Measured(BookDesk desk, string name, RollMeasure asked) => desk.Write(book =>
    {
        RollState roll = BookDesk.Known<RollState>(book, SubjectKind.Roll, name);
        if (!asked.MeantSo)
        {
            AskAbout(name, roll, asked);
        }

        MeasuredBody body = new()
        {
            WasM = roll.LeftM,
            LeftM = asked.LeftM,
            WidthMm = asked.WidthMm,
            MeasuredFile = asked.MeasuredFile is { } file ? desk.Kept(file) : null,
        };
        EntryKind kind = asked.PutBack ? EntryKind.RollPutBack : EntryKind.RollMeasured;
        book.Add(BookDraft.Of(kind, SubjectKind.Roll, name, body, asked.Why));
        string found = body.FoundM == 0 ? string.Empty : Invariant($", {body.FoundM:+0.###;-0.###} m against the book");
        string what = asked.PutBack ? "back in stock" : "measured";
        return BookSaid.Of(Invariant($"roll {name} {what}: {asked.LeftM ?? roll.LeftM:0.###} m left{found}"));
    });

    /// <summary>Felt thrown away.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="name">The roll.</param>
    /// <param name="lengthM">How much, m; null for all that is left.</param>
    /// <param name="why">Why.</param>
    /// <exception cref="InputException">No such roll, or more than is left of it.</exception>
    public static BookSaid Scrapped(BookDesk desk, string name, decimal? lengthM, string? why) => desk.Write(book =>
    {
        RollState roll = BookDesk.Known<RollState>(book, SubjectKind.Roll, name);
        decimal length = lengthM ?? roll.LeftM;
        book.Add(BookDraft.Of(EntryKind.RollScrapped, SubjectKind.Roll, name, new ScrappedBody { LengthM = length }, why));
        return BookSaid.Of(Invariant($"{length:0.###} m of roll {name} scrapped: {roll.LeftM - length:0.###} m left"));
    });

    /// <summary>Felt cut without a ticket.</summary>
    /// <exception cref="InputException">No such roll, die or order, or more than is left of the roll.</exception>
    public static BookSaid Cut(BookDesk desk, string name, CutBody cut, string? why) => desk.Write(book =>
    {
        RollState roll = BookDesk.Known<RollState>(book, SubjectKind.Roll, name);
        if (cut.Order is { } order)
        {
            BookDesk.Known<OrderState>(book, SubjectKind.Order, order);
        }

        if (cut.Die is { } die)
        {
            BookDesk.Known<DieState>(book, SubjectKind.Die, die);
        }

        book.Add(BookDraft.Of(EntryKind.RollCut, SubjectKind.Roll, name, cut, why));
        return BookSaid.Of(Invariant($"{cut.LengthM:0.###} m cut from roll {name}: {roll.LeftM - cut.LengthM:0.###} m left"));
    });

    private static void AskAbout(string name, RollState roll, RollMeasure asked)
    {
        if (asked.LeftM is { } left && left > (1 + Tolerance) * roll.ReceivedM)
        {
            throw new InputException(AskedFor.Insisted, Invariant(
                $"{left:0.###} m are said to be left of roll {name}, which was received with {roll.ReceivedM:0.###} m: give this where "
                    + $"it is so"));
        }

        if (asked.WidthMm is { } width && Math.Abs(width - roll.Roll.WidthMm) > Tolerance * roll.Roll.WidthMm)
        {
            throw new InputException(AskedFor.Insisted, Invariant(
                $"a width of {width:0.###} mm is said of roll {name}, which is {roll.Roll.WidthMm:0.###} mm wide: give this where it is "
                    + $"so"));
        }
    }
}
