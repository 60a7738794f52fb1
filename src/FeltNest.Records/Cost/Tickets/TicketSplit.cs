namespace FeltNest.Cost.Tickets;

/// <summary>One ticket against its standard, split on its own roll. Felt is in square metres as paid for.</summary>
internal sealed record TicketSplit
{
    /// <summary>The ticket.</summary>
    public required CutTicket Ticket { get; init; }

    /// <summary>Version of the standard it is held against; 0 for the figures it was printed with.</summary>
    public required int StandardVersion { get; init; }

    /// <summary>Good balls: pairs of good panels, as far as counted.</summary>
    public required decimal Balls { get; init; }

    /// <summary>Panels struck.</summary>
    public required decimal StruckPanels { get; init; }

    /// <summary>Felt that the standard allows for these balls, m2.</summary>
    public required decimal StandardM2 { get; init; }

    /// <summary>Felt paid for, m2.</summary>
    public required decimal ActualM2 { get; init; }

    /// <summary>The standard at its price.</summary>
    public required decimal StandardMoney { get; init; }

    /// <summary>What was paid.</summary>
    public required decimal ActualMoney { get; init; }

    /// <summary>One part a cause, in the order of the causes: they add to the difference to the last digit.</summary>
    public required IReadOnlyList<TicketPart> Parts { get; init; }

    /// <summary>Felt of rejects by reason, m2, the greatest first.</summary>
    public required IReadOnlyList<KeyValuePair<string, decimal>> Reasons { get; init; }

    /// <summary>What stood blank, and is not counted.</summary>
    public required IReadOnlyList<string> NotCounted { get; init; }

    /// <summary>Felt used above standard, m2.</summary>
    public decimal MoreM2 => ActualM2 - StandardM2;

    /// <summary>Money above standard.</summary>
    public decimal MoreMoney => ActualMoney - StandardMoney;
}
