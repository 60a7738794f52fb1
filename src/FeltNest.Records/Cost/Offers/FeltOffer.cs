namespace FeltNest.Cost.Offers;

/// <summary>Felt somebody offers.</summary>
public sealed record FeltOffer
{
    /// <summary>Name of the offer, once in a list.</summary>
    public required string Name { get; init; }

    /// <summary>What felt it is.</summary>
    public required string Felt { get; init; }

    /// <summary>Nominal width of the roll, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Length of a roll, m.</summary>
    public required double LengthM { get; init; }

    /// <summary>Price.</summary>
    public required FeltPrice Price { get; init; }

    /// <summary>Width the seller guarantees, mm, or null for the nominal one.</summary>
    public required double? LeastWidthMm { get; init; }

    /// <summary>Edge trim each side, mm, or null for the shop's usual one.</summary>
    public required double? EdgeMm { get; init; }

    /// <summary>Mass per area, g/m2, or null for the ball's felt.</summary>
    public required double? MassPerAreaGsm { get; init; }

    /// <summary>Whether mass and kilograms are of bare or of coated felt, or null where the offer does not say.</summary>
    public required string? MassBasis { get; init; }

    /// <summary>Panels lost to faults, per cent, or null for the shop's usual share.</summary>
    public required double? FaultPercent { get; init; }

    /// <summary>Least length that is sold, m, or null.</summary>
    public required double? MinimumM { get; init; }

    /// <summary>Width that is invoiced, mm, or null for the nominal one.</summary>
    public double? InvoicedWidthMm { get; init; }

    /// <summary>Prices from lengths of an order on, least length first; before the first the price itself holds.</summary>
    public IReadOnlyList<PriceTier> Tiers { get; init; } = [];

    /// <summary>Freight of one roll, in the currency of the price.</summary>
    public decimal FreightPerRoll { get; init; }

    /// <summary>Duty, per cent of felt and freight together.</summary>
    public decimal DutyPercent { get; init; }

    /// <summary>Days after delivery until it is paid.</summary>
    public int CreditDays { get; init; }

    /// <summary>Days from the first day of cutting until its rolls are there.</summary>
    public int DeliveryDays { get; init; }

    /// <summary>Shade lot, or null.</summary>
    public required string? Lot { get; init; }

    /// <summary>Least and greatest price thought possible, in the unit and currency of the price, or null.</summary>
    public (decimal Low, decimal High)? PriceRange { get; init; }

    /// <summary>How likely the prices between are.</summary>
    public SpreadShape PriceShape { get; init; }

    /// <summary>The width to plan on: what is guaranteed.</summary>
    public double PlannedWidthMm => LeastWidthMm ?? WidthMm;
}
