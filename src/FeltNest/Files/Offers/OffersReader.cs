using System.Globalization;
using FeltNest.Cost.Offers;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using static FeltNest.Files.Offers.OffersListing;

namespace FeltNest.Files.Offers;

/// <summary>Reads a list of felt offers (CSV).</summary>
internal static class OffersReader
{
    /// <summary>Most offers of one list.</summary>
    public const int MostOffers = 60;

    // Longest order that a tier can begin at, m.
    private const int MostTierM = 1_000_000;

    /// <summary>The offers of a file in its order.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<FeltOffer> Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The offers of a text in its order.</summary>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<FeltOffer> Read(InputText text)
    {
        HashSet<string> names = [];
        return CsvTable.Read(text, OffersListing.Listing).Each(row =>
        {
            FeltOffer offer = Offer(row);
            if (!names.Add(offer.Name))
            {
                throw row.Fault(Name, $"'{offer.Name}' stands in the list twice: every offer needs a name of its own");
            }

            return names.Count <= MostOffers
                ? offer
                : throw row.TooMany(Name, $"is one offer too many: at most {MostOffers} are compared at once");
        });
    }

    private static FeltOffer Offer(CsvRow row)
    {
        double width = row.Number(WidthMm);
        double? least = row.OptionalNumber(LeastWidthMm);
        if (least > width)
        {
            throw row.Fault(
                LeastWidthMm,
                FormattableString.Invariant($"{least} is above the nominal width of {width} mm: the guaranteed width is the lesser one"));
        }

        FeltPrice price = PriceOf(row);
        return new FeltOffer
        {
            Name = row.Text(Name),
            Felt = row.Text(Felt),
            WidthMm = width,
            LengthM = row.Number(LengthM),
            Price = price,
            LeastWidthMm = least,
            EdgeMm = row.OptionalNumber(EdgeMm),
            MassPerAreaGsm = row.OptionalNumber(MassPerAreaGsm),
            MassBasis = row.OptionalWord(MassBasis),
            FaultPercent = row.OptionalNumber(FaultPercent),
            MinimumM = row.OptionalNumber(MinimumM),
            InvoicedWidthMm = row.OptionalNumber(InvoicedWidthMm),
            Tiers = TiersOf(row),
            FreightPerRoll = row.Has(FreightPerRoll) ? row.Money(FreightPerRoll) : 0,
            DutyPercent = row.Has(DutyPercent) ? row.Money(DutyPercent) : 0,
            CreditDays = row.Whole(CreditDays),
            DeliveryDays = row.Whole(DeliveryDays),
            Lot = row.OptionalText(Lot),
            PriceRange = PriceRange(row, price),
            PriceShape = ShapeOf(row, price),
        };
    }

    private static FeltPrice PriceOf(CsvRow row)
    {
        PriceUnit unit = PriceUnits.Find(row.Word(OffersListing.PriceUnit))!.Value;
        if (unit == Cost.Offers.PriceUnit.Kilogram && !row.Has(MassPerAreaGsm))
        {
            throw row.Fault(
                MassPerAreaGsm,
                "is blank and the price is per kg: give the mass of the felt as it is bought, coated or bare, "
                    + $"{MassPerAreaGsm.RangeWords} {MassPerAreaGsm.UnitWord}");
        }

        return new FeltPrice(row.Money(Price), unit, row.Currency(Currency));
    }

    private static PriceTier[] TiersOf(CsvRow row)
    {
        List<PriceTier> tiers = [];
        foreach (string word in (row.OptionalText(Tiers) ?? string.Empty).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string[] parts = word.Split(':');
            if (parts.Length != 2
                || !double.TryParse(parts[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double from)
                || !decimal.TryParse(parts[1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal amount)
                || from <= (tiers.Count > 0 ? tiers[^1].FromM : 0)
                || amount < (decimal)Price.Range.Low || amount > (decimal)Price.Range.High || from > MostTierM)
            {
                throw row.Fault(
                    Tiers,
                    $"'{OneLine.Of(word)}' is not allowed: metres:price with a point, metres rising, up to {MostTierM} m, such as "
                        + "1000:17.90 3000:17.40");
            }

            tiers.Add(new PriceTier(from, amount));
        }

        return tiers.Count > 0 && (row.Has(PriceLow) || row.Has(PriceHigh))
            ? throw row.Fault(Tiers, "cannot stand beside priceLow and priceHigh: a range of prices is that of one price")
            : Kept(tiers);
    }

    private static SpreadShape ShapeOf(CsvRow row, FeltPrice price)
    {
        SpreadShape shape = EnumWord.Find<SpreadShape>(row.Word(PriceShape))!.Value;
        return shape == SpreadShape.Normal && PriceRange(row, price) is { } range
            && Math.Abs(range.Low + range.High - (2 * price.Amount)) > 1e-9m * range.High
            ? throw row.Fault(PriceShape, "'normal' wants the price in the middle of priceLow and priceHigh")
            : shape;
    }

    private static PriceTier[] Kept(List<PriceTier> tiers) => tiers.Count == 0 ? [] : [.. tiers];

    // Either end may be left out: it is the price itself then.
    private static (decimal Low, decimal High)? PriceRange(CsvRow row, FeltPrice price)
    {
        decimal End(NumberField column, decimal low, decimal high) => row.Has(column) ? row.Money(column, low, high) : price.Amount;
        return row.Has(PriceLow) || row.Has(PriceHigh)
            ? (End(PriceLow, (decimal)PriceLow.Range.Low, price.Amount), End(PriceHigh, price.Amount, (decimal)PriceHigh.Range.High))
            : null;
    }
}
