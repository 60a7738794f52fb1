namespace FeltNest.Book;

/// <summary>What is known of a plan.</summary>
internal static class PlanFold
{
    /// <summary>After one more entry.</summary>
    public static PlanState? After(PlanState? plan, BookEntry entry) => (plan, entry.Kind) switch
    {
        (_, EntryKind.PlanMade) => new PlanState { Plan = BookJson.Read<PlanBody>(entry.Body), At = entry.At, By = entry.By },
        ({ } known, EntryKind.PlanTaken) => known with { Taken = true },
        _ => plan,
    };
}
