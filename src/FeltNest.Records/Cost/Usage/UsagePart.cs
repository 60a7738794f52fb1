namespace FeltNest.Cost.Usage;

/// <summary>One part of the difference from standard; above 0 is more than standard.</summary>
internal sealed record UsagePart
{
    /// <summary>Why.</summary>
    public required UsageCause Cause { get; init; }

    /// <summary>Felt, in the unit of the account; 0 for the price.</summary>
    public required double Quantity { get; init; }

    /// <summary>The same, per cent of the standard quantity.</summary>
    public required double Percent { get; init; }

    /// <summary>The same at the standard price; for the price the difference it makes on the felt really used. Null where no standard
    /// price is known.</summary>
    public required decimal? Money { get; init; }

    /// <summary>Share that is lost by standard, %: of the metres, of the panels cut, or of what the part before leaves; null where the
    /// cause has none.</summary>
    public required double? Standard { get; init; }

    /// <summary>Share really lost, %; null where the cause has none.</summary>
    public required double? Actual { get; init; }
}
