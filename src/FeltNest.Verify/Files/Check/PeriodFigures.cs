namespace FeltNest.Files.Check;

/// <summary>Tickets of a period against standard: the parts of each ticket add to its difference, tickets and groups to the
/// whole.</summary>
internal static class PeriodFigures
{
    private static readonly string[] Sums =
        ["balls", "standardSquareMetres", "actualSquareMetres", "standardCost", "actualCost"];

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        IReadOnlyList<StatedFields> tickets = top.Items("tickets");
        foreach (StatedFields ticket in tickets)
        {
            Parts(ticket);
        }

        StatedFields whole = top.Needed("whole");
        IReadOnlyList<StatedFields> groups = top.Items("groups");
        whole.Same("tickets", tickets.Count, 0);
        whole.Same("tickets", groups.Sum(g => g.Number("tickets")), 0);
        foreach (string field in Sums)
        {
            double sum = tickets.Sum(t => t.Number(field));
            whole.Same(field, sum, Shares.Room(sum));
            whole.Same(field, groups.Sum(g => g.Number(field)), Shares.Room(sum));
        }

        foreach (StatedFields group in groups.Prepend(whole))
        {
            Parts(group);
            double from = group.Number("standardSquareMetres");
            group.Same("morePercent", 100 * (group.Number("actualSquareMetres") - from) / from, Shares.Room(100));
        }

        Causes(whole, tickets);
        Standards(top);
        ChartFigures.Check(top.Items("charts"));
    }

    private static void Parts(StatedFields of)
    {
        IReadOnlyList<StatedFields> parts = of.Items("parts");
        double from = of.Number("standardSquareMetres");
        double more = of.Number("actualSquareMetres") - from;
        double sum = parts.Sum(p => p.Number("squareMetres"));
        of.Keep(
            Math.Abs(sum - more) <= Shares.Room(from), "parts",
            FormattableString.Invariant($"add to {sum:0.######} m2, not to the difference of {more:0.######}"));
        double cost = of.Number("standardCost");
        double paid = of.Number("actualCost") - cost;
        double money = parts.Sum(p => p.Number("money"));
        of.Keep(
            Math.Abs(money - paid) <= Shares.Room(cost), "parts",
            FormattableString.Invariant($"cost {money:0.######}, not the difference of {paid:0.######}"));
    }

    // The whole's part of a cause is the sum of the tickets'.
    private static void Causes(StatedFields whole, IReadOnlyList<StatedFields> tickets)
    {
        IReadOnlyList<StatedFields> parts = whole.Items("parts");
        IReadOnlyList<StatedFields>[] own = [.. tickets.Select(t => t.Items("parts"))];
        for (int i = 0; i < parts.Count; i++)
        {
            string? cause = parts[i].Text("cause");
            double room = Shares.Room(whole.Number("standardSquareMetres"));
            parts[i].Same("squareMetres", own.Sum(o => o.Where(p => p.Text("cause") == cause).Sum(p => p.Number("squareMetres"))), room);
        }
    }

    private static void Standards(StatedFields top)
    {
        foreach (StatedFields standard in top.Items("standards"))
        {
            double sum = standard.Items("causes").Sum(c => c.Number("squareMetres"));
            standard.Same("squareMetres", sum, Shares.Room(sum));
        }
    }
}
