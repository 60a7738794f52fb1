using FeltNest.Cost.Offers;

namespace FeltNest.Cost.Sheet;

/// <summary>What a shop knows of its own costs. Whatever is null is not counted, and the sheet says so.</summary>
public sealed record CostInputs
{
    /// <summary>Name of the set of figures, or null where none was given.</summary>
    public string? Name { get; init; }

    /// <summary>The one currency of the sheet.</summary>
    public required string Currency { get; init; }

    /// <summary>Rates of other currencies.</summary>
    public required IReadOnlyList<CurrencyRate> Rates { get; init; }

    /// <summary>What is lost beside the lay.</summary>
    public required FeltLosses Losses { get; init; }

    /// <summary>Price of felt where no offer states one.</summary>
    public FeltPrice? Felt { get; init; }

    /// <summary>Mass per area of the felt bought, g/m2, where no offer states one; null for that of the ball.</summary>
    public double? MassPerAreaGsm { get; init; }

    /// <summary>What a kilogram of waste brings.</summary>
    public decimal? RecoveryPerKg { get; init; }

    /// <summary>Balls made in a year, or null where they are not known.</summary>
    public double? AnnualBalls { get; init; }

    /// <summary>Interest a year, per cent: what money costs that is paid earlier; null where it is not known.</summary>
    public decimal? InterestPercent { get; init; }

    /// <summary>Worth of felt that is left over, per cent of what it cost; null where it is not known, and it then counts as
    /// lost.</summary>
    public decimal? SurplusWorthPercent { get; init; }

    /// <summary>Coating and cement put on bare felt, money for a square metre of felt bought; null where it is not known.</summary>
    public decimal? CoatingPerSquareMetre { get; init; }

    /// <summary>Labour and machine for one strike.</summary>
    public decimal? PerStrike { get; init; }

    /// <summary>The die.</summary>
    public DieCost? Die { get; init; }

    /// <summary>Setting up.</summary>
    public SetUpCost? SetUp { get; init; }

    /// <summary>Wear of the cutting board for one strike.</summary>
    public decimal? BoardPerStrike { get; init; }

    /// <summary>Handling, racking and inspection.</summary>
    public decimal? HandlingPerThousandBalls { get; init; }

    /// <summary>Overhead, per cent of lines 13 to 17.</summary>
    public decimal? OverheadPercent { get; init; }

    /// <summary>Figures that may be off, and how far; the figures themselves are the likely ones.</summary>
    public IReadOnlyList<CostRange> Ranges { get; init; } = [];

    /// <summary>Figures that go together; the others are independent.</summary>
    public IReadOnlyList<CostCorrelation> Correlations { get; init; } = [];

    /// <summary>Years over which savings are counted.</summary>
    public double HorizonYears { get; init; } = 5;

    /// <summary>Money a year to keep one width in stock, whatever is used of it; null where it is not known.</summary>
    public decimal? WidthPerYear { get; init; }

    /// <summary>Dies and layers to be weighed against each other, or null.</summary>
    public GangOptions? Gang { get; init; }

    /// <summary>The die of a lay, its price that of its cavities too where one is stated; null where no die is known. The one place that
    /// prices a die.</summary>
    /// <param name="cavities">Panels of one layer that it cuts in a strike.</param>
    public DieCost? DieOf(double cavities) =>
        Die is null ? null : Die with { Price = Die.Price + ((decimal)cavities * (Gang?.PricePerCavity ?? 0)) };

    /// <summary>Nothing known but the currency.</summary>
    public static CostInputs Bare(string currency) =>
        new() { Currency = currency, Rates = [], Losses = FeltLosses.None };

    /// <summary>Units of the sheet's currency for one unit of another.</summary>
    /// <exception cref="InputException">No rate is stated.</exception>
    public decimal RateOf(string currency) => currency == Currency ? 1 : Rates.FirstOrDefault(r => r.Currency == currency)?.Rate
        ?? throw new InputException(
            null, "currency", $"{currency} cannot be mixed with {Currency}: state its rate under rates in the costs file");
}
