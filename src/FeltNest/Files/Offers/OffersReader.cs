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

    /// <summary>The offers of a file in its order.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<FeltOffer> Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The offers of a text in its order.</summary>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<FeltOffer> Read(InputText text)
    {
        List<FeltOffer> offers = [];
        foreach (CsvRow row in CsvTable.Read(text, OffersListing.Listing).Rows)
        {
            FeltOffer offer = Offer(row);
            if (offers.Exists(o => o.Name == offer.Name))
            {
                throw row.Fault(Name, $"'{offer.Name}' stands in the list twice: every offer needs a name of its own");
            }

            offers.Add(offer);
            if (offers.Count > MostOffers)
            {
                throw row.Fault(Name, $"is one offer too many: at most {MostOffers} are compared at once");
            }
        }

        return offers;
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

        PriceUnit unit = PriceUnits.Find(row.Word(OffersListing.PriceUnit))!.Value;
        if (unit == Cost.Offers.PriceUnit.Kilogram && !row.Has(MassPerAreaGsm))
        {
            throw row.Fault(
                MassPerAreaGsm,
                "is blank and the price is per kg: give the mass of the felt as it is bought, coated or bare, "
                    + $"{MassPerAreaGsm.RangeWords} {MassPerAreaGsm.UnitWord}");
        }

        FeltPrice price = new(row.Money(Price), unit, row.Currency(Currency));
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
            DeliveryDays = row.Whole(DeliveryDays),
            Lot = row.OptionalText(Lot),
            PriceRange = PriceRange(row, price),
        };
    }

    // Either end may be left out: it is the price itself then.
    private static (decimal Low, decimal High)? PriceRange(CsvRow row, FeltPrice price)
    {
        decimal End(NumberField column, decimal low, decimal high) => row.Has(column) ? row.Money(column, low, high) : price.Amount;
        return row.Has(PriceLow) || row.Has(PriceHigh)
            ? (End(PriceLow, (decimal)PriceLow.Range.Low, price.Amount), End(PriceHigh, price.Amount, (decimal)PriceHigh.Range.High))
            : null;
    }
}
