namespace FeltNest.Book;

/// <summary>What is known of a roll.</summary>
internal static class RollFold
{
    /// <summary>After one more entry.</summary>
    public static RollState? After(RollState? roll, string name, BookEntry entry)
    {
        if (entry.Kind == EntryKind.RollReceived)
        {
            RollBody body = BookJson.Read<RollBody>(entry.Body);
            return new RollState { Roll = body, ReceivedM = body.LengthM, LeftM = body.LengthM };
        }

        return (roll, entry.Kind) switch
        {
            (null, _) => null,
            ({ } known, EntryKind.RollMeasured) => Measured(known, BookJson.Read<MeasuredBody>(entry.Body)),
            ({ } known, EntryKind.RollPutBack) => Available(Measured(known, BookJson.Read<MeasuredBody>(entry.Body))),
            ({ } known, EntryKind.RollScrapped) => Taken(known, 0, BookJson.Read<ScrappedBody>(entry.Body).LengthM),
            ({ } known, EntryKind.RollCut) when entry.Subject.Name == name => Cut(known, BookJson.Read<CutBody>(entry.Body)),
            ({ } known, EntryKind.TicketFilledIn) => Filled(known, name, BookJson.Read<FillBody>(entry.Body)),
            _ => roll,
        };
    }

    private static RollState Measured(RollState roll, MeasuredBody body) => roll with
    {
        ReceivedM = roll.ReceivedM + body.FoundM,
        LeftM = roll.LeftM + body.FoundM,
        Roll = roll.Roll with
        {
            WidthMm = body.WidthMm ?? roll.Roll.WidthMm,
            MeasuredFile = body.MeasuredFile ?? roll.Roll.MeasuredFile,
        },
    };

    private static RollState Available(RollState roll) => roll with { Roll = roll.Roll with { Available = true } };

    private static RollState Cut(RollState roll, CutBody body) =>
        Taken(roll, body.LengthM, 0) with { Strikes = roll.Strikes + (body.Strikes ?? 0) };

    private static RollState Filled(RollState roll, string name, FillBody body) => body.Roll != name
        ? roll
        : Taken(roll, body.CutM, body.LeadM) with { Strikes = roll.Strikes + (body.Strikes ?? 0) };

    private static RollState Taken(RollState roll, decimal cut, decimal scrapped) => roll with
    {
        CutM = roll.CutM + cut,
        ScrappedM = roll.ScrappedM + scrapped,
        LeftM = roll.LeftM - cut - scrapped,
    };
}
