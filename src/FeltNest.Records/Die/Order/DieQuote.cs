namespace FeltNest.Die.Order;

/// <summary>A maker's answer to a request for a quote.</summary>
internal sealed record DieQuote
{
    /// <summary>Name of the die.</summary>
    public required string Die { get; init; }

    /// <summary>Its revision, or null where the answer does not say it.</summary>
    public required string? Revision { get; init; }

    /// <summary>Hash of the die's file in hexadecimal, or null where the answer does not say it.</summary>
    public required string? DieSha256 { get; init; }

    /// <summary>What the die costs, and how long it lasts.</summary>
    public required DieWear Wear { get; init; }

    /// <summary>Days to delivery, or null.</summary>
    public required int? DeliveryDays { get; init; }
}
