using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using static FeltNest.Files.Usage.ActualsListing;

namespace FeltNest.Files.Usage;

/// <summary>Reads what rolls really gave (CSV): the filled-in cutting tickets, one line a roll.</summary>
internal static class ActualsReader
{
    private static readonly Field[] Priced = [Price, ActualsListing.PriceUnit, Currency];
    private static readonly TextField[] SignedBy = [Date, Operator, Supervisor];

    /// <summary>The rolls of a file in its order. A column that is there is filled on every line, so that nothing is taken at its standard
    /// for some rolls only.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<ActualRoll> Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The rolls of a text in its order.</summary>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<ActualRoll> Read(InputText text)
    {
        CsvTable table = CsvTable.Read(text, ActualsListing.Listing);
        Field[] prices = [.. Priced.Where(table.Has)];
        if (prices.Length is 1 or 2)
        {
            throw new InputException(
                text.Name, null,
                $"has the column {prices[0].Name} and not {Priced.First(p => !prices.Contains(p)).Name}: a price needs its unit and "
                    + $"currency");
        }

        HashSet<string> names = [];
        return table.Each(row =>
        {
            ActualRoll roll = Read(row, table);
            return names.Add(roll.Roll)
                ? roll
                : throw row.Fault(Roll, $"'{roll.Roll}' stands in the list twice: add up what one roll gave");
        });
    }

    private static ActualRoll Read(CsvRow row, CsvTable table)
    {
        int? Count(WholeField column) => table.Has(column) ? row.Whole(column) : null;
        double? Length(NumberField column) => table.Has(column) ? row.Number(column) : null;
        FeltPrice? price = table.Has(Price)
            ? new FeltPrice(row.Money(Price), PriceUnits.Find(row.Word(ActualsListing.PriceUnit))!.Value, row.Currency(Currency))
            : null;
        string[] signed = [.. SignedBy.Select(row.OptionalText).OfType<string>()];
        return new ActualRoll
        {
            Roll = row.Text(Roll),
            Metres = row.Number(Metres),
            GoodPanels = row.Whole(GoodPanels),
            WidthMm = Length(WidthMm),
            EndsM = Length(EndsM),
            FaultPanels = Count(FaultPanels),
            RejectedPanels = Count(RejectedPanels),
            UnpairedPanels = Count(UnpairedPanels),
            Price = price,
            SignedBy = signed,
        };
    }
}
