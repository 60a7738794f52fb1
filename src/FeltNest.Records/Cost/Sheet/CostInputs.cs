using FeltNest.Cost.Offers;

namespace FeltNest.Cost.Sheet;

/// <summary>What a shop knows of its own costs. Whatever is null is not counted, and the sheet says so.</summary>
/// <param name="Name">Name of the set of figures, or null where none was given.</param>
/// <param name="Currency">The one currency of the sheet.</param>
/// <param name="Rates">Rates of other currencies.</param>
/// <param name="Losses">What is lost beside the lay.</param>
/// <param name="Felt">Price of felt where no offer states one.</param>
/// <param name="MassPerAreaGsm">Mass per area of the felt bought, g/m2, where no offer states one; null for that of the ball.</param>
/// <param name="RecoveryPerKg">What a kilogram of waste brings.</param>
/// <param name="PerStrike">Labour and machine for one strike.</param>
/// <param name="Die">The die.</param>
/// <param name="SetUp">Setting up.</param>
/// <param name="BoardPerStrike">Wear of the cutting board for one strike.</param>
/// <param name="HandlingPerThousandBalls">Handling, racking and inspection.</param>
/// <param name="OverheadPercent">Overhead, per cent of lines 13 to 17.</param>
public sealed record CostInputs(
    string? Name, string Currency, IReadOnlyList<CurrencyRate> Rates, FeltLosses Losses, FeltPrice? Felt, double? MassPerAreaGsm,
    decimal? RecoveryPerKg, decimal? PerStrike, DieCost? Die, SetUpCost? SetUp,
    decimal? BoardPerStrike, decimal? HandlingPerThousandBalls, decimal? OverheadPercent)
{
    /// <summary>Figures that may be off, and how far; the figures themselves are the likely ones.</summary>
    public IReadOnlyList<CostRange> Ranges { get; init; } = [];

    /// <summary>Dies and layers to be weighed against each other, or null.</summary>
    public GangOptions? Gang { get; init; }

    /// <summary>The die of a lay, its price that of its cavities too where one is stated; null where no die is known. The one place that
    /// prices a die.</summary>
    /// <param name="cavities">Panels of one layer that it cuts in a strike.</param>
    public DieCost? DieOf(double cavities) =>
        Die is null ? null : Die with { Price = Die.Price + ((decimal)cavities * (Gang?.PricePerCavity ?? 0)) };

    /// <summary>Nothing known but the currency.</summary>
    public static CostInputs Bare(string currency) =>
        new(null, currency, [], FeltLosses.None, null, null, null, null, null, null, null, null, null);

    /// <summary>Units of the sheet's currency for one unit of another.</summary>
    /// <exception cref="InputException">No rate is stated.</exception>
    public decimal RateOf(string currency) => currency == Currency ? 1 : Rates.FirstOrDefault(r => r.Currency == currency)?.Rate
        ?? throw new InputException(
            null, "currency", $"{currency} cannot be mixed with {Currency}: state its rate under rates in the costs file");
}
