using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using FeltNest.Files.Csv;

namespace FeltNest.Files.Usage;

/// <summary>Reads what rolls really gave (CSV): the filled-in cutting tickets, one line a roll.</summary>
public static class ActualsReader
{
    private static readonly string[] Required = ["roll", "metres", "goodPanels"];
    private static readonly string[] Optional =
        [
            "widthMm", "endsM", "faultPanels", "rejectedPanels", "unpairedPanels", "price", "priceUnit", "currency", "date", "operator",
            "supervisor",
        ];

    private static readonly string[] Priced = ["price", "priceUnit", "currency"];
    private static readonly string[] SignedBy = ["date", "operator", "supervisor"];

    // Most panels of one roll: far above any sound count.
    private const int MostPanels = 10_000_000;

    /// <summary>The rolls of a file in its order. A column that is there is filled on every line, so that nothing is taken at its standard
    /// for some rolls only.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<ActualRoll> Read(string path)
    {
        CsvTable table = CsvTable.Read(path, Required, Optional);
        string[] there = [.. Optional.Where(column => table.PlaceOf(column) is not null)];
        string[] prices = [.. Priced.Where(there.Contains)];
        if (prices.Length is 1 or 2)
        {
            throw new InputException(
                path, null,
                $"has the column {prices[0]} and not {Priced.First(p => !prices.Contains(p))}: a price needs its unit and currency");
        }

        List<ActualRoll> rolls = [];
        foreach (CsvRow row in table.Rows)
        {
            ActualRoll roll = Roll(row, there);
            if (rolls.Exists(r => r.Roll == roll.Roll))
            {
                throw row.Fault("roll", $"'{roll.Roll}' stands in the list twice: add up what one roll gave");
            }

            rolls.Add(roll);
        }

        return rolls;
    }

    private static ActualRoll Roll(CsvRow row, string[] there)
    {
        int? Count(string column) => there.Contains(column) ? Whole(row, column) : null;
        double? Length(string column, double low, double high, string unit) =>
            there.Contains(column) ? row.Number(column, low, high, unit) : null;
        FeltPrice? price = !there.Contains("price") ? null : new FeltPrice(
            row.Money("price", 0.0001m, 1_000_000_000m, "in its currency"), PriceUnits.Find(row.Word("priceUnit", PriceUnits.Words))!.Value,
            row.Text("currency") is { } word && CurrencyWord.IsSound(word)
                ? word
                : throw row.Fault("currency", $"'{row.Text("currency")}' is not allowed: {CurrencyWord.Allowed}"));
        string[] signed = [.. SignedBy.Select(row.OptionalText).OfType<string>()];
        return new ActualRoll(
            row.Text("roll"), row.Number("metres", 0.1, 100_000, "m"), Whole(row, "goodPanels"), Length("widthMm", 10, 10_000, "mm"),
            Length("endsM", 0, 100_000, "m"),
            Count("faultPanels"), Count("rejectedPanels"), Count("unpairedPanels"), price, signed);
    }

    private static int Whole(CsvRow row, string column)
    {
        decimal value = row.Money(column, 0, MostPanels, "panels");
        return decimal.Truncate(value) == value
            ? (int)value
            : throw row.Fault(column, FormattableString.Invariant($"{value} is not a whole number of panels"));
    }
}
