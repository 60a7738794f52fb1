using FeltNest.Cost.Charts;
using FeltNest.Cost.Tickets;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What the tickets of a period print.</summary>
internal static class PeriodReport
{
    // Most groups on the terminal: the files hold all.
    private const int MostGroups = 20;

    // Limits from the values' own spread are settled from about so many on (NIST/SEMATECH e-Handbook, 6.3.2: at least 20).
    private const int FewTickets = 20;

    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(PeriodUsage usage)
    {
        TextTable table = new();
        TicketGroup whole = usage.Whole;
        table.Heading(Title(usage))
            .Line(
                "above standard", Invariant($"{whole.MorePercent:+0.00;-0.00;0.00} %"),
                Invariant($"{whole.ActualM2 - whole.StandardM2:+0.00;-0.00;0.00} m2; below 0 is less than standard"))
            .Line("good balls", (double)whole.Balls, "0", string.Empty, Invariant($"from {whole.Tickets.Count} tickets"))
            .Line(
                "cost of the felt", Invariant($"{whole.ActualMoney:0.00} {usage.Currency}"),
                Invariant($"standard {whole.StandardMoney:0.00}, difference {whole.ActualMoney - whole.StandardMoney:+0.00;-0.00;0.00}"));
        Causes(table, usage);
        if (usage.By != TicketGrouping.Cause)
        {
            Groups(table, usage);
        }

        foreach (string line in Verdicts(usage))
        {
            table.Note(line);
        }

        return table.ToString();
    }

    /// <summary>The title of the period.</summary>
    public static string Title(PeriodUsage usage) =>
        $"Felt against standard: {usage.Book}, {usage.Since}{(usage.Until is null ? " on" : $" to {usage.Until}")}";

    /// <summary>What each chart says, one line each.</summary>
    public static IEnumerable<string> Verdicts(PeriodUsage usage)
    {
        foreach (ControlChart chart in usage.Charts)
        {
            string[] causes = [.. chart.Points.Where(p => p.IsCause).Select(p => p.Name)];
            string said = causes.Length == 0 ? "all points are noise" : $"a cause on {string.Join(", ", causes.Take(8))}";
            string widened = chart.IsWidened ? Invariant($", limits widened by sigma z = {chart.SigmaZ:0.00}") : string.Empty;
            yield return Invariant(
                $"{chart.Name}: {said} ({chart.Points.Count} points; noise alone signals {chart.ExpectedByNoise:0.00} times{widened}).");
            if (chart.Change is { } change)
            {
                yield return Invariant(
                    $"A lasting change of {change.Percent:0.#} % is {change.Sigmas:0.0} standard deviations of one ticket: ")
                    + Invariant($"seen within {change.Tickets:0.0} tickets on average. Counting alone spreads a ticket by ")
                    + Invariant($"{change.CountingPercent:0.00} %.")
                    + (chart.Points.Count < FewTickets ? " So few tickets settle no limits yet: they move with each one." : string.Empty);
            }
        }
    }

    /// <summary>Notes on what the split rests on, one line each.</summary>
    public static IEnumerable<string> Notes(PeriodUsage usage)
    {
        string[] blank = [.. usage.Whole.Tickets.SelectMany(t => t.NotCounted).GroupBy(name => name)
            .Select(g => Invariant($"{g.Key} ({g.Count()} of {usage.Whole.Tickets.Count})"))];
        if (blank.Length > 0)
        {
            yield return $"not counted, so taken at the standard: {string.Join(", ", blank)}; what they really did stands under "
                + $"'{CauseWords.Of(TicketCause.Rest)}'";
        }

        int printed = usage.Whole.Tickets.Count(t => t.StandardVersion == 0);
        if (printed > 0)
        {
            yield return Invariant($"{printed} of {usage.Whole.Tickets.Count} tickets have no standard of their day in the book: they ")
                + "are held against the figures they were printed with";
        }

        if (usage.LeftOut.Count > 0)
        {
            yield return $"left out, as they tell neither strikes nor felt or gave no ball: tickets {string.Join(", ", usage.LeftOut)}";
        }
    }

    private static void Causes(TextTable table, PeriodUsage usage)
    {
        table.Heading("Where the difference comes from (the parts of each ticket add up)")
            .Row(Invariant($"{string.Empty,-28}{"m2",10}{"%",9}{usage.Currency,12}"));
        foreach (TicketPart part in usage.Whole.Parts)
        {
            Row(table, CauseWords.Of(part.Cause), part.M2, part.Money);
        }

        Row(
            table, "whole", usage.Whole.ActualM2 - usage.Whole.StandardM2, usage.Whole.ActualMoney - usage.Whole.StandardMoney);
        foreach ((string reason, decimal felt) in usage.Whole.Reasons)
        {
            table.Row(Invariant($"  rejected, {reason,-18}{felt,8:0.00} m2 in all"));
        }

        void Row(TextTable to, string name, decimal felt, decimal money) => to.Row(Invariant(
            $"{name,-28}{felt,10:+0.00;-0.00;0.00}{100 * felt / usage.Whole.StandardM2,9:+0.00;-0.00;0.00}{money,12:+0.00;-0.00;0.00}"));
    }

    private static void Groups(TextTable table, PeriodUsage usage)
    {
        table.Heading($"By {EnumWord.Of(usage.By)}").Row("                     tickets     balls   above %  greatest cause");
        foreach (TicketGroup group in usage.Groups.Take(MostGroups))
        {
            TicketPart most = group.Parts.Where(p => p.Cause != TicketCause.Price).MaxBy(p => Math.Abs(p.M2))!;
            table.Row(Invariant(
                $"{Short(group.Name),-20}{group.Tickets.Count,8}{group.Balls,10:0}{group.MorePercent,10:+0.00;-0.00;0.00}  ")
                + Invariant($"{CauseWords.Of(most.Cause)} ({100 * most.M2 / group.StandardM2:+0.00;-0.00;0.00} %)"));
        }

        if (usage.Groups.Count > MostGroups)
        {
            table.Note(Invariant($"... and {usage.Groups.Count - MostGroups} more: all are in usage.json."));
        }
    }

    private static string Short(string name) => name.Length <= 19 ? name : name[..16] + "...";
}
