using FeltNest.Files;
using FeltNest.Files.Fields;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Readme;

/// <summary>The schemas and the page of fields are what the descriptions say.</summary>
public sealed class FieldReferenceTests
{
    private const string Write = "FELTNEST_WRITE_PAGES";

    private static readonly string Page = RepositoryFile.PathOf("shapes", "schema", "README.md");

    private static bool IsToBeWritten => Environment.GetEnvironmentVariable(Write) == "1";

    public static TheoryData<string> Names => [.. Documents.All.Select(document => document.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_schema_is_in_step_with_its_description(string name)
    {
        string file = Path.Combine(RepositoryFile.PathOf("shapes", "schema"), $"{name}.schema.json");
        string made = JsonSchema.Text(Documents.All.Single(document => document.Name == name));
        if (IsToBeWritten)
        {
            File.WriteAllText(file, made);
        }

        string written = File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n") : string.Empty;
        Assert.True(written == made, $"{file} does not say what the description says; run this test once with {Write}=1");
    }

    [Fact]
    public void The_page_of_fields_is_in_step_with_the_descriptions()
    {
        string written = File.ReadAllText(Page).ReplaceLineEndings("\n");
        string made = written;
        foreach ((string name, string table) in Documents.All.Select(d => (d.Name, ReferenceTable.Of(d)))
            .Concat(Documents.Lists.Select(l => (l.Name, ReferenceTable.Of(l))))
            .Concat(Documents.Results.Select(l => (l.Name, ReferenceTable.OfResult(l)))))
        {
            made = WithTable(made, name, table);
        }

        if (IsToBeWritten)
        {
            File.WriteAllText(Page, made);
            written = made;
        }

        Assert.True(written == made, $"{Page} does not say what the descriptions say; run this test once with {Write}=1");
    }

    [Fact]
    public void No_schema_stands_there_that_no_document_has() => Assert.Equal(
        Documents.All.Select(document => $"{document.Name}.schema.json").Order(),
        Directory.GetFiles(RepositoryFile.PathOf("shapes", "schema"), "*.json").Select(Path.GetFileName).Order());

    // The section of the name with the table in place of its own; what is written by hand before it stays.
    private static string WithTable(string page, string name, string table)
    {
        int start = page.IndexOf($"\n## {name}\n", StringComparison.Ordinal);
        Assert.True(start >= 0, $"{Page} has no section '## {name}': write its heading and who reads or writes it");
        int next = page.IndexOf("\n## ", start + 1, StringComparison.Ordinal);
        int end = next < 0 ? page.Length : next;
        string[] words = [.. page[start..end].Split('\n').Where(line => !line.StartsWith('|'))];
        string head = string.Join('\n', words).TrimEnd();
        return $"{page[..start]}\n{head.TrimStart()}\n\n{table}{page[end..]}";
    }
}
