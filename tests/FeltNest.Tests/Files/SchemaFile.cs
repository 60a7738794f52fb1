using System.Text.Json;
using Json.Schema;

namespace FeltNest.Tests.Files;

/// <summary>The published schemas, asked by a validator that is not ours.</summary>
internal static class SchemaFile
{
    private static readonly Dictionary<string, JsonSchema> Loaded = [];

    private static readonly EvaluationOptions Options = new() { OutputFormat = OutputFormat.List };

    /// <summary>Where a document first fails its schema, or null where it fits.</summary>
    public static string? Misfit(string name, ReadOnlySpan<byte> json) => Misfit(name, Parsed(json));

    /// <summary>Where a document first fails its schema, or null where it fits.</summary>
    public static string? Misfit(string name, JsonElement json)
    {
        EvaluationResults found = Schema(name).Evaluate(json, Options);
        if (found.IsValid)
        {
            return null;
        }

        IEnumerable<string> faults = (found.Details ?? [])
            .Where(part => part.Errors is not null)
            .SelectMany(part => part.Errors!.Select(error => $"{name}{part.InstanceLocation}: {error.Key} {error.Value}"));
        return string.Join('\n', faults.Reverse().Take(5).DefaultIfEmpty($"{name} is refused"));
    }

    /// <summary>The document of a text.</summary>
    public static JsonElement Parsed(ReadOnlySpan<byte> json)
    {
        ReadOnlySpan<byte> text = json is [0xEF, 0xBB, 0xBF, ..] ? json[3..] : json;
        return JsonDocument.Parse(text.ToArray()).RootElement;
    }

    private static JsonSchema Schema(string name)
    {
        lock (Loaded)
        {
            if (!Loaded.TryGetValue(name, out JsonSchema? schema))
            {
                schema = JsonSchema.FromText(File.ReadAllText(RepositoryFile.PathOf("shapes", "schema", $"{name}.schema.json")));
                Loaded.Add(name, schema);
            }

            return schema;
        }
    }
}
