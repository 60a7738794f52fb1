using System.Text;
using FeltNest.Files.Layouts;
using FeltNest.Files.Outlines;
using FeltNest.Layout;
using Xunit;

namespace FeltNest.Tests.Files;

public sealed class LayoutFileTests : IDisposable
{
    private readonly TempFolder folder = new();

    private static string Good { get; } = Encoding.UTF8.GetString(LayoutWriter.Write(SampleLayout.OneRepeat, SampleLayout.Yields));

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_layout_comes_back_from_its_file_with_every_digit()
    {
        AssertSame(SampleLayout.OneRepeat, LayoutReader.Read(folder.Write("layout.json", Good)).Layout);
        Assert.Contains("\"repeat\"", Good, StringComparison.Ordinal);
        Assert.DoesNotContain("\"bands\"", Good, StringComparison.Ordinal);
    }

    [Fact]
    public void Bands_with_their_own_repeats_come_back_and_stand_in_place_of_the_repeat()
    {
        string text = Encoding.UTF8.GetString(LayoutWriter.Write(SampleLayout.TwoBands, SampleLayout.Yields));

        AssertSame(SampleLayout.TwoBands, LayoutReader.Read(folder.Write("layout.json", text)).Layout);
        Assert.Equal(2, text.Split("\"repeat\"").Length - 1);
        Assert.Contains("\"bands\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_without_arcs_is_written_as_straight_pieces_and_read_as_a_polygon()
    {
        LayoutPart plain = SampleLayout.Part with { Arcs = null, Ball = null, MassPerAreaGsm = null, WarpAngleDeg = 12 };
        RollLayout layout = SampleLayout.OneRepeat with { Parts = [plain] };

        LayoutPart read = LayoutReader.Read(
            folder.Write("layout.json", Encoding.UTF8.GetString(LayoutWriter.Write(layout, SampleLayout.Yields)))).Layout.Parts[
            0];

        Assert.Null(read.Arcs);
        Assert.Null(read.Ball);
        Assert.Null(read.MassPerAreaGsm);
        Assert.Equal(12, read.WarpAngleDeg);
        Assert.Equal(plain.Outline.Points, read.Outline.Points);
    }

    [Fact]
    public void Yield_and_search_may_be_left_out()
    {
        string text = Good[..Good.IndexOf("\"yield\"", StringComparison.Ordinal)].TrimEnd().TrimEnd(',') + "}";

        LayoutInput input = LayoutReader.Read(folder.Write("layout.json", text));

        Assert.Equal(["roll.usableWidthMm", "panels[0].areaMm2", "panels[0].perimeterMm"], input.Stated.Select(figure => figure.Field));
    }

    [Fact]
    public void A_sound_file_contradicts_nothing_and_a_changed_figure_is_named()
    {
        Assert.Empty(StatedYield.Contradictions(LayoutReader.Read(folder.Write("a.json", Good)), SampleLayout.Yields));

        string changed = Good.Replace("\"panelsPerMetre\": 40", "\"panelsPerMetre\": 41", StringComparison.Ordinal);
        Assert.Equal(
            ["yield.panelsPerMetre says 41, the geometry gives 40"],
            StatedYield.Contradictions(LayoutReader.Read(folder.Write("b.json", changed)), SampleLayout.Yields));
    }

    [Fact]
    public void A_layout_serves_as_an_outline_by_its_first_part()
    {
        ImportedOutline outline = OutlineReader.Read(folder.Write("layout.json", Good));

        Assert.Equal("Plate", outline.Name);
        Assert.Equal("Ball", outline.Ball);
        Assert.Equal(800, outline.MassPerAreaGsm);
        Assert.Equal(300 + (25 * Math.PI), outline.CentredArcs!.Area, 9);
    }

    [Theory]
    [InlineData("\"widthMm\": 60", "\"widthMm\": -60", "roll.widthMm: -60 mm is outside 0.1 to 100000 mm")]
    [InlineData("\"gapMm\": 5", "\"gapMm\": -1", "gapMm: -1 mm is outside 0 to 100000 mm")]
    [InlineData("\"panel\": 0", "\"panel\": 1", "repeat.panels[0].panel: 1 is outside 0 to 0")]
    [InlineData("\"panel\": 0", "\"panel\": 0.5", "repeat.panels[0].panel: 0.5 is not a whole number")]
    [InlineData("\"angleDeg\": 180", "\"angle\": 180", "repeat.panels[1].angle: is not a known field; did you mean 'angleDeg'?")]
    [InlineData("\"lengthMm\": 50", "\"lengthMm\": 0", "repeat.lengthMm: 0 mm is outside 0.1 to 100000 mm")]
    [InlineData(
        "\"rows\": \"same\"", "\"rows\": \"sane\"", "rules.rows: 'sane' is not known; allowed: same, alternate, any; did you mean 'same'?")]
    [InlineData("\"oneWay\": false", "\"oneWay\": 0", "rules.oneWay: is the number 0 where true or false is wanted")]
    [InlineData("\"repeat\": {", "\"bands\": [], \"repeat\": {", "repeat: give either 'repeat' or 'bands'")]
    [InlineData(
        "\"warpAngle\": \"free\"", "\"warpAngle\": \"design\"",
        "rules.warpAngle: \"design\" is not allowed: a number of degrees or \"free\"")]
    public void A_bad_layout_is_named_with_its_path(string good, string bad, string expected)
    {
        Assert.Contains(good, Good, StringComparison.Ordinal);
        int at = Good.IndexOf(good, StringComparison.Ordinal);
        string path = folder.Write("layout.json", Good[..at] + bad + Good[(at + good.Length)..]);

        InputException error = Assert.Throws<InputException>(() => LayoutReader.Read(path));

        Assert.StartsWith($"{path}: {expected}", error.Message, StringComparison.Ordinal);
    }

    private static void AssertSame(RollLayout expected, RollLayout read)
    {
        Assert.Equal(expected.RollWidthMm, read.RollWidthMm);
        Assert.Equal(expected.Trims, read.Trims);
        Assert.Equal(expected.GapMm, read.GapMm);
        Assert.Equal(expected.Rules, read.Rules with { Forbidden = expected.Rules.Forbidden });
        Assert.Equal(expected.Rules.Forbidden, read.Rules.Forbidden);
        Assert.Equal(expected.Search, read.Search with { Methods = expected.Search.Methods, RuleCosts = expected.Search.RuleCosts });
        Assert.Equal(expected.Search.Methods, read.Search.Methods);
        Assert.Equal(expected.Search.RuleCosts, read.Search.RuleCosts);
        Assert.Equal(expected.Bands.Count, read.Bands.Count);
        for (int i = 0; i < expected.Bands.Count; i++)
        {
            Assert.Equal(expected.Bands[i] with { Repeat = read.Bands[i].Repeat }, read.Bands[i]);
            Assert.Equal(expected.Bands[i].Repeat.LengthMm, read.Bands[i].Repeat.LengthMm);
            Assert.Equal(expected.Bands[i].Repeat.Panels, read.Bands[i].Repeat.Panels);
        }

        Assert.Equal(expected.Parts[0].Outline.Points, read.Parts[0].Outline.Points);
        Assert.Equal(expected.Parts[0].AreaMm2, read.Parts[0].AreaMm2, 9);
        Assert.Equal((expected.Parts[0].Name, expected.Parts[0].Ball, expected.Parts[0].MassPerAreaGsm, expected.Parts[0].WarpAngleDeg),
            (read.Parts[0].Name, read.Parts[0].Ball, read.Parts[0].MassPerAreaGsm, read.Parts[0].WarpAngleDeg));
    }
}
