using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Files.Costs;
using FeltNest.Files.Dies;
using FeltNest.Files.Felts;
using FeltNest.Files.Fields;
using FeltNest.Files.Layouts;
using FeltNest.Files.Offers;
using FeltNest.Files.Orders;
using FeltNest.Files.Outlines;
using FeltNest.Files.Presses;
using FeltNest.Files.Rolls;
using FeltNest.Files.Usage;
using FeltNest.Page.Inputs;
using FeltNest.Tests.Cli;
using Xunit;

namespace FeltNest.Tests.Files;

/// <summary>A sound document that is spoiled in one place is refused there, by its schema and by its reader: every range, every required
/// field, every word and every unknown field.</summary>
public sealed class SpoiledDocumentTests
{
    private static readonly Dictionary<string, Func<InputText, object>> Readers = new()
    {
        ["ball"] = text => BallReader.Read(text),
        ["outline"] = OutlineReader.Read,
        ["costs"] = CostsReader.Read,
        ["press"] = PressReader.Read,
        ["roll"] = RollReader.Read,
        ["die-order"] = DieOrderReader.Read,
        ["layout"] = LayoutReader.Read,
        ["die-life"] = LifeReader.Read,
        ["felt"] = FeltReader.Read,
    };

    // Fields that a reader of results has no use for, so only their schema holds them.
    private static readonly string[] Unread =
    [
        "die-life.panelProfileMm", "die-life.strikes", "die-life.failed", "die-life.driftLimit", "die-life.statedLife", "die-life.die",
        "die-life.drifts", "die-life.readings", "die-life.revision", "die-life.supersededBy", "layout.laid",
        "felt.curves", "felt.shearGain", "felt.edge", "felt.remarks", .. FeltDocument.ValuesFields.Set.Names
            .SelectMany(name => FeltDocument.FigureFields.Set.Names.Select(spread => $"felt.values.{name}.{spread}")),
    ];

    public static TheoryData<string, string> Sound
    {
        get
        {
            TheoryData<string, string> all = [];
            foreach (string file in (string[])
            [
                "balls/type-2.json", "demo/gap-budget-ball.json", "outlines/dog-bone.json", "demo/costs.json",
                "demo/presses/beam-press.json",
                "demo/rolls/roll-a17.json",
                "demo/dies/gang-die.json",
            ])
            {
                string path = RepositoryFile.PathOf("shapes", file);
                all.Add(Kind(File.ReadAllText(path)), File.ReadAllText(path));
            }

            all.Add("felt", Encoding.UTF8.GetString(SampleResults.Of("felt", CancellationToken.None)));
            all.Add("layout", Encoding.UTF8.GetString(LayoutWriter.Write(SampleLayout.OneRepeat, SampleLayout.Yields)));
            all.Add("layout", Encoding.UTF8.GetString(LayoutWriter.Write(SampleLayout.TwoBands, SampleLayout.Yields)));
            all.Add("die-life", """
                { "schema": "feltnest/die-life/1", "name": "D", "revision": "A", "supersededBy": null, "panelProfileMm": 1.2,
                  "strikes": 9000, "failed": false, "reRuleAt": 5000.5, "driftLimit": 5000.5, "statedLife": null, "die": null,
                  "drifts": [], "readings": [] }
                """);
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_document_spoiled_in_one_place_is_refused_by_schema_and_reader(string kind, string sound)
    {
        Document document = Documents.All.Single(one => one.Name == kind);
        Assert.Null(SchemaFile.Misfit(kind, Encoding.UTF8.GetBytes(sound)));
        Readers[kind](InputText.Of("sound.json", Encoding.UTF8.GetBytes(sound)));

        int count = 0;
        foreach (Spoil spoil in Spoils(document.Fields, JsonNode.Parse(sound)!.AsObject(), kind))
        {
            JsonNode spoiled = JsonNode.Parse(sound)!;
            spoil.Apply(spoiled.AsObject());
            byte[] bytes = JsonSerializer.SerializeToUtf8Bytes(spoiled);
            Assert.True(SchemaFile.Misfit(kind, bytes) is not null, $"the schema takes {spoil.What}");
            if (!Array.Exists(Unread, spoil.What.StartsWith))
            {
                InputException? error = Record.Exception(() => Readers[kind](InputText.Of("bad.json", bytes))) as InputException;
                Assert.True(error is not null, $"the reader takes {spoil.What}");
                Assert.StartsWith("bad.json", error.Message, StringComparison.Ordinal);
            }

            count++;
        }

        Assert.True(count > 10);
    }

    [Fact]
    public void A_range_said_once_is_the_schemas_the_readers_and_the_references()
    {
        NumberField field = PressDocument.BedFields.LengthMm;

        Assert.Same(ShopRanges.BedSide, field.Range);
        Assert.Contains($"\"maximum\": {field.Range.High}", JsonSchema.Text(PressDocument.Document), StringComparison.Ordinal);
        Assert.Contains(
            "| `bed.lengthMm` | number | 20 to 10000 | mm |", ReferenceTable.Of(PressDocument.Document), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bedLength")]
    [InlineData("bedWidth")]
    [InlineData("bedMargin")]
    [InlineData("pressForce")]
    [InlineData("feedPlay")]
    [InlineData("guidePlay")]
    [InlineData("rollLength")]
    [InlineData("endLoss")]
    [InlineData("faults")]
    [InlineData("core")]
    [InlineData("warpDeg")]
    public void A_field_of_the_page_has_the_range_of_its_documents(string name)
    {
        NumberField described = name switch
        {
            "bedLength" => PressDocument.BedFields.LengthMm,
            "bedWidth" => PressDocument.BedFields.WidthMm,
            "bedMargin" => PressDocument.BedFields.MarginMm,
            "pressForce" => PressDocument.RatedForceKn,
            "feedPlay" => PressDocument.FeedToleranceMm,
            "guidePlay" => PressDocument.GuideToleranceMm,
            "rollLength" => CostsDocument.RollFields.LengthM,
            "endLoss" => CostsDocument.RollFields.EndLossMm,
            "faults" => CostsDocument.RollFields.FaultPercent,
            "core" => BallDocument.CoreFields.OuterDiameterMm,
            _ => BallDocument.PanelFields.WarpAngleDeg,
        };

        Assert.Same(described.Range, AddressReader.Numbers.Single(field => field.Name == name).Range);
    }

    [Fact]
    public void One_length_of_roll_holds_on_offer_in_stock_and_measured() => Assert.All(
        (NumberField[])
        [
            OffersListing.LengthM, StockListing.LengthM, ActualsListing.Metres, CostsDocument.RollFields.LengthM, RollDocument.LengthM,
        ],
        field => Assert.Same(ShopRanges.RollLength, field.Range));

    private static IEnumerable<Spoil> Spoils(FieldSet fields, JsonObject at, string path)
    {
        yield return new Spoil($"{path}: a field that is not known", Steps(at), holder => holder["notKnown"] = 1);
        foreach (Field field in fields.All)
        {
            string name = field.Name;
            if (at[name] is not { } value)
            {
                continue;
            }

            string what = $"{path}.{name}";
            if (field.IsRequired)
            {
                yield return new Spoil($"{what}: missing", Steps(at), holder => holder.Remove(name));
            }

            foreach ((string how, Func<JsonNode> bad) in Bad(field, value))
            {
                yield return new Spoil($"{what}: {how}", Steps(at), holder => holder[name] = bad());
            }

            foreach (Spoil inner in Inside(field, value, what))
            {
                yield return inner;
            }
        }
    }

    private static IEnumerable<Spoil> Inside(Field field, JsonNode value, string what) => (field, value) switch
    {
        (ObjectField one, JsonObject inner) => Spoils(one.Fields, inner, what),
        (ObjectsField many, JsonArray { Count: > 0 } list) => Spoils(many.Fields, list[0]!.AsObject(), what + "[0]"),
        _ => [],
    };

    private static IEnumerable<(string How, Func<JsonNode> Bad)> Bad(Field field, JsonNode value)
    {
        yield return ("of another kind", () => value is JsonValue ? new JsonArray() : JsonValue.Create(true));
        if (field is NumberField number && value.GetValueKind() == JsonValueKind.Number)
        {
            double step = number is WholeField ? 1 : 0;
            if (double.IsFinite(number.Range.Low))
            {
                yield return ("below its range", () => JsonValue.Create(Beyond(number.Range.Low, -1, step)));
            }

            if (double.IsFinite(number.Range.High))
            {
                yield return ("above its range", () => JsonValue.Create(Beyond(number.Range.High, 1, step)));
            }
        }

        if (field is WordField or CurrencyField)
        {
            yield return ("no word of it", () => JsonValue.Create("?1"));
        }

        if (field is TextField { MostLetters: { } most })
        {
            yield return ("too long", () => JsonValue.Create(new string('x', most + 1)));
        }

        if (field is ListField { Least: > 0 })
        {
            yield return ("with too few entries", () => new JsonArray());
        }
    }

    private static double Beyond(double end, int side, double step)
    {
        if (step > 0)
        {
            return end + (side * step);
        }

        return side > 0 ? double.BitIncrement(end) : end == 0 ? -1e-9 : double.BitDecrement(end);
    }

    // The way from the top of a document to one of its objects.
    private static object[] Steps(JsonNode node)
    {
        List<object> steps = [];
        for (JsonNode at = node; at.Parent is { } parent; at = parent)
        {
            steps.Insert(0, parent is JsonArray ? at.GetElementIndex() : at.GetPropertyName());
        }

        return [.. steps];
    }

    private static string Kind(string json) => JsonNode.Parse(json)!["schema"]!.GetValue<string>().Split('/')[1];

    private sealed record Spoil(string What, object[] Steps, Action<JsonObject> Change)
    {
        public void Apply(JsonObject top)
        {
            JsonNode at = top;
            foreach (object step in Steps)
            {
                at = step is int index ? at[index]! : at[(string)step]!;
            }

            Change(at.AsObject());
        }
    }
}
