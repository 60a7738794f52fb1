using FeltNest.Files.Rolls;
using FeltNest.Rolls;
using Xunit;

namespace FeltNest.Tests.Files;

public sealed class RollReaderTests : IDisposable
{
    private const string Head = """{ "schema": "feltnest/roll/1", "name": "R", "lengthM": 10, """;
    private const string Widths = """ "widths": [ { "xM": 0, "widthMm": 1500 }, { "xM": 5, "widthMm": 1490 } ] """;

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_demo_roll_is_read()
    {
        FeltRoll roll = RollReader.Read(RepositoryFile.PathOf("shapes", "demo", "rolls", "roll-a17.json"));

        Assert.Equal(("A17", "L-2207", 30_000.0, NapDirection.Forward), (roll.Name, roll.Lot, roll.LengthMm, roll.Nap));
        Assert.Equal((13, 17_420.0), (roll.Faults.Count, roll.Splices.Single().XMm));
    }

    [Fact]
    public void Widths_between_readings_are_straight_and_beyond_them_level()
    {
        FeltRoll roll = RollReader.Read(folder.Write("roll.json", Head + Widths + "}"));

        Assert.Equal((1500, 1495, 1490, 1490), (roll.WidthAt(0), roll.WidthAt(2500), roll.WidthAt(5000), roll.WidthAt(9000)));

        // Half the length at a mean of 1495, half at 1490.
        Assert.Equal(1492.5, roll.MeanWidthMm, 9);
        Assert.Equal((0.0, null), (roll.SkewDeg, roll.Nap));
    }

    [Fact]
    public void A_roll_that_is_written_is_read_back_the_same()
    {
        FeltRoll roll = RollReader.Read(RepositoryFile.PathOf("shapes", "demo", "rolls", "roll-a17.json"));
        string again = folder.Path("again.json");
        File.WriteAllBytes(again, RollWriter.Write(roll));
        FeltRoll back = RollReader.Read(again);

        Assert.Equal(roll.Faults, back.Faults);
        Assert.Equal(roll.Widths, back.Widths);
        Assert.Equal(roll with { Faults = [], Widths = [], Splices = [] }, back with { Faults = [], Widths = [], Splices = [] });
    }

    [Theory]
    [InlineData("""{ "schema": "feltnest/rol/1" }""", "schema: 'feltnest/rol/1' cannot be used here; allowed: feltnest/roll/1")]
    [InlineData(Head + """ "widths": [] }""", "widths: is empty: at least one reading is wanted")]
    [InlineData(
        Head + """ "widths": [ { "xM": 3, "widthMm": 1500 }, { "xM": 3, "widthMm": 1500 } ] }""",
        "widths[1].xM: 3 m does not lie beyond the reading before it at 3 m")]
    [InlineData(Head + """ "widths": [ { "xM": 11, "widthMm": 1500 } ] }""", "widths[0].xM: 11 m is outside 0 to 10 m")]
    [InlineData(Head + """ "widths": [ { "xM": 0, "widthMm": "1500,5" } ] }""", "widths[0].widthMm: is the text")]
    [InlineData(Head + Widths + """, "width": 3 }""", "width: is not a known field; did you mean 'widths'?; known here: schema, name")]
    [InlineData(
        Head + Widths + """, "joints": [ { "xM": 10 } ] }""",
        "joints[0].xM: 10 m is not inside the roll: above 0 and below 10 m is allowed")]
    [InlineData(
        Head + Widths + """, "joints": [ { "xM": 4 }, { "xM": 3 } ] }""",
        "joints[1].xM: 3 m does not lie beyond the splice before it at 4 m")]
    [InlineData(
        Head + Widths + """, "joints": [ { "xM": 4, "clearMm": -1 } ] }""",
        "joints[0].clearMm: -1 mm is outside 0 to 1000 mm")]
    [InlineData(Head + Widths + """, "napToward": "x" }""", "napToward: 'x' is not known; allowed: +x, -x")]
    [InlineData(
        Head + Widths + """, "faults": [ { "xMm": 10001, "yMm": 5, "radiusMm": 2 } ] }""",
        "faults[0].xMm: the fault runs from 10001 to 10001 mm: allowed are 0 to 10000 mm")]
    [InlineData(
        Head + Widths + """, "faults": [ { "xMm": 10, "yMm": 1600, "radiusMm": 2 } ] }""",
        "faults[0].yMm: 1600 mm puts the fault outside the felt, which is ")]
    [InlineData(
        Head + Widths + """, "faults": [ { "xMm": 10, "yMm": 16, "radiusMm": 2, "widthMm": 3 } ] }""",
        "faults[0].radiusMm: give either 'radiusMm', or 'lengthMm' and 'widthMm'")]
    [InlineData(
        Head + Widths + """, "faults": [ { "xMm": 10, "yMm": 16 } ] }""",
        "faults[0].lengthMm: give either 'radiusMm', or 'lengthMm' and 'widthMm'")]
    [InlineData(
        Head + Widths + """, "faults": [ { "xMm": 10, "yMm": 16, "lengthMm": -1, "widthMm": 3 } ] }""",
        "faults[0].lengthMm: -1 mm is outside 0 to 100000 mm")]
    [InlineData(Head + Widths + """, "skewDeg": 45 }""", "skewDeg: 45 degrees is outside -30 to 30 degrees")]
    [InlineData("""{ "schema": "feltnest/roll/1", "name": "R", "lengthM": 0, """ + Widths + "}", "lengthM: 0 m is outside 0.1 to 100000 m")]
    public void What_is_wrong_is_told_with_file_field_value_and_what_is_allowed(string text, string told)
    {
        string path = folder.Write("bad.json", text);

        InputException error = Assert.Throws<InputException>(() => RollReader.Read(path));

        Assert.StartsWith($"{path}: {told}", error.Message, StringComparison.Ordinal);
    }
}
