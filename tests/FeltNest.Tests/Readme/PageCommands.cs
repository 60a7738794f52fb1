using System.Text.RegularExpressions;
using FeltNest.Tests.Files;

namespace FeltNest.Tests.Readme;

/// <summary>The commands a page shows, in the order of the page: lines of its fenced blocks that begin with the program.</summary>
internal static partial class PageCommands
{
    /// <summary>What follows the program's name on each such line.</summary>
    /// <param name="page">Path of the page from the top of the project, its parts one by one.</param>
    public static IEnumerable<string> Of(params string[] page)
    {
        bool fenced = false;
        foreach (string line in File.ReadLines(RepositoryFile.PathOf(page)))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                fenced = !fenced;
            }
            else if (fenced && Program().Match(line) is { Success: true } start)
            {
                yield return line[start.Length..];
            }
        }
    }

    [GeneratedRegex("^(feltnest|dotnet run --project src/FeltNest.Cli -c Release --) ")]
    private static partial Regex Program();
}
