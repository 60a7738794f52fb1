namespace FeltNest.Cost.Tickets;

/// <summary>Tickets that have something in common, added up.</summary>
internal sealed record TicketGroup
{
    /// <summary>What they have in common: a roll, a press, a week.</summary>
    public required string Name { get; init; }

    /// <summary>The tickets.</summary>
    public required IReadOnlyList<TicketSplit> Tickets { get; init; }

    public decimal Balls => Tickets.Sum(t => t.Balls);

    public decimal StandardM2 => Tickets.Sum(t => t.StandardM2);

    public decimal ActualM2 => Tickets.Sum(t => t.ActualM2);

    public decimal StandardMoney => Tickets.Sum(t => t.StandardMoney);

    public decimal ActualMoney => Tickets.Sum(t => t.ActualMoney);

    /// <summary>Felt above standard, %.</summary>
    public double MorePercent => (double)(100 * (ActualM2 - StandardM2) / StandardM2);

    /// <summary>One part a cause: sums of the tickets' parts.</summary>
    public IReadOnlyList<TicketPart> Parts =>
    [
        .. Enum.GetValues<TicketCause>().Select(cause => new TicketPart
        {
            Cause = cause,
            M2 = Tickets.Sum(t => t.Parts[(int)cause].M2),
            Money = Tickets.Sum(t => t.Parts[(int)cause].Money),
        }),
    ];

    /// <summary>Felt of rejects by reason, m2, the greatest first.</summary>
    public IReadOnlyList<KeyValuePair<string, decimal>> Reasons =>
    [
        .. Tickets.SelectMany(t => t.Reasons).GroupBy(r => r.Key, StringComparer.Ordinal)
            .Select(g => KeyValuePair.Create(g.Key, g.Sum(r => r.Value)))
            .OrderByDescending(r => r.Value).ThenBy(r => r.Key, StringComparer.Ordinal),
    ];
}
