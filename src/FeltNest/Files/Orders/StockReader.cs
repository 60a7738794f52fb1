using System.Globalization;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Csv;
using FeltNest.Files.Rolls;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using static FeltNest.Files.Orders.StockListing;

namespace FeltNest.Files.Orders;

/// <summary>Reads the rolls in stock (CSV), and those of them that were measured.</summary>
internal sealed class StockReader
{
    /// <summary>Most rolls of one list.</summary>
    public const int MostRolls = 1000;

    // How much longer than measured a roll may be said to be, and how far its width may be said outside what was measured, as shares:
    // tapes and felt under pull differ by less.
    private const double LengthTolerance = 0.01;
    private const double WidthTolerance = 0.01;

    private readonly CostInputs costs;

    /// <summary>A reader that prices felt by what the shop knows of its costs.</summary>
    /// <param name="costs">Currency and rates, usual faults, usual mass.</param>
    public StockReader(CostInputs costs) => this.costs = costs;

    /// <summary>The rolls of a file that are available, in its order.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public IReadOnlyList<StockRoll> Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The rolls of a text that are available, in its order.</summary>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public IReadOnlyList<StockRoll> Read(InputText text) => [.. Entries(text).Where(entry => entry.Available).Select(entry => entry.Roll)];

    /// <summary>All lines of a list in its order, those of rolls that are not available too; one is available at the least.</summary>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public IReadOnlyList<StockEntry> Entries(InputText text)
    {
        List<StockEntry> entries = [];
        HashSet<string> names = [];
        int there = 0;
        foreach (CsvRow row in CsvTable.Read(text, Listing).Rows)
        {
            StockEntry entry = Read(row, text);
            if (!names.Add(entry.Roll.Name))
            {
                throw row.Fault(Roll, $"'{entry.Roll.Name}' stands in the list twice: every roll needs a name of its own");
            }

            there += entry.Available ? 1 : 0;
            entries.Add(
                there <= MostRolls
                    ? entry
                    : throw row.Fault(Roll, $"is one too many: at most {MostRolls} rolls are planned at once"));
        }

        return there > 0 ? entries : throw new InputException(text.Name, Available.Name, "is no for every roll: nothing can be cut");
    }

    /// <summary>The currency of a list of rolls, for a plan without costs: that of its first line.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static string CurrencyOf(InputText text) => CsvTable.Read(text, Listing).Rows[0].Currency(Currency);

    /// <summary>Felt on offer, priced the same way.</summary>
    /// <exception cref="InputException">A currency without a rate, or a price by the kilogram while the mass is not known.</exception>
    public FeltPurchase Offered(FeltOffer offer)
    {
        decimal felt = PerMetre(offer.Price, offer.InvoicedWidthMm ?? offer.WidthMm, offer.MassPerAreaGsm);
        decimal freight = offer.FreightPerRoll * costs.RateOf(offer.Price.Currency) / (decimal)offer.LengthM;
        decimal price = (felt + freight) * (1 + (offer.DutyPercent / 100));
        return new FeltPurchase(
            new StockRoll
            {
                Name = offer.Name,
                Felt = offer.Felt,
                Lot = offer.Lot ?? offer.Name,
                WidthMm = offer.PlannedWidthMm,
                LengthM = offer.LengthM,
                PricePerMetre = price,
                FaultPercent = offer.FaultPercent ?? costs.Losses.FaultPercent,
                Received = null,
                Offer = offer.Name,
            }, offer.MinimumM
                ?? 0);
    }

    private StockEntry Read(CsvRow row, InputText text)
    {
        FeltPrice price = new(row.Money(Price), PriceUnits.Find(row.Word(StockListing.PriceUnit))!.Value, row.Currency(Currency));
        double width = row.Number(WidthMm);
        double? mass = row.OptionalNumber(MassPerAreaGsm);
        decimal perMetre;
        try
        {
            perMetre = PerMetre(price, width, mass);
        }
        catch (InputException error)
        {
            throw row.Fault(Listing.Columns.All.FirstOrDefault(column => column.Name == error.Field) ?? Price, error.Problem);
        }

        StockRoll roll = new()
        {
            Name = row.Text(Roll),
            Felt = row.Text(Felt),
            Lot = row.Text(Lot),
            WidthMm = width,
            LengthM = row.Number(LengthM),
            PricePerMetre = perMetre,
            FaultPercent = row.OptionalNumber(FaultPercent) ?? costs.Losses.FaultPercent,
            Received = row.Has(Received) ? OrdersReader.Day(row, Received) : null,
            Offer = null,
            Nap = row.OptionalWord(NapToward) is { } word ? NapWord.Find(word) : null,
        };
        string? file = row.OptionalText(StockListing.Measured) is { } named ? text.Beside(named) : null;
        return new StockEntry
        {
            Roll = file is null ? roll : WithMeasured(row, roll, file),
            Available = row.Word(Available) == There,
            Price = price,
            MassPerAreaGsm = mass,
            FaultPercent = row.OptionalNumber(FaultPercent),
            MeasuredFile = file,
        };
    }

    private static StockRoll WithMeasured(CsvRow row, StockRoll roll, string file)
    {
        FeltRoll measured = RollReader.Read(file);
        if (measured.Name != roll.Name)
        {
            throw row.Fault(StockListing.Measured, $"'{file}' is of roll {measured.Name}, not of {roll.Name}");
        }

        if ((measured.Felt ?? roll.Felt) != roll.Felt || (measured.Lot ?? roll.Lot) != roll.Lot)
        {
            throw row.Fault(
                StockListing.Measured, $"'{file}' is of felt {measured.Felt}, lot {measured.Lot}; the stock says {roll.Felt}, {roll.Lot}");
        }

        if (roll.Nap is { } said && measured.Nap is { } lies && said != lies)
        {
            throw row.Fault(
                NapToward,
                $"{NapWord.Of(said)} is not the way of the nap in '{file}' ({NapWord.Of(lies)}): leave it blank or give the same");
        }

        return Left(row, roll with { Nap = measured.Nap ?? roll.Nap }, measured with { Nap = measured.Nap ?? roll.Nap }, file);
    }

    // What the stock list says is left of a measured roll: what is missing was cut from its start.
    private static StockRoll Left(CsvRow row, StockRoll roll, FeltRoll measured, string file)
    {
        double whole = measured.LengthMm / 1000;
        double begin = Math.Max(0, whole - roll.LengthM);
        if (roll.LengthM > whole * (1 + LengthTolerance))
        {
            throw row.Fault(LengthM, string.Create(
                CultureInfo.InvariantCulture,
                $"{roll.LengthM:0.###} is longer than the roll as measured in '{file}': allowed is up to "
                    + $"{whole * (1 + LengthTolerance):0.###} m ({100 * LengthTolerance:0.#} % above {whole:0.###} m)"));
        }

        double[] widths = [.. measured.Widths.Where(w => w.XMm > 1000 * begin).Select(w => w.WidthMm), measured.WidthAt(1000 * begin)];
        double low = widths.Min() * (1 - WidthTolerance);
        double high = widths.Max() * (1 + WidthTolerance);
        return roll.WidthMm >= low && roll.WidthMm <= high
            ? roll with { Measured = measured, LengthM = whole - begin, BeginM = begin }
            : throw row.Fault(WidthMm, string.Create(
                CultureInfo.InvariantCulture,
                $"{roll.WidthMm:0.###} is not the width measured in '{file}' ({widths.Min():0.###} to {widths.Max():0.###} mm): allowed "
                    + $"is {low:0.#} to {high:0.#} mm"));
    }

    private decimal PerMetre(FeltPrice price, double widthMm, double? massPerAreaGsm)
    {
        double squareMetres = widthMm / 1000;
        Yield.FeltUsage metre = new() { Metres = 1, SquareMetres = squareMetres, Kilograms = squareMetres * massPerAreaGsm / 1000 };
        return (decimal)FeltPrice.QuantityOf(price.Unit, metre) * price.Amount * costs.RateOf(price.Currency);
    }
}
