using System.Text.RegularExpressions;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Readme;

/// <summary>The glossary has one word for a thing, and what a user sees keeps to it.</summary>
public sealed partial class GlossaryTests
{
    private static readonly string[][] Rows =
    [
        .. File.ReadLines(RepositoryFile.PathOf("src", "FeltNest.Cli", "GLOSSARY.md"))
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal) && !line.StartsWith("| word ", StringComparison.Ordinal))
            .Select(line => (string[])[.. line.Trim('|', ' ').Split('|').Select(cell => cell.Trim())]),
    ];

    private static readonly string[] Strays =
        [.. Rows.Where(row => row.Length > 3).SelectMany(row => row[3].Split(", ", StringSplitOptions.RemoveEmptyEntries))];

    private static readonly Regex Stray = new(
        @"\b(" + string.Join('|', Strays.Select(word => Regex.Escape(word).Replace("\\ ", "[ -]", StringComparison.Ordinal))) + @")\b",
        RegexOptions.IgnoreCase);

    [Fact]
    public void Every_word_stands_once_and_has_a_meaning_and_a_place()
    {
        string[] words = [.. Rows.SelectMany(row => row[0].Split(", "))];

        Assert.True(words.Length > 30);
        Assert.Equal(words.Distinct(), words);
        Assert.All(Rows, row => Assert.True(row.Length >= 3 && row[1].Length > 0 && row[2].Length > 0, row[0]));
        Assert.Empty(words.Intersect(Strays));
    }

    [Fact]
    public void What_a_user_sees_says_no_other_word()
    {
        foreach ((string place, string text) in Seen())
        {
            Match found = Stray.Match(text);
            Assert.False(found.Success, $"{place}: '{found.Value}' in: {text}");
        }
    }

    [Theory]
    [InlineData("of each roll the Cloth that is left", "Cloth")]
    [InlineData("pairs of one class", "one class")]
    [InlineData("called --guide-play", "guide-play")]
    [InlineData("the layout of a clothes line", "")]
    public void A_stray_word_is_found_whatever_its_case_and_no_part_of_another_word(string text, string found) =>
        Assert.Equal(found, Stray.Match(text).Value);

    [Fact]
    public void Help_tables_sheets_and_pages_are_looked_at()
    {
        string[] places = [.. Seen().Select(seen => Path.GetFileName(seen.Place)).Distinct()];

        Assert.Superset(
            new HashSet<string> { "RollCommand.cs", "RollReport.cs", "TicketSheet.cs", "RollDocument.cs", "page.html", "planner.md" },
            new HashSet<string>(places));
    }

    // Words of a program are its literals with a blank in them: a name without one is a field, a class or a mark of a drawing.
    private static IEnumerable<(string Place, string Text)> Seen()
    {
        string[] projects =
            ["FeltNest", "FeltNest.Records", "FeltNest.Verify", "FeltNest.Runs", "FeltNest.Book", "FeltNest.Cli", "FeltNest.Page"];
        foreach (string file in projects.SelectMany(project =>
            Directory.EnumerateFiles(RepositoryFile.PathOf("src", project), "*.cs", SearchOption.AllDirectories)))
        {
            if (file.Contains("/obj/", StringComparison.Ordinal) || file.Contains("/bin/", StringComparison.Ordinal))
            {
                continue;
            }

            foreach (string line in File.ReadLines(file).Where(line => !line.TrimStart().StartsWith("//", StringComparison.Ordinal)))
            {
                foreach (Match literal in Literals().Matches(line).Where(m => m.Value.Contains(' ', StringComparison.Ordinal)))
                {
                    yield return (file, literal.Value);
                }
            }
        }

        string[] pages =
        [
            RepositoryFile.PathOf("README.md"), RepositoryFile.PathOf("CHANGELOG.md"),
            RepositoryFile.PathOf("src", "FeltNest.Cli", "COMMANDS.md"), RepositoryFile.PathOf("src", "FeltNest.Cli", "README.md"),
            RepositoryFile.PathOf("src", "FeltNest", "README.md"),
            .. Directory.EnumerateFiles(RepositoryFile.PathOf("shapes"), "*.md", SearchOption.AllDirectories),
            RepositoryFile.PathOf("src", "FeltNest.Page", "Assets", "page.html"),
        ];
        foreach (string page in pages)
        {
            foreach (string line in File.ReadLines(page))
            {
                // An option's old name stands beside its new one for this version.
                yield return (page, line.Replace("--side-shift, --guide-play", "--side-shift", StringComparison.Ordinal));
            }
        }
    }

    [GeneratedRegex("\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Literals();
}
