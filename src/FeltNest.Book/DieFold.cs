namespace FeltNest.Book;

/// <summary>What is known of a die.</summary>
internal static class DieFold
{
    /// <summary>After one more entry.</summary>
    public static DieState? After(DieState? die, string name, BookEntry entry)
    {
        if (entry.Kind == EntryKind.DieMade)
        {
            DieBody body = BookJson.Read<DieBody>(entry.Body);
            return new DieState { Die = body, Given = body.StrikesLeft, Left = body.StrikesLeft };
        }

        return (die, entry.Kind) switch
        {
            (null, _) => null,
            ({ } known, EntryKind.DieReady) => Ready(known, BookJson.Read<StrikesBody>(entry.Body).Strikes),
            ({ } known, EntryKind.DieMounted) => Mounted(known, BookJson.Read<MountedBody>(entry.Body).Press, entry),
            ({ } known, EntryKind.DieStruck) => Struck(known, BookJson.Read<StrikesBody>(entry.Body).Strikes),
            ({ } known, EntryKind.DieRuledAgain) => Ruled(known, BookJson.Read<StrikesBody>(entry.Body)),
            ({ } known, EntryKind.RollCut) => Cut(known, name, BookJson.Read<CutBody>(entry.Body)),
            ({ } known, EntryKind.TicketFilledIn) => Filled(known, name, entry),
            _ => die,
        };
    }

    private static DieState Ready(DieState die, int strikes) => die with
    {
        Given = die.Given + strikes,
        Left = die.Left + strikes,
        Die = die.Die with { MakePrice = null, MakeDays = 0 },
    };

    private static DieState Mounted(DieState die, string press, BookEntry entry) => die with { Press = press, MountedBy = entry.Number };

    private static DieState Struck(DieState die, int strikes) => die with { Struck = die.Struck + strikes, Left = die.Left - strikes };

    private static DieState Ruled(DieState die, StrikesBody body) => die with
    {
        Given = die.Given + body.Strikes,
        GivenUp = die.GivenUp + (body.WasLeft ?? 0),
        Left = die.Left + body.Strikes - (body.WasLeft ?? 0),
        Die = die.Die with { ReRules = Math.Max(0, die.Die.ReRules - 1) },
    };

    private static DieState Cut(DieState die, string name, CutBody body) => body.Die == name ? Struck(die, body.Strikes ?? 0) : die;

    private static DieState Filled(DieState die, string name, BookEntry entry)
    {
        FillBody body = BookJson.Read<FillBody>(entry.Body);
        return body.Die == name && body.Strikes is > 0 ? Mounted(Struck(die, body.Strikes.Value), body.Press, entry) : die;
    }
}
