using FeltNest.Cost.Offers;
using FeltNest.Yield;

namespace FeltNest.Cost.Sheet;

/// <summary>What the felt of a thousand good balls costs when it lies in the cutting room, ready to be cut.</summary>
/// <remarks>Invoiced quantity at the price of its tier; freight by the roll; duty on felt and freight together (the value with freight, as
/// duty is commonly reckoned; common practice, no source); interest saved by paying later, simple interest over 365 days; felt bought
/// beyond need, less its worth; coating of bare felt.</remarks>
internal sealed class LandedFelt
{
    private const decimal DaysOfYear = 365;

    private readonly decimal felt;
    private readonly decimal freight;
    private readonly decimal duty;
    private readonly decimal? credit;
    private readonly decimal? surplus;
    private readonly decimal? coating;

    /// <summary>Works it out.</summary>
    /// <exception cref="InputException">A currency without a rate, or a price by the kilogram while the mass is not known.</exception>
    public LandedFelt(FeltAccount account, FeltTerms terms, CostInputs costs, double? thousandBalls)
    {
        FeltUsage gross = account.PerThousandBalls;
        if (thousandBalls is { } thousands)
        {
            double needed = thousands * gross.Metres;
            double bought = terms.BoughtM(needed);
            Purchase = new FeltBought
            {
                ThousandBalls = thousands,
                NeededM = needed,
                BoughtM = bought,
                Rolls = bought / terms.RollLengthM,
            };
        }

        Price = Purchase is null ? terms.Price : terms.PriceAt(Purchase.BoughtM);
        decimal rate = costs.RateOf(Price.Currency);
        Quantity = FeltPrice.QuantityOf(Price.Unit, Invoiced(gross, terms.InvoicedWidthMm));
        felt = (decimal)Quantity * Price.Amount * rate;
        freight = terms.FreightPerRoll == 0 ? 0 : terms.FreightPerRoll * rate * (decimal)(gross.Metres / terms.RollLengthM!.Value);
        duty = (felt + freight) * terms.DutyPercent / 100;
        decimal years = terms.CreditDays / DaysOfYear;
        credit = terms.CreditDays == 0 ? 0 : -felt * costs.InterestPercent * years / 100;
        decimal lost = Purchase is null
            ? 0
            : (decimal)(Purchase.SurplusM / Purchase.NeededM) * (1 - ((costs.SurplusWorthPercent ?? 0) / 100));
        surplus = Purchase is null ? null : lost * (felt + freight + duty + (credit ?? 0));
        coating = terms.IsBare == true ? costs.CoatingPerSquareMetre * (decimal)gross.SquareMetres : NoCoating(terms);
        PerPrice = (decimal)Quantity * rate * (1 + lost)
            * (1 + (terms.DutyPercent / 100) - ((costs.InterestPercent ?? 0) * years / 100));
    }

    /// <summary>The price that counts.</summary>
    public FeltPrice Price { get; }

    /// <summary>Quantity invoiced, in the unit of the price.</summary>
    public double Quantity { get; }

    /// <summary>What is bought, or null.</summary>
    public FeltBought? Purchase { get; }

    /// <summary>Growth of the whole where the price of a unit grows by one.</summary>
    public decimal PerPrice { get; }

    /// <summary>All of it.</summary>
    public decimal Total => felt + freight + duty + (credit ?? 0) + (surplus ?? 0) + (coating ?? 0);

    /// <summary>Lines 20 to 25 of the cost sheet.</summary>
    public IEnumerable<CostLine> Lines =>
    [
        new(20, "felt at its price", Quantity, PriceUnits.WordOf(Price.Unit), felt),
        new(21, "freight", null, string.Empty, freight),
        new(22, "duty", null, string.Empty, duty),
        new(23, "less interest of days of credit", null, string.Empty, credit),
        new(24, "beyond need, less its worth", null, string.Empty, surplus),
        new(25, "coating and cement", null, string.Empty, coating),
    ];

    // Coated felt needs none; of felt that is neither called bare nor coated nothing is known.
    private static decimal? NoCoating(FeltTerms terms) => terms.IsBare == false ? 0 : null;

    private static FeltUsage Invoiced(FeltUsage gross, double? widthMm)
    {
        if (widthMm is not { } width)
        {
            return gross;
        }

        double squareMetres = gross.Metres * width / 1000;
        return gross with { SquareMetres = squareMetres, Kilograms = gross.Kilograms * squareMetres / gross.SquareMetres };
    }
}
