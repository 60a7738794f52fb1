using System.Text.Json.Nodes;
using FeltNest.Cli;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Runs.Dies;
using FeltNest.Tests.Files;
using FeltNest.Tests.Layout;
using Xunit;

namespace FeltNest.Tests.Cli;

/// <summary>Results stay in the folder named, whatever the inputs are called.</summary>
public sealed class ResultPlaceTests : IDisposable
{
    // Reserved names of Windows, ways out of a folder, and what file systems shorten or refuse.
    private static readonly string[] Bad =
        [
            "CON", "NUL.txt", "COM1", "name.", "name ", "..", "../../../away", "/etc/away", @"..\..\away", "C:away", "a/b", "a\u0000b",
            "-rf", "$HOME", "~", "a:b", "*?", "\u202Egnp", new string('x', 300),
        ];

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    public static TheoryData<string> BadNames => [.. Bad];

    [Theory]
    [MemberData(nameof(BadNames))]
    public void The_folder_of_a_run_never_leads_out_of_output(string name)
    {
        LayoutRequest usual = Shapes.Request(Shapes.Of(1, 0, 0, 1, 0, 0, 1), 100);
        LayoutRequest asked = usual with { Second = new SecondPart(usual.Part with { Name = name }, null) };
        string place = DefaultFolder.OfLayout("shapes/balls/type-2.json", asked, usual, null);
        string root = Path.GetFullPath("output");

        Assert.Equal(root, Path.GetDirectoryName(Path.GetFullPath(place)));
        Assert.Matches("^type-2-w100-g0-with-[A-Za-z0-9_-]*$", Path.GetFileName(place));
        Assert.InRange(Path.GetFileName(place).Length, 1, 100);
    }

    [Theory]
    [InlineData("CON")]
    [InlineData("../../../away")]
    public async Task Names_in_files_are_shown_and_never_become_paths(string name)
    {
        JsonNode ball = JsonNode.Parse(File.ReadAllText(RepositoryFile.PathOf("shapes", "balls", "type-2.json")))!;
        JsonNode part = JsonNode.Parse("""{ "schema": "feltnest/outline/1", "points": [[0,0],[60,0],[60,30],[0,30]] }""")!;
        (ball["name"], part["name"]) = (name, name);
        string layout = folder.Path("out/layout.json");
        CommandRun[] runs =
        [
            await CommandRun.Of(
                "layout", folder.Write("part.json", part.ToJsonString()), "--width", "400", "--effort", "1", "--out", folder.Path("out"),
                "--quiet"),
            await CommandRun.Of("die", layout, "--out", folder.Path("out"), "--quiet"),
            await CommandRun.Of("panel", folder.Write("ball.json", ball.ToJsonString()), "--out", folder.Path("out"), "--quiet"),
        ];

        Assert.All(runs, run => Assert.True(run.Code == 0, run.Err));
        Assert.Equal(["ball.json", "part.json"], Directory.GetFiles(folder.Root).Select(Path.GetFileName).Order());
        Assert.Equal([folder.Path("out")], Directory.GetDirectories(folder.Root, "*", SearchOption.AllDirectories));
        string[] wanted =
        [
            .. new DieRun(LayoutReader.Read(layout).Layout, 0, null, null, null).FileNames, "layout.json", "layout.pdf",
            "layout-tiles.pdf", "layout.png", "layout.svg", "panel.json", "panel.png", "panel.svg",
        ];
        Assert.Equal(
            wanted.Order(StringComparer.Ordinal),
            Directory.GetFiles(folder.Path("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_link_in_the_place_of_a_result_is_not_followed()
    {
        string outside = folder.Write("precious.txt", "mine");
        string place = folder.Path("out");
        Directory.CreateDirectory(place);
        File.CreateSymbolicLink(Path.Combine(place, "layout.svg"), outside);
        CommandRun run = await CommandRun.Of(
            "layout", RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json"), "--width", "400", "--effort", "1", "--out", place,
            "--force", "--quiet");

        Assert.True(run.Code == 0, run.Err);
        Assert.Equal("mine", File.ReadAllText(outside));
        Assert.Null(new FileInfo(Path.Combine(place, "layout.svg")).LinkTarget);
    }
}
