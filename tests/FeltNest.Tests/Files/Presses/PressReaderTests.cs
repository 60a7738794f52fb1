using System.Text.Json;
using FeltNest.Files.Presses;
using FeltNest.Rolls;
using Xunit;

namespace FeltNest.Tests.Files.Presses;

public sealed class PressReaderTests : IDisposable
{
    private const string Sound = """
        { "schema": "feltnest/press/1", "name": "n", "ratedForceKn": 300, "bed": { "lengthMm": 420, "widthMm": 1000, "marginMm": 20 },
          "strokesPerMinute": 13, "changeOverMinutes": 20, "feedToleranceMm": 0.4, "guideToleranceMm": 0.5 }
        """;

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void What_is_left_out_has_its_stated_default()
    {
        PressSpec press = Read(Sound);

        Assert.Equal(
            (80, 240, 1, null, null), (press.AllowedSharePercent, press.AllowedForceKn, press.MostPlies, press.DaylightMm, press.Hours));
        Assert.Equal((380, 960), (press.Bed.BoardLengthMm, press.Bed.BoardWidthMm));
        Assert.Empty(press.Dies);
    }

    [Fact]
    public void The_two_presses_of_the_demo_are_read()
    {
        PressSpec beam = PressReader.Read(RepositoryFile.PathOf("shapes", "demo", "presses", "beam-press.json"));
        PressSpec head = PressReader.Read(RepositoryFile.PathOf("shapes", "demo", "presses", "head-press.json"));

        Assert.Equal((600, 2, 38, 120), (beam.RatedForceKn, beam.MostPlies, beam.Hours, beam.DaylightMm));
        Assert.Equal(
            (300, 13, 20, 0.4, 0.5),
            (head.RatedForceKn, head.StrokesPerMinute, head.ChangeOverMinutes, head.FeedToleranceMm, head.GuideToleranceMm));
    }

    [Theory]
    [InlineData("\"ratedForceKn\": 300", "\"ratedForceKn\": 0", "ratedForceKn: 0 is outside 1 to 20000")]
    [InlineData("\"ratedForceKn\": 300", "\"ratedForceT\": 30", "ratedForceT: is not a known field; did you mean 'ratedForceKn'?")]
    [InlineData("\"marginMm\": 20", "\"marginMm\": 210", "bed.marginMm: 210 leaves no bed")]
    [InlineData("\"marginMm\": 20", "\"marginMm\": null", "bed.marginMm: is null")]
    [InlineData("\"name\": \"n\"", "\"name\": \"n\", \"plies\": 0", "plies: 0 is outside 1 to 100")]
    [InlineData("\"name\": \"n\"", "\"name\": \"n\", \"allowedSharePercent\": 101", "allowedSharePercent: 101 is outside 1 to 100")]
    [InlineData("\"name\": \"n\"", "\"name\": \"n\", \"dies\": []", "dies: names no die")]
    [InlineData("\"name\": \"n\"", "\"name\": \"n\", \"dies\": [\"a\", \"a\"]", "dies: \"a\" is not allowed")]
    [InlineData("\"name\": \"n\"", "\"name\": \"n\", \"dies\": [3]", "dies: 3 is not allowed")]
    [InlineData("\"feedToleranceMm\": 0.4", "\"feedToleranceMm\": -0.4", "feedToleranceMm: -0.4 is outside 0 to 20")]
    [InlineData("press/1", "press/9", "schema: 'feltnest/press/9' cannot be used here")]
    public void A_bad_field_is_named_with_its_value(string part, string instead, string problem)
    {
        string message = Assert.Throws<InputException>(() => Read(Sound.Replace(part, instead, StringComparison.Ordinal))).Message;
        Assert.Contains("press.json: " + problem, message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', message);
    }

    [Fact]
    public void The_schema_knows_the_fields_of_the_demo()
    {
        JsonElement known = JsonDocument.Parse(
            File.ReadAllBytes(RepositoryFile.PathOf("shapes", "schema", "press.schema.json"))).RootElement
            .GetProperty("properties");
        JsonElement demo =
            JsonDocument.Parse(File.ReadAllBytes(RepositoryFile.PathOf("shapes", "demo", "presses", "beam-press.json"))).RootElement;
        Assert.All(demo.EnumerateObject(), field => Assert.True(known.TryGetProperty(field.Name, out _), field.Name));
        Assert.All(
            demo.GetProperty("bed").EnumerateObject(),
            field => Assert.True(known.GetProperty("bed").GetProperty("properties").TryGetProperty(field.Name, out _), field.Name));
    }

    private PressSpec Read(string text)
    {
        string path = folder.Path("press.json");
        File.WriteAllText(path, text);
        return PressReader.Read(path);
    }
}
