using System.Text.Json;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using static FeltNest.Files.Costs.CostsDocument;

namespace FeltNest.Files.Costs;

/// <summary>Reads what a shop knows of its costs (schema feltnest/costs/1). What is left out is not counted.</summary>
internal sealed class CostsReader
{
    private readonly List<CostRange> ranges = [];

    private CostsReader()
    {
    }

    /// <summary>The costs of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static CostInputs Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The costs of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static CostInputs Read(InputText text) => new CostsReader().Costs(JsonFields.Top(text, CostsDocument.Document));

    private CostInputs Costs(JsonFields top)
    {
        string currency = top.Currency(Currency);
        JsonFields? strike = top.OptionalObject(Strike);
        JsonFields? recovery = top.OptionalObject(Recovery);
        if (top.Has(CostsDocument.Die) && strike is null)
        {
            throw top.Fault(Strike, "is missing: a die is worn by strikes, so strike.mostPanels is wanted");
        }

        JsonFields? felt = FeltOf(top);
        return new CostInputs
        {
            Name = top.Text(Name),
            Currency = currency,
            Rates = RatesOf(top, currency),
            Losses = Losses(top.Object(Roll), strike),
            Felt = Price(felt, currency),
            MassPerAreaGsm = (double?)Optional(felt, FeltFields.MassPerAreaGsm),
            RecoveryPerKg = recovery is null ? null : Decimal(recovery, RecoveryFields.PricePerKg),
            PerStrike = Optional(strike, StrikeFields.Price),
            Die = DieOf(top.OptionalObject(CostsDocument.Die)),
            SetUp = SetUpOf(top.OptionalObject(SetUp)),
            BoardPerStrike = Optional(strike, StrikeFields.BoardPrice),
            HandlingPerThousandBalls = Optional(top, HandlingPerThousandBalls),
            OverheadPercent = Optional(top, OverheadPercent),
            AnnualBalls = (double?)Optional(top, AnnualBalls),
            InterestPercent = Optional(top, InterestPercent),
            SurplusWorthPercent = Optional(top, SurplusWorthPercent),
            CoatingPerSquareMetre = top.OptionalObject(Coating) is { } coating ? Decimal(coating, CoatingFields.PricePerM2) : null,
            HorizonYears = top.Has(HorizonYears) ? (double)Optional(top, HorizonYears)! : HorizonYears.Default!.Value,
            WidthPerYear = Optional(top, WidthYearCost),
            Correlations = CorrelationsOf(top),
            Gang = GangOf(top, strike),
            Ranges = ranges,
        };
    }

    private static JsonFields? FeltOf(JsonFields top)
    {
        JsonFields? felt = top.OptionalObject(Felt);
        return felt is not null && Unit(felt) == PriceUnit.Kilogram && !felt.Has(FeltFields.MassPerAreaGsm)
            ? throw felt.Fault(
                FeltFields.MassPerAreaGsm,
                "is missing and the price is per kg: give the mass of the felt as it is bought, coated or bare, "
                    + FeltFields.MassPerAreaGsm.RangeWords + " g/m2")
            : felt;
    }

    private FeltPrice? Price(JsonFields? felt, string currency)
    {
        if (felt is null)
        {
            return null;
        }

        string own = felt.Has(FeltFields.Currency) ? felt.Currency(FeltFields.Currency) : currency;
        return new FeltPrice(Decimal(felt, FeltFields.Price), Unit(felt), own);
    }

    private static CostCorrelation[] CorrelationsOf(JsonFields top)
    {
        List<CostCorrelation> pairs = [];
        foreach (JsonFields item in top.OptionalObjects(Correlations))
        {
            CostCorrelation pair = new()
            {
                First = item.Text(CorrelationFields.First),
                Second = item.Text(CorrelationFields.Second),
                R = item.Number(CorrelationFields.Correlation),
            };
            if (pair.First == pair.Second
                || pairs.Exists(p => (p.First, p.Second) == (pair.First, pair.Second) || (p.Second, p.First) == (pair.First, pair.Second)))
            {
                throw item.Fault(CorrelationFields.Second, $"'{OneLine.Of(pair.Second)}' stands with '{OneLine.Of(pair.First)}' already");
            }

            pairs.Add(pair);
        }

        return [.. pairs];
    }

    private DieCost? DieOf(JsonFields? die)
    {
        if (die is null)
        {
            return null;
        }

        return new DieCost
        {
            Price = Decimal(die, DieFields.Price),
            LifeStrikes = LifeStrikes(die),
            ReRules = die.Whole(DieFields.ReRules),
            ReRulePrice = die.Has(DieFields.ReRules) ? Decimal(die, DieFields.ReRulePrice) : 0,
        };
    }

    private SetUpCost? SetUpOf(JsonFields? setUp) => setUp is null
        ? null
        : new SetUpCost
        {
            Hours = Decimal(setUp, SetUpFields.Hours),
            RatePerHour = Decimal(setUp, SetUpFields.RatePerHour),
            BatchThousandBalls = Decimal(setUp, SetUpFields.BatchThousandBalls),
        };

    private GangOptions? GangOf(JsonFields top, JsonFields? strike)
    {
        JsonFields? gang = top.OptionalObject(Gang);
        if (gang is not null && !(top.Has(CostsDocument.Die) && strike!.Has(StrikeFields.Price)))
        {
            throw top.Fault(Gang, "weighs dies by what they and their strikes cost: die and strike.price are wanted");
        }

        if (gang is null)
        {
            return null;
        }

        return new GangOptions
        {
            Cavities = Counts(gang, GangFields.Cavities),
            Plies = gang.Has(GangFields.Plies) ? Counts(gang, GangFields.Plies) : [1],
            PricePerCavity = Decimal(gang, GangFields.DiePricePerCavity),
            PricePerExtraPly = Optional(gang, GangFields.StrikePricePerExtraPly) ?? 0,
        };
    }

    private static int[] Counts(JsonFields gang, CountsField field)
    {
        List<int> counts = [];
        foreach (JsonElement item in gang.Elements(field).EnumerateArray())
        {
            int count = item.ValueKind == JsonValueKind.Number && item.TryGetInt32(out int whole) ? whole : 0;
            if (count < 1 || count > field.Greatest || (counts.Count > 0 && count <= counts[^1]) || counts.Count == field.Most)
            {
                throw gang.Fault(
                    field,
                    $"{OneLine.Of(item.GetRawText())} is not allowed: up to {field.Most} whole numbers of 1 to {field.Greatest}, each "
                        + $"greater than the one before");
            }

            counts.Add(count);
        }

        return counts.Count > 0 ? [.. counts] : throw gang.Fault(field, "is empty");
    }

    private FeltLosses Losses(JsonFields roll, JsonFields? strike) => new()
    {
        RollLengthM = (double)Decimal(roll, RollFields.LengthM),
        EndLossMm = (double)Decimal(roll, RollFields.EndLossMm),
        FaultPercent = (double)Decimal(roll, RollFields.FaultPercent),
        RejectPercent = (double)Decimal(roll, RollFields.RejectPercent),
        UnpairedPercent = (double)(Optional(roll, RollFields.UnpairedPercent) ?? 0),
        MostPanelsPerStrike = strike?.Whole(StrikeFields.MostPanels),
    };

    private CurrencyRate[] RatesOf(JsonFields top, string own)
    {
        List<CurrencyRate> rates = [];
        foreach (JsonFields item in top.OptionalObjects(Rates))
        {
            CurrencyRate rate = new(item.Currency(RateFields.Currency), Decimal(item, RateFields.Rate));
            if (rate.Currency == own || rates.Exists(r => r.Currency == rate.Currency))
            {
                string problem = rate.Currency == own ? "is the sheet's own currency: its rate is 1" : "is given twice";
                throw item.Fault(RateFields.Currency, $"{rate.Currency} {problem}");
            }

            rates.Add(rate);
        }

        return [.. rates];
    }

    private static PriceUnit Unit(JsonFields felt) => PriceUnits.Find(felt.Word(FeltFields.PriceUnit))!.Value;

    private int LifeStrikes(JsonFields die)
    {
        decimal strikes = Decimal(die, DieFields.LifeStrikes);
        return decimal.Truncate(strikes) == strikes
            ? (int)strikes
            : throw die.Fault(DieFields.LifeStrikes, FormattableString.Invariant($"{strikes} is not a whole number"));
    }

    private decimal? Optional(JsonFields? fields, NumberField field) =>
        fields is not null && fields.Has(field) ? Decimal(fields, field) : null;

    // Money and shares as they are written, no digit lost: one number, or the likely one of three.
    private decimal Decimal(JsonFields fields, NumberField field)
    {
        (decimal low, decimal high) = ((decimal)field.Range.Low, (decimal)field.Range.High);
        if (fields.Spread(field) is not { } three)
        {
            return fields.Exact(field, low, high);
        }

        decimal likely = three.Exact(SpreadFields.Likely, low, high);
        CostRange range = new()
        {
            Field = fields.PathOf(field),
            Low = three.Exact(SpreadFields.Low, low, likely),
            High = three.Exact(SpreadFields.High, likely, high),
            Shape = three.Has(SpreadFields.Shape)
                ? EnumWord.Find<SpreadShape>(three.Word(SpreadFields.Shape))!.Value
                : SpreadShape.Triangular,
        };
        if (range.Shape == SpreadShape.Normal && Math.Abs(range.Low + range.High - (2 * likely)) > 1e-9m * range.High)
        {
            throw three.Fault(SpreadFields.Shape, "'normal' wants the likely value in the middle of low and high");
        }

        ranges.Add(range);
        return likely;
    }
}
