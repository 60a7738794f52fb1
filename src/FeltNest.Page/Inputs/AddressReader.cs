using FeltNest.Ball.Ranges;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files;
using FeltNest.Layout;
using FeltNest.Rolls;
using Microsoft.AspNetCore.Http;

namespace FeltNest.Page.Inputs;

/// <summary>Reads the inputs of an address: the fields of a query. Every fault is found, so that each field can show its own.</summary>
internal sealed class AddressReader(IQueryCollection query, BallShelf shelf)
{
    /// <summary>Numbers of the page.</summary>
    public static IReadOnlyList<PageField> Numbers { get; } =
    [
        new("core", null, BallRanges.CoreDiameter), new("cement", null, BallRanges.CementThickness),
        new("felt", null, BallRanges.FeltThickness), new("waist", null, 1, 200, "mm"),
        new("edgeLimit", null, BallRanges.MaxEdgeCompression), new("width", 1500, ShopRanges.RollWidth),
        new("gap", 4, ShopRanges.LengthOrNone),
        new("lower", 15, ShopRanges.EdgeTrim), new("upper", 15, ShopRanges.EdgeTrim), new("warpDeg", 0, BallRanges.WarpAngle),
        new("effort", 5, 1, 60, string.Empty), new("price", null, ShopRanges.FeltPrice, "per unit"),
        new("rollLength", 50, ShopRanges.RollLength), new("endLoss", 300, ShopRanges.EndLoss), new("faults", 1.5, ShopRanges.LossShare),
        new("rejects", 0.5, ShopRanges.LossShare), new("unpaired", 0, ShopRanges.LossShare), new("bedLength", null, ShopRanges.BedSide),
        new("bedWidth", null, ShopRanges.BedSide), new("bedMargin", 20, ShopRanges.BedMargin),
        new("pressForce", null, ShopRanges.PressForce), new("feedPlay", 0.5, ShopRanges.FeedTolerance),
        new("guidePlay", 0.5, ShopRanges.GuideTolerance),
    ];

    /// <summary>Words of the page, the usual one first.</summary>
    public static IReadOnlyList<(string Name, string[] Words)> Choices { get; } =
        [
            ("rows", ["same", "alternate", "any"]), ("warp", ["design", "free", "angle"]), ("oneWay", ["no", "yes"]),
            ("priceUnit", ["m2", "m", "kg"]),
        ];

    private readonly List<FieldFault> faults = [];

    /// <summary>Faults found so far.</summary>
    public IReadOnlyList<FieldFault> Faults => faults;

    /// <summary>The inputs; null where there is a fault.</summary>
    public PageInputs? Read()
    {
        // Faults are told in the order of these lines.
        string ball = Ball();
        RowRule rows = EnumWord.Find<RowRule>(Word("rows")) ?? RowRule.Same;
        string warp = Word("warp");
        string currency = Currency();
        double width = Number("width")!.Value;
        double lower = Number("lower")!.Value;
        double upper = Number("upper")!.Value;
        if (lower + upper >= width && faults.Count == 0)
        {
            Fault("width", "is used up by the two edge trims", 0);
        }

        int effort = Effort();
        PageMoney money = Money(currency);
        PageInputs inputs = new()
        {
            Cover = Cover(ball),
            WidthMm = width,
            GapMm = Number("gap")!.Value,
            LowerTrimMm = lower,
            UpperTrimMm = upper,
            Rows = rows,
            Warp = warp == "angle" ? Number("warpDeg") : null,
            WarpFree = warp == "free",
            OneWay = Word("oneWay") == "yes",
            Effort = effort,
            Money = money,
            Press = Press(),
        };
        return faults.Count == 0 ? inputs : null;
    }

    private PageCover Cover(string ball) => new()
    {
        Ball = ball,
        CoreMm = Number("core"),
        CementMm = Number("cement"),
        FeltMm = Number("felt"),
        WaistMm = Number("waist"),
        EdgeLimitPercent = Number("edgeLimit"),
    };

    private string Ball()
    {
        string usual = shelf.Names[0];
        if (Text("ball") is not { } asked)
        {
            return usual;
        }

        return shelf.Names.FirstOrDefault(n => n == asked)
            ?? Fault("ball", $"'{OneWord(asked)}' is not on the shelf: {string.Join(", ", shelf.Names)}", usual);
    }

    private string Currency()
    {
        string currency = Text("currency") ?? "EUR";
        return CurrencyWord.IsSound(currency)
            ? currency
            : Fault("currency", $"'{OneWord(currency)}' is not allowed: {CurrencyWord.Allowed}", "EUR");
    }

    private int Effort()
    {
        double effort = Number("effort")!.Value;
        return (int)(effort == Math.Floor(effort) ? effort : Fault("effort", "is a whole number from 1 to 60", effort));
    }

    private PageMoney Money(string currency)
    {
        FeltPrice? price =
            Number("price") is { } amount ? new FeltPrice((decimal)amount, PriceUnits.Find(Word("priceUnit"))!.Value, currency) : null;
        FeltLosses losses = new()
        {
            RollLengthM = Number("rollLength"),
            EndLossMm = Number("endLoss")!.Value,
            FaultPercent = Number("faults")!.Value,
            RejectPercent = Number("rejects")!.Value,
            UnpairedPercent = Number("unpaired")!.Value,
            MostPanelsPerStrike = null,
        };
        return new PageMoney(price, losses);
    }

    // A press is stated by its bed and its force, or not at all. What only a plan of orders asks of it is left at what changes nothing
    // here.
    private PressSpec? Press()
    {
        (string Name, double? Value)[] needed =
        [
            .. ((string[])["bedLength", "bedWidth", "pressForce"]).Select(name => (name, Number(name))),
        ];
        double margin = Number("bedMargin")!.Value;
        double feed = Number("feedPlay")!.Value;
        double guide = Number("guidePlay")!.Value;
        if (needed.Any(n => n.Value is null))
        {
            FaultMissing(needed);
            return null;
        }

        PressBed bed = new() { LengthMm = needed[0].Value!.Value, WidthMm = needed[1].Value!.Value, MarginMm = margin };
        if (bed.BoardLengthMm <= 0 || bed.BoardWidthMm <= 0)
        {
            return Fault<PressSpec?>("bedMargin", "leaves no bed: below half of the bed's length and width is allowed", null);
        }

        return new PressSpec
        {
            Name = "stated",
            RatedForceKn = needed[2].Value!.Value,
            AllowedSharePercent = PressSpec.UsualSharePercent,
            Bed = bed,
            DaylightMm = null,
            StrokesPerMinute = 1,
            ChangeOverMinutes = 0,
            Hours = null,
            MostPlies = 1,
            FeedToleranceMm = feed,
            GuideToleranceMm = guide,
            Dies = [],
        };
    }

    private void FaultMissing((string Name, double? Value)[] needed)
    {
        if (needed.All(n => n.Value is null))
        {
            return;
        }

        foreach ((string name, _) in needed.Where(n => n.Value is null))
        {
            Fault(name, "is missing: a press is stated by its bed along and across the roll and its force", 0);
        }
    }

    private double? Number(string name)
    {
        PageField field = Numbers.First(f => f.Name == name);
        double? value = field.Read(Text(name), out string? fault);
        return fault is null ? value : Fault(name, fault, field.Usual ?? 0);
    }

    private string Word(string name)
    {
        string[] words = Choices.First(c => c.Name == name).Words;
        if (Text(name) is not { } word)
        {
            return words[0];
        }

        if (words.Contains(word))
        {
            return word;
        }

        return Fault(name, $"'{OneWord(word)}' is not allowed: {string.Join(", ", words)}", words[0]);
    }

    // The first of several values counts.
    private string? Text(string name) =>
        query.TryGetValue(name, out Microsoft.Extensions.Primitives.StringValues values) ? values[0] : null;

    private T Fault<T>(string field, string problem, T instead)
    {
        if (!faults.Exists(f => f.Field == field))
        {
            faults.Add(new FieldFault { Field = field, Problem = problem });
        }

        return instead;
    }

    private static string OneWord(string text) => new([.. text.Take(40).Select(c => char.IsControl(c) ? ' ' : c)]);
}
