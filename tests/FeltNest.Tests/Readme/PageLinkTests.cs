using System.Text.RegularExpressions;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Readme;

/// <summary>Links from one page of the project to another lead to a file, and to a heading where they name one.</summary>
public sealed partial class PageLinkTests
{
    private static readonly string[] Rooms = ["src", "tests", "shapes", "output"];

    [Fact]
    public void Every_link_of_a_page_leads_to_a_file_and_a_heading()
    {
        string[] pages = [.. Pages()];
        Assert.True(pages.Length > 20, "the pages are found");
        foreach (string page in pages)
        {
            foreach (Match link in Links().Matches(File.ReadAllText(page)))
            {
                string shown = $"{Path.GetRelativePath(RepositoryFile.Root, page)}: {link.Groups[1].Value}#{link.Groups[2].Value}";
                string target =
                    link.Groups[1].Length == 0 ? page : Path.GetFullPath(Path.Combine(Path.GetDirectoryName(page)!, link.Groups[1].Value));
                Assert.True(Path.Exists(target), $"{shown} leads nowhere");
                Assert.True(link.Groups[2].Length == 0 || Headings(target).Contains(link.Groups[2].Value), $"{shown} has no such heading");
            }
        }
    }

    private static IEnumerable<string> Pages() => Rooms
        .SelectMany(room => Directory.EnumerateFiles(RepositoryFile.PathOf(room), "*.md", SearchOption.AllDirectories))
        .Concat(Directory.EnumerateFiles(RepositoryFile.Root, "*.md"))
        .Where(page => !page.Contains("/bin/", StringComparison.Ordinal) && !page.Contains("/obj/", StringComparison.Ordinal));

    // A heading as links name it: small letters, spaces as dashes, no other signs.
    private static IEnumerable<string> Headings(string page) => File.ReadLines(page)
        .Where(line => line.StartsWith('#'))
        .Select(line => OtherSigns().Replace(line.TrimStart('#').Trim().ToLowerInvariant(), string.Empty).Replace(' ', '-'));

    [GeneratedRegex(@"\]\((?!https?:)([^)\s#]*)(?:#([^)\s]+))?\)")]
    private static partial Regex Links();

    [GeneratedRegex(@"[^\w\- ]")]
    private static partial Regex OtherSigns();
}
