using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Report;

/// <summary>What a plan does otherwise than the plan before it, as text.</summary>
internal static class ChangeReport
{
    // Longest list printed; all is in the files.
    private const int MostLines = 24;

    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(IReadOnlyList<PlanChange> changes)
    {
        TextTable table = new();
        table.Heading("Changed against the plan before");
        if (changes.Count == 0)
        {
            return table.Note("Nothing: what is not cut yet stays where and when it was.").ToString();
        }

        foreach (PlanChange change in changes.Take(MostLines))
        {
            string now = change.After.Length == 0 ? "nothing" : change.After;
            table.Note($"{change.Order}, {EnumWord.Of(change.What)}: {change.Before} -> {now} ({change.Reason})");
        }

        return (changes.Count > MostLines ? table.Note($"... and {changes.Count - MostLines} more: all are in orders.json.") : table)
            .ToString();
    }
}
