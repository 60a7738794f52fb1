using System.Text.Json;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Json;

namespace FeltNest.Files.Costs;

/// <summary>Reads what a shop knows of its costs (schema feltnest/costs/1). What is left out is not counted.</summary>
public sealed class CostsReader
{
    // Greatest sound amount of money: beyond it a slip of the keys is likelier.
    private const decimal MostMoney = 1_000_000_000m;

    // Most dies, or counts of layers, weighed against each other.
    private const int MostChoices = 12;

    private readonly List<CostRange> ranges = [];

    private CostsReader()
    {
    }

    /// <summary>The costs of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static CostInputs Read(string path) => new CostsReader().Costs(path);

    private CostInputs Costs(string path)
    {
        JsonElement root = JsonInput.ReadObject(path);
        JsonInput.SchemaOf(root, path, SchemaName.Costs);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "name", "currency", "rates", "roll", "felt", "recovery", "strike", "die", "setUp",
            "handlingPerThousandBalls", "overheadPercent", "gang");
        string currency = Currency(top);
        JsonFields? felt = Optional(top, "felt", "price", "priceUnit", "currency", "massPerAreaGsm");
        JsonFields? strike = Optional(top, "strike", "price", "boardPrice", "mostPanels");
        JsonFields? recovery = Optional(top, "recovery", "pricePerKg");
        JsonFields? die = Optional(top, "die", "price", "lifeStrikes", "reRules", "reRulePrice");
        JsonFields? setUp = Optional(top, "setUp", "hours", "ratePerHour", "batchThousandBalls");
        if (die is not null && strike is null)
        {
            throw top.Fault("strike", "is missing: a die is worn by strikes, so strike.mostPanels is wanted");
        }

        if (felt is not null && Unit(felt) == PriceUnit.Kilogram && !felt.Has("massPerAreaGsm"))
        {
            throw felt.Fault(
                "massPerAreaGsm",
                "is missing and the price is per kg: give the mass of the felt as it is bought, coated or bare, 50 to 3000 g/m2");
        }

        return new CostInputs(
            top.Text("name"), currency, Rates(top, currency),
            Losses(top.Object("roll", "lengthM", "endLossMm", "faultPercent", "rejectPercent", "unpairedPercent"), strike),
            felt is null
                ? null
                : new FeltPrice(Decimal(felt, "price", 0.0001m, MostMoney), Unit(felt), felt.Has("currency") ? Currency(felt) : currency),
            felt is null || !felt.Has("massPerAreaGsm") ? null : (double)Decimal(felt, "massPerAreaGsm", 50, 3000),
            recovery is null ? null : Decimal(recovery, "pricePerKg", 0, MostMoney),
            strike is null || !strike.Has("price") ? null : Decimal(strike, "price", 0, MostMoney),
            die is null ? null : new DieCost(
                Decimal(die, "price", 0, MostMoney), LifeStrikes(die), die.Has("reRules") ? die.WholeWithin("reRules", 0, 1000) : 0,
                die.Has("reRules") ? Decimal(die, "reRulePrice", 0, MostMoney) : 0),
            setUp is null
                ? null
                : new SetUpCost(
                    Decimal(setUp, "hours", 0, 1000), Decimal(setUp, "ratePerHour", 0, MostMoney),
                    Decimal(setUp, "batchThousandBalls", 0.001m, 1_000_000)),
            strike is null || !strike.Has("boardPrice") ? null : Decimal(strike, "boardPrice", 0, MostMoney),
            top.Has("handlingPerThousandBalls") ? Decimal(top, "handlingPerThousandBalls", 0, MostMoney) : null,
            top.Has("overheadPercent") ? Decimal(top, "overheadPercent", 0, 1000) : null)
        {
            Gang = Gang(top),
            Ranges = ranges,
        };
    }

    private GangOptions? Gang(JsonFields top)
    {
        JsonFields? gang = Optional(top, "gang", "cavities", "plies", "diePricePerCavity", "strikePricePerExtraPly");
        if (gang is not null && !(top.Has("die") && top.Object("strike", "price", "boardPrice", "mostPanels").Has("price")))
        {
            throw top.Fault("gang", "weighs dies by what they and their strikes cost: die and strike.price are wanted");
        }

        return gang is null ? null : new GangOptions(
            Counts(gang, "cavities", 10_000), gang.Has("plies") ? Counts(gang, "plies", 100) : [1],
            Decimal(gang, "diePricePerCavity", 0, MostMoney),
            gang.Has("strikePricePerExtraPly") ? Decimal(gang, "strikePricePerExtraPly", 0, MostMoney) : 0);
    }

    private static int[] Counts(JsonFields gang, string name, int most)
    {
        List<int> counts = [];
        foreach (JsonElement item in gang.Array(name).EnumerateArray())
        {
            int count = item.ValueKind == JsonValueKind.Number && item.TryGetInt32(out int whole) ? whole : 0;
            if (count < 1 || count > most || (counts.Count > 0 && count <= counts[^1]) || counts.Count == MostChoices)
            {
                throw gang.Fault(
                    name,
                    $"{OneLine.Of(item.GetRawText())} is not allowed: up to {MostChoices} whole numbers of 1 to {most}, each greater "
                        + $"than the one before");
            }

            counts.Add(count);
        }

        return counts.Count > 0 ? [.. counts] : throw gang.Fault(name, "is empty");
    }

    private FeltLosses Losses(JsonFields roll, JsonFields? strike) => new(
        (double)Decimal(roll, "lengthM", 0.1m, 100_000), (double)Decimal(roll, "endLossMm", 0, 100_000),
        (double)Decimal(roll, "faultPercent", 0, 90),
        (double)Decimal(roll, "rejectPercent", 0, 90), roll.Has("unpairedPercent") ? (double)Decimal(roll, "unpairedPercent", 0, 90) : 0,
        strike is null ? null : strike.WholeWithin("mostPanels", 1, 10_000));

    private CurrencyRate[] Rates(JsonFields top, string own)
    {
        if (!top.Has("rates"))
        {
            return [];
        }

        List<CurrencyRate> rates = [];
        foreach (JsonFields item in top.Objects("rates", "currency", "rate"))
        {
            CurrencyRate rate = new(Currency(item), Decimal(item, "rate", 0.000001m, 1_000_000));
            if (rate.Currency == own || rates.Exists(r => r.Currency == rate.Currency))
            {
                throw item.Fault(
                    "currency",
                    $"{rate.Currency} {(rate.Currency == own ? "is the sheet's own currency: its rate is 1" : "is given twice")}");
            }

            rates.Add(rate);
        }

        return [.. rates];
    }

    private static JsonFields? Optional(JsonFields top, string name, params string[] known) =>
        top.Has(name) ? top.Object(name, known) : null;

    private static string Currency(JsonFields fields) =>
        CurrencyWord.IsSound(fields.Text("currency"))
            ? fields.Text("currency")
            : throw fields.Fault("currency", $"'{fields.Text("currency")}' is not allowed: {CurrencyWord.Allowed}");

    private static PriceUnit Unit(JsonFields felt) => PriceUnits.Find(felt.Text("priceUnit"))
        ?? throw felt.Fault("priceUnit", $"'{felt.Text("priceUnit")}' is not allowed: {string.Join(", ", PriceUnits.Words)}");

    private int LifeStrikes(JsonFields die)
    {
        decimal strikes = Decimal(die, "lifeStrikes", 1, 1_000_000_000);
        return decimal.Truncate(strikes) == strikes
            ? (int)strikes
            : throw die.Fault("lifeStrikes", FormattableString.Invariant($"{strikes} is not a whole number"));
    }

    // Money and shares as they are written, no digit lost: one number, or the likely one of three.
    private decimal Decimal(JsonFields fields, string name, decimal low, decimal high)
    {
        if (fields.Required(name).ValueKind != JsonValueKind.Object)
        {
            return Single(fields, name, low, high);
        }

        JsonFields three = fields.Object(name, "low", "likely", "high");
        decimal likely = Single(three, "likely", low, high);
        ranges.Add(new CostRange(fields.PathOf(name), Single(three, "low", low, likely), Single(three, "high", likely, high)));
        return likely;
    }

    private static decimal Single(JsonFields fields, string name, decimal low, decimal high)
    {
        // Says what is wrong with anything that is no finite number.
        double number = fields.Number(name);
        return fields.Required(name).TryGetDecimal(out decimal value) && value >= low && value <= high
            ? value : throw fields.Fault(name, FormattableString.Invariant($"{number:R} is outside {low} to {high}"));
    }
}
