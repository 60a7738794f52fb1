using System.Text.RegularExpressions;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests;

/// <summary>Rooms inside a stage know each other one way: circles are named here, each with its reason.</summary>
public sealed partial class ArchitectureCircleTests
{
    private static readonly string[] Stages = ["Ball", "Seam", "Panel", "Layout", "Yield", "Design", "Cost", "Rolls", "Die"];

    // Rooms of one circle, in order, and why they may stand in it.
    private static readonly Dictionary<string, string> Allowed = new()
    {
        ["FeltNest Layout.Rows, Layout.Rows.Mixed"] = "rows of one kind and of several start each other",
        ["FeltNest Rolls.Orders.Assembly, Rolls.Orders.Model"] = "the model reads its solution back as the pieces that an assembly joins",
        [
            "FeltNest.Records Ball, Ball.Rules, Ball.Tolerance"] = "a ball carries its tolerances, which are judged by the row of rules "
                + "it names",
    };

    [Fact]
    public void Circles_between_rooms_of_a_stage_are_named_with_a_reason()
    {
        string[] found = [.. new[] { "FeltNest.Records", "FeltNest.Verify", "FeltNest" }.SelectMany(Circles).Order(StringComparer.Ordinal)];

        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), found);
    }

    // Projects cannot stand in a circle with each other: the compiler sees to that.
    private static IEnumerable<string> Circles(string project)
    {
        Dictionary<string, string> sources = Directory
            .EnumerateFiles(RepositoryFile.PathOf("src", project), "*.cs", SearchOption.AllDirectories)
            .Where(file => Stages.Contains(Room(project, file).Split('.')[0]))
            .ToDictionary(file => file, file => Comments().Replace(File.ReadAllText(file), string.Empty));
        ILookup<string, string> homes = sources.Keys.ToLookup(file => Path.GetFileNameWithoutExtension(file), file => Room(project, file));
        Dictionary<string, HashSet<string>> known = [];
        foreach ((string file, string text) in sources)
        {
            string room = Room(project, file);
            HashSet<string> rooms = known.TryGetValue(room, out HashSet<string>? held) ? held : known[room] = [];
            rooms.UnionWith(
                Names().Matches(text)
                    .SelectMany(m => homes[m.Value])
                    .Where(home => home != room && home.Split('.')[0] == room.Split('.')[0]));
        }

        return known.Keys
            .Select(room =>
                known.Keys.Where(other => other == room || (Reach(known, room, other) && Reach(known, other, room))).Order().ToArray())
            .Where(circle => circle.Length > 1)
            .Select(circle => $"{project} {string.Join(", ", circle)}")
            .Distinct();
    }

    private static bool Reach(Dictionary<string, HashSet<string>> known, string from, string to)
    {
        HashSet<string> seen = [];
        Queue<string> open = new([from]);
        while (open.TryDequeue(out string? room))
        {
            foreach (string next in known.GetValueOrDefault(room, []).Where(seen.Add))
            {
                open.Enqueue(next);
            }
        }

        return seen.Contains(to);
    }

    private static string Room(string project, string file) =>
        Path.GetRelativePath(RepositoryFile.PathOf("src", project), Path.GetDirectoryName(file)!).Replace('/', '.');

    // Names of types; what stands behind a point is a member.
    [GeneratedRegex(@"(?<![.\w])[A-Z]\w+")]
    private static partial Regex Names();

    [GeneratedRegex("//.*")]
    private static partial Regex Comments();
}
