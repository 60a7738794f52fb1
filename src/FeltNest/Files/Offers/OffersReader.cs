using FeltNest.Cost.Offers;
using FeltNest.Files.Csv;

namespace FeltNest.Files.Offers;

/// <summary>Reads a list of felt offers (CSV).</summary>
public static class OffersReader
{
    /// <summary>Most offers of one list.</summary>
    public const int MostOffers = 60;

    private static readonly string[] Required = ["name", "felt", "widthMm", "lengthM", "price", "priceUnit", "currency"];
    private static readonly string[] Optional =
    [
        "leastWidthMm", "edgeMm", "massPerAreaGsm", "massBasis", "faultPercent", "minimumM", "lot", "priceLow", "priceHigh",
    ];
    private static readonly string[] Bases = ["bare", "coated"];

    /// <summary>The offers of a file in its order.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<FeltOffer> Read(string path)
    {
        List<FeltOffer> offers = [];
        foreach (CsvRow row in CsvTable.Read(path, Required, Optional).Rows)
        {
            FeltOffer offer = Offer(row);
            if (offers.Exists(o => o.Name == offer.Name))
            {
                throw row.Fault("name", $"'{offer.Name}' stands in the list twice: every offer needs a name of its own");
            }

            offers.Add(offer);
            if (offers.Count > MostOffers)
            {
                throw row.Fault("name", $"is one offer too many: at most {MostOffers} are compared at once");
            }
        }

        return offers;
    }

    private static FeltOffer Offer(CsvRow row)
    {
        double width = row.Number("widthMm", 10, 10_000, "mm");
        double? least = row.OptionalNumber("leastWidthMm", 10, 10_000, "mm");
        if (least > width)
        {
            throw row.Fault(
                "leastWidthMm",
                FormattableString.Invariant($"{least} is above the nominal width of {width} mm: the guaranteed width is the lesser one"));
        }

        if (row.Word("priceUnit", PriceUnits.Words) == PriceUnits.WordOf(PriceUnit.Kilogram) && !row.Has("massPerAreaGsm"))
        {
            throw row.Fault(
                "massPerAreaGsm",
                "is blank and the price is per kg: give the mass of the felt as it is bought, coated or bare, 50 to 3000 g/m2");
        }

        FeltPrice price = new(
            row.Money("price", 0.0001m, 1_000_000_000m, "in its currency"), PriceUnits.Find(row.Word("priceUnit", PriceUnits.Words))!.Value,
            Currency(row));
        return new FeltOffer(
            row.Text("name"), row.Text("felt"), width, row.Number("lengthM", 0.1, 100_000, "m"), price, least,
            row.OptionalNumber("edgeMm", 0, 1000, "mm"),
            row.OptionalNumber("massPerAreaGsm", 50, 3000, "g/m2"), row.Has("massBasis") ? row.Word("massBasis", Bases) : null,
            row.OptionalNumber("faultPercent", 0, 90, "%"),
            row.OptionalNumber("minimumM", 0, 1_000_000, "m"), row.OptionalText("lot"))
        {
            PriceRange = PriceRange(row, price),
        };
    }

    // Either end may be left out: it is the price itself then.
    private static (decimal Low, decimal High)? PriceRange(CsvRow row, FeltPrice price)
    {
        decimal End(string column, decimal low, decimal high) =>
            row.Has(column) ? row.Money(column, low, high, "(priceLow to price to priceHigh)") : price.Amount;
        return row.Has("priceLow") || row.Has("priceHigh")
            ? (End("priceLow", 0.0001m, price.Amount), End("priceHigh", price.Amount, 1_000_000_000m))
            : null;
    }

    private static string Currency(CsvRow row) =>
        row.Text("currency") is { } word && CurrencyWord.IsSound(word)
            ? word
            : throw row.Fault("currency", $"'{row.Text("currency")}' is not allowed: {CurrencyWord.Allowed}");
}
