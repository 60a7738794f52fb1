using System.Text.Json;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Readme;

/// <summary>The page that lists the fields names every field of every schema.</summary>
public sealed class FieldReferenceTests
{
    [Theory]
    [InlineData("ball")]
    [InlineData("outline")]
    [InlineData("panel")]
    [InlineData("layout")]
    [InlineData("wrap")]
    [InlineData("waist")]
    [InlineData("seams")]
    [InlineData("proven")]
    [InlineData("costs")]
    [InlineData("compare")]
    [InlineData("press")]
    [InlineData("usage")]
    [InlineData("roll")]
    [InlineData("roll-plan")]
    [InlineData("die-order")]
    [InlineData("die")]
    [InlineData("first-article")]
    [InlineData("die-life")]
    [InlineData("order-plan")]
    public void Every_field_of_a_schema_is_in_the_reference(string name)
    {
        string page = File.ReadAllText(RepositoryFile.PathOf("shapes", "schema", "README.md"));
        string part =
            page[page.IndexOf($"\n## {name}\n", StringComparison.Ordinal)..].Split("\n## ", StringSplitOptions.RemoveEmptyEntries)[0];
        JsonElement schema =
            JsonDocument.Parse(File.ReadAllText(RepositoryFile.PathOf("shapes", "schema", $"{name}.schema.json"))).RootElement;

        string[] fields = [.. Fields(schema, string.Empty)];
        Assert.True(fields.Length > 5);
        Assert.All(fields, field => Assert.Contains($"\n| `{field}` |", part, StringComparison.Ordinal));
    }

    private static IEnumerable<string> Fields(JsonElement schema, string path)
    {
        if (schema.TryGetProperty("items", out JsonElement items) && items.ValueKind == JsonValueKind.Object)
        {
            return Fields(items, path + "[]");
        }

        string before = path.Length == 0 ? string.Empty : path + ".";
        return !schema.TryGetProperty("properties", out JsonElement properties)
            ? []
            : properties.EnumerateObject()
                .Where(field => path.Length > 0 || field.Name is not ("$schema" or "sources" or "assumptions"))
                .SelectMany(field => Fields(field.Value, before + field.Name).Prepend(before + field.Name));
    }
}
