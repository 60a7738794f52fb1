using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using static FeltNest.Files.Usage.ActualsListing;

namespace FeltNest.Files.Usage;

/// <summary>Reads what rolls really gave (CSV): the filled-in cutting tickets, one line a ticket.</summary>
internal static class ActualsReader
{
    private static readonly Field[] Priced = [Price, ActualsListing.PriceUnit, Currency];
    private static readonly TextField[] SignedBy = [Date, Operator, Supervisor];
    private static readonly Field[] Needed = [Metres, GoodPanels];
    private static readonly Field[] Counted = [WidthMm, EndsM, FaultPanels, RejectedPanels, UnpairedPanels, .. Priced];

    /// <summary>The tickets of a file in its order.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<ActualRoll> Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The tickets of a text in its order. A column that is blank on one line is counted on none, so that nothing is taken at its
    /// standard for some rolls only; a line without metres or good panels is not counted at all. Both are noted.</summary>
    /// <param name="text">The text.</param>
    /// <param name="doubt">The column of a ticket that is asked about and the question, or null for none.</param>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<ActualRoll> Read(InputText text, Func<ActualRoll, (string Column, string Question)?>? doubt = null)
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

        CsvRow[] rows = [.. table.Rows.Where(row => Array.TrueForAll(Needed, row.Has))];
        if (rows.Length == 0)
        {
            throw new InputException(text.Name, null, "holds no line with metres and good panels: there is nothing to count");
        }

        HashSet<Field> full = [.. Counted.Where(column => table.Has(column) && Array.TrueForAll(rows, row => row.Has(column)))];
        Blanks(text, table, rows);
        HashSet<string> tickets = [];
        HashSet<(string, double, int)> lines = [];
        return table.Each(row => Array.TrueForAll(Needed, row.Has) ? Once(row, Read(row, full), tickets, lines, doubt) : null)
            .OfType<ActualRoll>().ToArray();
    }

    // Tells of each line that is left out, and of each column that is counted nowhere because a line left it blank.
    private static void Blanks(InputText text, CsvTable table, CsvRow[] rows)
    {
        foreach (CsvRow row in table.Rows.Except(rows))
        {
            string blank = string.Join(", ", Needed.Where(column => !row.Has(column)).Select(column => column.Name));
            Note(text, row, Needed[0], $"roll {row.Text(Roll)} is not counted: blank is {blank}");
        }

        foreach (Field column in Counted.Where(table.Has))
        {
            if (Array.Find(rows, row => !row.Has(column)) is { } row)
            {
                Note(text, row, column, $"{column.Name} is blank for roll {row.Text(Roll)} and so not counted, on no line");
            }
        }
    }

    private static void Note(InputText text, CsvRow row, Field column, string note)
    {
        if (text.Lists is not { } lists)
        {
            throw row.Fault(column, "is blank: a number is wanted");
        }

        lists.Note($"{text.Name}: line {row.Line}, {note}");
    }

    // A ticket stands in a list once; two lines that say the same of one roll are one ticket typed twice.
    private static ActualRoll Once(
        CsvRow row, ActualRoll roll, HashSet<string> tickets, HashSet<(string, double, int)> lines,
        Func<ActualRoll, (string Column, string Question)?>? doubt)
    {
        if (row.OptionalText(Ticket) is { } ticket && !tickets.Add(ticket))
        {
            throw row.Fault(Ticket, $"'{ticket}' stands in the list twice: one line a ticket");
        }

        if (!row.Has(Ticket) && !lines.Add((roll.Roll, roll.Metres, roll.GoodPanels)))
        {
            throw row.Fault(
                Roll, $"'{roll.Roll}' stands in the list twice with the same metres and panels: leave one out, or give both their ticket");
        }

        return !row.Insisted && doubt?.Invoke(roll) is { } asked
            ? throw row.Asked(ActualsListing.Listing.Columns.All.First(column => column.Name == asked.Column), asked.Question)
            : roll;
    }

    private static ActualRoll Read(CsvRow row, HashSet<Field> full)
    {
        int? Count(WholeField column) => full.Contains(column) ? row.Whole(column) : null;
        double? Length(NumberField column) => full.Contains(column) ? row.Number(column) : null;
        FeltPrice? price = Array.TrueForAll(Priced, full.Contains)
            ? new FeltPrice(row.Money(Price), PriceUnits.Find(row.Word(ActualsListing.PriceUnit))!.Value, row.Currency(Currency))
            : null;
        string[] ticket = row.OptionalText(Ticket) is { } number ? [$"ticket {number}"] : [];
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
            SignedBy = [.. ticket, .. SignedBy.Select(row.OptionalText).OfType<string>()],
        };
    }
}
