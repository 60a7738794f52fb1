using System.Text.RegularExpressions;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests;

/// <summary>Lines and methods a person can read.</summary>
public sealed partial class ArchitectureLineTests
{
    private const int MostLines = 40;
    private const string Reason = "// Long because ";

    // The style of the house puts a member's braces on lines of their own, at the member's own depth.
    [Fact]
    public void A_method_longer_than_forty_lines_says_why()
    {
        List<string> silent = [];
        int seen = 0;
        foreach (string file in Sources())
        {
            string[] lines = File.ReadAllLines(file);
            foreach ((int from, int to) in Members(lines))
            {
                seen++;
                if (to - from + 1 > MostLines && !Told(lines, from))
                {
                    silent.Add($"{Path.GetFileName(file)}:{from + 1}, {to - from + 1} lines");
                }
            }
        }

        Assert.True(seen > 1000);
        Assert.True(silent.Count == 0, string.Join("; ", silent));
    }

    [Fact]
    public void No_file_of_the_source_has_more_than_three_hundred_lines() =>
        Assert.Empty(Sources().Where(file => File.ReadLines(file).Count() > 300).Select(file => Path.GetFileName(file)));

    [Fact]
    public void A_long_method_without_a_reason_would_be_found()
    {
        string[] body = [.. Enumerable.Repeat("        Work();", 50)];
        string[] lines = ["internal static class A", "{", "    internal static void B()", "    {", .. body, "    }", "}"];

        Assert.Equal([(2, 54)], Members(lines));
        Assert.False(Told(lines, 2));
        Assert.True(Told(["    // Long because it is one table.", "    internal static void B()"], 1));
    }

    private static IEnumerable<(int From, int To)> Members(string[] lines)
    {
        for (int open = 0; open < lines.Length; open++)
        {
            string depth = Open().Match(lines[open]).Groups[1].Value;
            if (depth.Length == 0)
            {
                continue;
            }

            int from = open;
            while (from > 0 && lines[from - 1].Length > 0 && !Comment().IsMatch(lines[from - 1]))
            {
                from--;
            }

            int to = Array.IndexOf(lines, depth + "}", open);
            bool other = lines[from..open].Any(line => TypeWord().IsMatch(line)) || !lines[open - 1].EndsWith(')');
            if (to > 0 && from < open && !other)
            {
                yield return (from, to);
            }
        }
    }

    private static bool Told(string[] lines, int from)
    {
        int at = from;
        while (at > 0 && Comment().IsMatch(lines[at - 1]))
        {
            at--;
        }

        return lines[at..from].Any(line => line.Contains(Reason, StringComparison.Ordinal));
    }

    private static IEnumerable<string> Sources() =>
        Directory.EnumerateFiles(RepositoryFile.PathOf("src"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal));

    [GeneratedRegex("^((?:    ){1,2})\\{$")]
    private static partial Regex Open();

    [GeneratedRegex(@"^\s*(//|\[)|^\s*[{}]?$")]
    private static partial Regex Comment();

    [GeneratedRegex(
        @"\b(class|struct|record|enum|interface|extension)\b|\bnew\b|=>|=\s*$|"
            + @"^\s*(if|for|foreach|while|else|switch|try|catch|finally|using|lock|do)\b")]
    private static partial Regex TypeWord();
}
