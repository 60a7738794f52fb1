namespace FeltNest.Cost.Offers;

/// <summary>On what terms felt is bought: all that a seller asks beside the price.</summary>
public sealed record FeltTerms
{
    // An order that misses the next roll by this share of a roll, rounding alone, needs none.
    private const double Slack = 1e-9;

    /// <summary>Price, where no tier goes before it.</summary>
    public required FeltPrice Price { get; init; }

    /// <summary>Prices from lengths of an order on, least length first.</summary>
    public IReadOnlyList<PriceTier> Tiers { get; init; } = [];

    /// <summary>Width that is invoiced, mm, or null for the width that is cut.</summary>
    public double? InvoicedWidthMm { get; init; }

    /// <summary>Length of a roll, m, or null where it is not known.</summary>
    public double? RollLengthM { get; init; }

    /// <summary>Least length sold, m, or null.</summary>
    public double? MinimumM { get; init; }

    /// <summary>Freight of one roll, in the currency of the price.</summary>
    public decimal FreightPerRoll { get; init; }

    /// <summary>Duty, per cent of felt and freight together.</summary>
    public decimal DutyPercent { get; init; }

    /// <summary>Days after which it is paid.</summary>
    public int CreditDays { get; init; }

    /// <summary>True for bare felt, which is still to be coated; false for coated felt; null where it is not said.</summary>
    public bool? IsBare { get; init; }

    /// <summary>A price and nothing beside it.</summary>
    public static FeltTerms Of(FeltPrice price) => new() { Price = price };

    /// <summary>The terms of an offer.</summary>
    public static FeltTerms Of(FeltOffer offer) => new()
    {
        Price = offer.Price,
        Tiers = offer.Tiers,
        InvoicedWidthMm = offer.InvoicedWidthMm ?? offer.WidthMm,
        RollLengthM = offer.LengthM,
        MinimumM = offer.MinimumM,
        FreightPerRoll = offer.FreightPerRoll,
        DutyPercent = offer.DutyPercent,
        CreditDays = offer.CreditDays,
        IsBare = offer.MassBasis is { } basis ? basis == "bare" : null,
    };

    /// <summary>The price where so much is bought, m.</summary>
    public FeltPrice PriceAt(double metres) =>
        Tiers.LastOrDefault(tier => metres >= tier.FromM - Slack) is { } tier ? Price with { Amount = tier.Amount } : Price;

    /// <summary>What is bought where so much is needed, m: whole rolls, and no less than the least length sold.</summary>
    public double BoughtM(double neededM)
    {
        double asked = Math.Max(neededM, MinimumM ?? 0);
        return RollLengthM is { } roll ? roll * Math.Ceiling((asked / roll) - Slack) : asked;
    }
}
