using System.Text.Json;

namespace FeltNest.Files.Check;

/// <summary>A result file as it states itself, with what a check has looked at and what it found wrong.</summary>
/// <param name="path">The file, as messages call it.</param>
/// <param name="schema">What kind of result it says it is.</param>
/// <param name="root">Its top-level object.</param>
/// <param name="known">Names of fields that another check looks at; empty where this file's own check does.</param>
internal sealed class StatedFile(string path, string schema, JsonElement root, params IEnumerable<string> known)
{
    private readonly HashSet<string> seen = ["schema", .. known];
    private readonly List<string> violations = [];

    /// <summary>What kind of result it says it is.</summary>
    public string Schema => schema;

    /// <summary>Its top-level fields.</summary>
    public StatedFields Top => new(this, root, string.Empty, string.Empty);

    /// <summary>The same file; what is read of it does not count as looked at here.</summary>
    public StatedFields Given => new StatedFile(path, schema, root).Top;

    /// <summary>What is wrong, one clear line each.</summary>
    public IReadOnlyList<string> Violations => violations;

    /// <summary>Fields that no check has looked at, by name, in the order of the file; an object of which nothing was looked at stands for
    /// all its fields.</summary>
    public IReadOnlyList<string> NotSeen => [.. Unseen(root, string.Empty).Distinct()];

    internal string Path => path;

    internal void See(string name) => seen.Add(name);

    internal void Report(string line) => violations.Add(line);

    private IEnumerable<string> Unseen(JsonElement element, string name)
    {
        switch (element.ValueKind)
        {
            case var _ when seen.Contains(name):
                return [];
            case JsonValueKind.Object when name.Length == 0 || seen.Any(s => s.StartsWith($"{name}.", StringComparison.Ordinal)):
                return element.EnumerateObject().SelectMany(field => Unseen(field.Value, StatedFields.Joined(name, field.Name)));
            case JsonValueKind.Array when element.EnumerateArray().Any(e => e.ValueKind == JsonValueKind.Object):
                return element.EnumerateArray().SelectMany(item => Unseen(item, name));
            default:
                return [name];
        }
    }
}
