using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

/// <summary>Every kind of result can be checked, and a number of it that is said to be checked cannot be spoiled unseen.</summary>
public sealed class SpoiledResultTests : IDisposable
{
    private readonly TempFolder folder = new();

    public static TheoryData<string> Kinds => [.. SampleResults.Kinds];

    public void Dispose() => folder.Dispose();

    [Theory, MemberData(nameof(Kinds))]
    public async Task A_result_passes_and_no_number_that_is_checked_can_be_spoiled(string kind)
    {
        byte[] sound = SampleResults.Of(kind, TestContext.Current.CancellationToken);
        CommandRun run = await CommandRun.Of("check", folder.Write("sound.json", System.Text.Encoding.UTF8.GetString(sound)), "--json");
        Assert.True(run.Code == 0, run.Out + run.Err);
        string[] open = [.. JsonDocument.Parse(run.Out).RootElement.GetProperty("notChecked").EnumerateArray().Select(f => f.GetString()!)];

        List<string> unseen = [];
        int violations = 0;

        // A layout inside another file is checked as one alone is.
        foreach ((string name, string place) in Numbers(JsonNode.Parse(sound)!)
            .Where(n => !n.Name.StartsWith("layout.", StringComparison.Ordinal)))
        {
            if (!open.Any(field => name == field || name.StartsWith($"{field}.", StringComparison.Ordinal)))
            {
                // A little and a lot, up and down: a limit is only seen when it is passed.
                int code = 0;
                foreach (double way in (double[])[1, -1, 100, -100])
                {
                    code = code == 0 ? await Spoiled(sound, place, way) : code;
                }

                violations += code == 4 ? 1 : 0;
                unseen.AddRange(code == 0 ? [name] : []);
            }
        }

        Assert.Empty(unseen);
        Assert.True(violations > 1);
    }

    [Fact]
    public async Task What_was_not_checked_is_named_on_the_report()
    {
        string path =
            folder.Write("a.json", System.Text.Encoding.UTF8.GetString(SampleResults.Of("first-article", CancellationToken.None)));

        string told = (await CommandRun.Of("check", path)).Out;

        Assert.Contains("not checked: name, widestGapPlace, turnDeg, mirrored", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("waist", "waists")]
    [InlineData("usage", "standard")]
    [InlineData("panel", "areaMm2")]
    public async Task A_result_without_a_field_that_is_checked_is_refused(string kind, string field)
    {
        JsonNode root = JsonNode.Parse(SampleResults.Of(kind, TestContext.Current.CancellationToken))!;
        root.AsObject().Remove(field);

        CommandRun run = await CommandRun.Of("check", folder.Write("short.json", root.ToJsonString()));

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains($": {field}", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_panel_whose_outline_crosses_itself_is_a_violation_and_no_fault_of_the_program()
    {
        JsonNode root = JsonNode.Parse(SampleResults.Of("panel", TestContext.Current.CancellationToken))!;
        JsonArray outline = root["outline"]!.AsArray();
        int half = outline.Count / 2;
        JsonNode first = outline[half / 2]!.DeepClone();
        outline[half / 2] = outline[half + (half / 2)]!.DeepClone();
        outline[half + (half / 2)] = first;

        CommandRun run = await CommandRun.Of("check", folder.Write("crossing.json", root.ToJsonString()), "--json");

        Assert.Equal(4, run.Code);
        Assert.Contains("crosses itself", run.Out, StringComparison.Ordinal);
    }

    // The first place of every name that holds a number; a row of numbers by its last.
    private static IEnumerable<(string Name, string Place)> Numbers(JsonNode root)
    {
        Dictionary<string, string> first = [];
        Walk(root, string.Empty);
        return first.Select(f => (f.Key, f.Value));

        void Walk(JsonNode? node, string name)
        {
            switch (node)
            {
                case JsonObject fields:
                    foreach ((string field, JsonNode? value) in fields)
                    {
                        Walk(value, name.Length == 0 ? field : $"{name}.{field}");
                    }

                    break;
                case JsonArray items:
                    IEnumerable<JsonNode?> told = items.LastOrDefault() is JsonValue last ? new[] { last } : items;
                    foreach (JsonNode? item in told)
                    {
                        Walk(item, name);
                    }

                    break;
                case JsonValue value when value.GetValueKind() == JsonValueKind.Number:
                    first.TryAdd(name, value.GetPath());
                    break;
            }
        }
    }

    private async Task<int> Spoiled(byte[] sound, string place, double way)
    {
        JsonNode root = JsonNode.Parse(sound)!;
        JsonValue value =
            Numbers(root).Select(n => n.Place).Contains(place) ? Found(root, place) : throw new InvalidOperationException(place);
        double number = value.GetValue<double>();
        value.ReplaceWith(number == Math.Floor(number) ? number + (3 * way) : (number * (1 + (0.25 * way))) + (0.5 * way));
        return (await CommandRun.Of("check", folder.Write("spoiled.json", root.ToJsonString()), "--quiet")).Code;
    }

    private static JsonValue Found(JsonNode node, string place) => node switch
    {
        JsonValue value => value.GetPath() == place ? value : throw new InvalidOperationException(place),
        JsonObject fields => Found(fields.Select(f => f.Value!).First(f => f is not null && Leads(f, place)), place),
        _ => Found(node.AsArray().First(f => f is not null && Leads(f, place))!, place),
    };

    private static bool Leads(JsonNode node, string place) =>
        place == node.GetPath() || place.StartsWith($"{node.GetPath()}.", StringComparison.Ordinal)
        || place.StartsWith($"{node.GetPath()}[", StringComparison.Ordinal);
}
