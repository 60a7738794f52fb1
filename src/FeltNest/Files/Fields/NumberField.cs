using System.Globalization;
using System.Text.Json.Nodes;
using FeltNest.Ball.Ranges;

namespace FeltNest.Files.Fields;

/// <summary>A number with its range and unit.</summary>
internal class NumberField : Field
{
    /// <summary>Low end of a range that has none.</summary>
    public const double NoLeast = double.NegativeInfinity;

    /// <summary>High end of a range that has none.</summary>
    public const double NoMost = double.PositiveInfinity;

    /// <summary>A number with a range that other fields, options or addresses may share; its name is the last step of the
    /// range's.</summary>
    public NumberField(FieldRange range, string meaning = "")
        : this(range.Field[(range.Field.LastIndexOf('.') + 1)..], range, meaning)
    {
    }

    /// <summary>A number with a shared range under a name of its own.</summary>
    public NumberField(string name, FieldRange range, string meaning = "")
        : base(name, meaning) => Range = range;

    /// <summary>A number from <paramref name="low"/> to <paramref name="high"/>.</summary>
    public NumberField(string name, double low, double high, string meaning = "")
        : this(name, new FieldRange
        {
            Field = name,
            Low = low,
            High = high,
            Unit = NameUnit.Of(name),
            Reason = string.Empty,
        }, meaning)
    {
    }

    /// <summary>A number of any size.</summary>
    public NumberField(string name, string meaning = "")
        : this(name, NoLeast, NoMost, meaning)
    {
    }

    /// <summary>Least and greatest value, and why.</summary>
    public FieldRange Range { get; }

    /// <summary>Whether the ends of the range are not allowed themselves.</summary>
    public bool EndsExcluded { get; init; }

    /// <summary>The one word that may stand in place of a number, or null.</summary>
    public string? OrWord { get; init; }

    /// <summary>Whether low, likely and high may stand in place of the number.</summary>
    public bool OrSpread { get; init; }

    /// <summary>Unit where the name does not say it, or null.</summary>
    public string? Unit { get; init; }

    /// <summary>What counts where it is left out, or null.</summary>
    public double? Default { get; init; }

    /// <inheritdoc/>
    public override string UnitWord => Unit ?? Range.Unit;

    /// <inheritdoc/>
    public override JsonNode? Fallback => Default;

    /// <inheritdoc/>
    public override string Kind => OrWord is null ? KindOfNumber : $"`{OrWord}` or {KindOfNumber}";

    /// <inheritdoc/>
    protected override string OwnRange => (double.IsFinite(Range.Low), double.IsFinite(Range.High)) switch
    {
        (true, true) when EndsExcluded => $"above {Digits(Range.Low)}, below {Digits(Range.High)}",
        (true, true) => $"{Digits(Range.Low)} to {Digits(Range.High)}",
        (true, false) => EndsExcluded ? $"above {Digits(Range.Low)}" : $"at least {Digits(Range.Low)}",
        (false, true) => $"at most {Digits(Range.High)}",
        _ => string.Empty,
    };

    /// <summary>Word of schemas for the number.</summary>
    protected virtual string SchemaType => "number";

    /// <summary>Word of the reference page for the number.</summary>
    protected virtual string KindOfNumber => "number";

    /// <summary>Whether the range holds a value.</summary>
    public bool Holds(double value) => EndsExcluded ? value > Range.Low && value < Range.High : value >= Range.Low && value <= Range.High;

    /// <summary>What to say of a value outside the range.</summary>
    public string Outside(double value)
    {
        string unit = Range.Reason.Length == 0 || UnitWord.Length == 0 ? string.Empty : " " + UnitWord;
        string reason = Range.Reason.Length == 0 ? string.Empty : ": " + Range.Reason;
        string allowed = (double.IsFinite(Range.Low), double.IsFinite(Range.High)) switch
        {
            (true, false) when EndsExcluded => string.Create(CultureInfo.InvariantCulture, $"is not above {Range.Low:R}"),
            (true, false) => string.Create(CultureInfo.InvariantCulture, $"is below {Range.Low:R}"),
            (false, true) => string.Create(CultureInfo.InvariantCulture, $"is above {Range.High:R}"),
            _ => string.Create(CultureInfo.InvariantCulture, $"is outside {Range.Low:R} to {Range.High:R}"),
        };
        return string.Create(CultureInfo.InvariantCulture, $"{value:R}{unit} {allowed}{unit}{reason}");
    }

    /// <inheritdoc/>
    internal override JsonObject ValueSchema()
    {
        JsonObject schema = Bounded(new JsonObject { ["type"] = SchemaType });
        if (OrWord is not null)
        {
            return new JsonObject { ["oneOf"] = new JsonArray(new JsonObject { ["const"] = OrWord }, schema) };
        }

        return OrSpread ? new JsonObject { ["oneOf"] = new JsonArray(schema, Spread()) } : schema;
    }

    private static string Digits(double value) => value.ToString("0.################", CultureInfo.InvariantCulture);

    private JsonObject Spread()
    {
        string[] names = [SpreadFields.Low.Name, SpreadFields.Likely.Name, SpreadFields.High.Name];
        JsonObject each = [];
        foreach (string name in names)
        {
            each[name] = Bounded(new JsonObject { ["type"] = SchemaType });
        }

        each[SpreadFields.Shape.Name] = SpreadFields.Shape.ValueSchema();
        return new JsonObject
        {
            ["type"] = "object",
            ["additionalProperties"] = false,
            ["required"] = new JsonArray([.. names.Select(name => (JsonNode)name)]),
            ["properties"] = each,
        };
    }

    private JsonObject Bounded(JsonObject schema)
    {
        if (double.IsFinite(Range.Low))
        {
            schema[EndsExcluded ? "exclusiveMinimum" : "minimum"] = Range.Low;
        }

        if (double.IsFinite(Range.High))
        {
            schema[EndsExcluded ? "exclusiveMaximum" : "maximum"] = Range.High;
        }

        return schema;
    }
}
