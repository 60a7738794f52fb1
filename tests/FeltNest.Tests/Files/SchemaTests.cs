using System.Reflection;
using System.Text;
using System.Text.Json;
using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Files.Layouts;
using FeltNest.Files.Panels;
using FeltNest.Layout;
using FeltNest.Tests.Drawing;
using Xunit;

namespace FeltNest.Tests.Files;

/// <summary>The schemas say the same as the readers and writers.</summary>
public sealed class SchemaTests
{
    [Fact]
    public void Ranges_of_the_ball_schema_are_those_the_reader_keeps()
    {
        JsonElement schema = Schema("ball");
        FieldRange[] ranges =
        [
            .. typeof(BallRanges).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (FieldRange)field.GetValue(null)!),
        ];

        Assert.True(ranges.Length >= 18);
        foreach (FieldRange range in ranges)
        {
            JsonElement field = schema;
            foreach (string name in range.Field.Split('.'))
            {
                field = field.GetProperty("properties").GetProperty(name);
            }

            field = field.TryGetProperty("oneOf", out JsonElement choices)
                ? choices.EnumerateArray().Single(choice => choice.TryGetProperty("minimum", out _))
                : field;
            Assert.Equal(
                (range.Field, range.Low, range.High),
                (range.Field, field.GetProperty("minimum").GetDouble(), field.GetProperty("maximum").GetDouble()));
        }
    }

    [Fact]
    public void Words_of_the_schemas_are_those_of_the_program()
    {
        JsonElement ball = Schema("ball").GetProperty("properties");

        Assert.Equal(EnumWord.All<RuleType>(), Words(ball.GetProperty("ruleType")));
        Assert.Equal(
            EnumWord.All<FeltConstruction>(), Words(ball.GetProperty("felt").GetProperty("properties").GetProperty("construction")));
        Assert.Equal(EnumWord.All<SeamFamily>(), Words(ball.GetProperty("seam").GetProperty("properties").GetProperty("curve")));
        Assert.Equal(
            EnumWord.All<FlatteningMethod>(), Words(ball.GetProperty("panel").GetProperty("properties").GetProperty("flattening")));
        Assert.Equal(EnumWord.All<EdgeRule>(), Words(ball.GetProperty("panel").GetProperty("properties").GetProperty("edge")));
        Assert.Equal(
            EnumWord.All<RowRule>(),
            Words(Schema("layout").GetProperty("properties").GetProperty("rules").GetProperty("properties").GetProperty("rows")));
    }

    [Fact]
    public void What_is_written_and_what_is_shipped_fits_its_schema()
    {
        Holds(Schema("layout"), Parse(LayoutWriter.Write(SampleLayout.OneRepeat, SampleLayout.Yields)), "layout");
        Holds(Schema("layout"), Parse(LayoutWriter.Write(SampleLayout.TwoBands, SampleLayout.Yields)), "layout");
        Holds(Schema("panel"), Parse(PanelWriter.Write(SamplePanel.Ball, SamplePanel.Panel)), "panel");
        Holds(Schema("panel"), Parse(PanelWriter.Write(SamplePanel.Ball, SamplePanel.Held)), "panel");
        Holds(Schema("outline"), Parse(File.ReadAllBytes(RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json"))), "outline");
        foreach (string name in Directory.GetFiles(RepositoryFile.PathOf("shapes", "balls")))
        {
            Holds(Schema("ball"), Parse(File.ReadAllBytes(name)), Path.GetFileName(name));
        }
    }

    // The part of the schema language the schemas use for objects and lists: known fields only, required fields there.
    private static void Holds(JsonElement schema, JsonElement value, string path)
    {
        if (value.ValueKind == JsonValueKind.Array && schema.TryGetProperty("items", out JsonElement item))
        {
            Assert.All(value.EnumerateArray(), element => Holds(item, element, path + "[]"));
        }

        if (value.ValueKind != JsonValueKind.Object || !schema.TryGetProperty("properties", out JsonElement known))
        {
            return;
        }

        foreach (JsonElement required in schema.TryGetProperty("required", out JsonElement names) ? names.EnumerateArray().ToArray() : [])
        {
            Assert.True(value.TryGetProperty(required.GetString()!, out _), $"{path}.{required} is missing");
        }

        foreach (JsonProperty field in value.EnumerateObject())
        {
            Assert.True(known.TryGetProperty(field.Name, out JsonElement inner), $"{path}.{field.Name} is not in the schema");
            Holds(inner, field.Value, $"{path}.{field.Name}");
        }
    }

    private static string[] Words(JsonElement field) => [.. field.GetProperty("enum").EnumerateArray().Select(word => word.GetString()!)];

    private static JsonElement Schema(string name) =>
        Parse(File.ReadAllBytes(RepositoryFile.PathOf("shapes", "schema", $"{name}.schema.json")));

    private static JsonElement Parse(byte[] json) => JsonDocument.Parse(Encoding.UTF8.GetString(json)).RootElement;
}
