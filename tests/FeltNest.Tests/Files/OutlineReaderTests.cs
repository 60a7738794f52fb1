using System.Globalization;
using FeltNest.Files.Outlines;
using Xunit;

namespace FeltNest.Tests.Files;

public sealed class OutlineReaderTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Points_are_kept_exactly_and_centred_as_a_separate_thing()
    {
        string path = folder.Write(
            "o.json", """{ "schema": "feltnest/outline/1", "name": "L", "points": [[10,20],[12,20],[12,21],[11,21],[11,22],[10,22]] }""");

        ImportedOutline outline = OutlineReader.Read(path);

        Assert.Equal("L", outline.Name);
        Assert.Equal([new(10, 20), new(12, 20), new(12, 21), new(11, 21), new(11, 22), new(10, 22)], outline.Raw.Points);
        // Centroid of the L of three unit squares: the mean of (10.5, 20.5), (11.5, 20.5), (10.5, 21.5).
        Assert.Equal(10 - (32.5 / 3), outline.Centred.Points[0].X, 12);
        Assert.Equal(20 - (62.5 / 3), outline.Centred.Points[0].Y, 12);
        Assert.Equal(0, outline.Centred.Centroid.Length, 12);
        Assert.Null(outline.RawArcs);
    }

    [Fact]
    public void A_clockwise_outline_is_turned_round_with_its_coordinates_kept()
    {
        string path = folder.Write("o.json", """{ "schema": "feltnest/outline/1", "name": "T", "points": [[0,0],[0,3],[4,0]] }""");

        Assert.Equal([new(0, 0), new(4, 0), new(0, 3)], OutlineReader.Read(path).Raw.Points);
    }

    [Fact]
    public void A_circle_of_two_half_turns_has_the_area_and_the_edge_of_a_circle()
    {
        string path = folder.Write(
            "o.json",
            """{ "schema": "feltnest/outline/1", "name": "C","""
            + """ "arcs": [ { "x": 15, "y": 7, "turnDeg": 180 }, { "x": 5, "y": 7, "turnDeg": 180 } ] }""");

        ImportedOutline outline = OutlineReader.Read(path);

        Assert.Equal(25 * Math.PI, outline.RawArcs!.Area, 9);
        Assert.Equal(10 * Math.PI, outline.RawArcs.Perimeter, 9);
        Assert.Equal(0, outline.CentredArcs!.Centroid.Length, 9);
        Assert.All(outline.Centred.Points, p => Assert.InRange(p.Length, 5 - 1e-9, 5.01 + 1e-9));
    }

    [Fact]
    public void The_example_dog_bone_has_the_area_of_discs_joined_by_fillets()
    {
        ImportedOutline outline = OutlineReader.Read(RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json"));

        // Own derivation for discs of radius r = 24 at +-d = 50 and waist half-width w = 14: fillet radius R = 106, tangent points at x =
        // 50 - 24 * 50 / 130.
        const double r = 24;
        const double d = 50;
        const double w = 14;
        const double fillet = 106;
        double x = d - (r * d / (r + fillet));
        double half = d - x;
        double head = (r * r * (Math.PI - Math.Acos(half / r))) + (half * Math.Sqrt((r * r) - (half * half)));
        double waist =
            (4 * x * (w + fillet)) - (2 * ((x * Math.Sqrt((fillet * fillet) - (x * x))) + (fillet * fillet * Math.Asin(x / fillet))));
        Assert.Equal((2 * head) + waist, outline.RawArcs!.Area, 8);
    }

    [Theory]
    [InlineData("u,v\n0,0\n4,0\n0,3\n")]
    [InlineData("0,0\n4,0\n0,3")]
    [InlineData("\uFEFFu, v\r\n0,0\r\n 4.0 , 0\r\n\r\n0,3e0\r\n0,0\r\n")]
    public void Csv_reads_with_or_without_names_mark_and_line_ends(string text)
    {
        ImportedOutline outline = OutlineReader.Read(folder.Write("plate.csv", text));

        Assert.Equal("plate", outline.Name);
        Assert.Equal([new(0, 0), new(4, 0), new(0, 3)], outline.Raw.Points);
    }

    [Theory]
    [InlineData("u,v\n0,0\n1,5,2,5\n", "line 3: '1,5,2,5' has 4 columns where 2 are wanted; are these decimal commas?")]
    [InlineData("0;0\n", "line 1: '0;0' has a semicolon: separate u and v by a comma")]
    [InlineData("0,0\n1,x\n", "line 2, v: 'x' is not a number")]
    [InlineData("0,0\nNaN,1\n", "line 2, u: 'NaN' is not a number")]
    [InlineData("0,0\n7\n", "line 2: '7' has 1 column where 2 are wanted")]
    [InlineData("0,0\n1e9,0\n", "line 2, u: 1e9 mm is outside -100000 to 100000 mm")]
    [InlineData("u,v\n", "holds no points")]
    [InlineData("0,0\n1,0\n", "outline needs at least 3 different points")]
    [InlineData("0,0\n2,2\n2,0\n0,2\n", "outline crosses or touches itself near (1, 1) mm")]
    [InlineData("0,0\n2,2\n4,4\n", "outline crosses or touches itself")]
    public void A_bad_csv_is_named_with_its_line(string text, string expected)
    {
        string path = folder.Write("o.csv", text);

        InputException error = Assert.Throws<InputException>(() => OutlineReader.Read(path));

        Assert.StartsWith($"{path}: {expected}", error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    [Theory]
    [InlineData("\"points\": [[0,0],[1,0]]", "points: outline needs at least 3 different points")]
    [InlineData("\"points\": [[0,0],[1,0],[1]]", "points[2]: is a list where two numbers [u, v] are wanted")]
    [InlineData("\"points\": [[0,0],[1,0],[1,\"2\"]]", "points[2]: is the text \"2\" where a number is wanted")]
    [InlineData("\"points\": [[0,0],[1,0],[1,1e7]]", "points[2]: 10000000 mm is outside -100000 to 100000 mm: are these millimetres?")]
    [InlineData("\"points\": [[0,0],[2,2],[2,0],[0,2]]", "points: outline crosses or touches itself near (1, 1) mm")]
    [InlineData("\"points\": 5", "points: is the number 5 where a list [ ... ] is wanted")]
    [InlineData(
        "\"arcs\": [{\"x\":0,\"y\":0,\"turnDeg\":360},{\"x\":1,\"y\":0,\"turnDeg\":0}]",
        "arcs[0].turnDeg: 360 is outside -360 to 360 degrees")]
    [InlineData("\"arcs\": [{\"x\":0,\"y\":0},{\"x\":1,\"y\":0,\"turnDeg\":0}]", "arcs[0].turnDeg: is missing")]
    [InlineData("\"arcs\": [{\"x\":0,\"y\":0,\"turn\":1,\"turnDeg\":1}]", "arcs[0].turn: is not a known field")]
    [InlineData("\"points\": [], \"arcs\": []", "needs either 'points' or 'arcs'")]
    public void A_bad_outline_is_named_with_its_path(string fields, string expected)
    {
        string path = folder.Write("o.json", $$"""{ "schema": "feltnest/outline/1", "name": "x", {{fields}} }""");

        InputException error = Assert.Throws<InputException>(() => OutlineReader.Read(path));

        Assert.StartsWith($"{path}: {expected}", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_hundred_thousand_points_are_refused_by_count()
    {
        string points = string.Join(',', Enumerable.Range(0, 200_000).Select(i => $"[{i},{i % 2}]"));
        string json = folder.Write("o.json", $$"""{ "schema": "feltnest/outline/1", "name": "x", "points": [{{points}}] }""");
        string csv = folder.Write(
            "o.csv",
            string.Join('\n', Enumerable.Range(0, 200_000).Select(i => string.Create(CultureInfo.InvariantCulture, $"{i},{i % 2}"))));

        Assert.Equal(
            $"{json}: points: has 200000 points: at most 10000 are allowed",
            Assert.Throws<InputException>(() => OutlineReader.Read(json)).Message);
        Assert.Equal(
            $"{csv}: has more than 10000 points, which is the most allowed",
            Assert.Throws<InputException>(() => OutlineReader.Read(csv)).Message);
    }

    [Fact]
    public void A_ball_is_no_outline()
    {
        string path = RepositoryFile.PathOf("shapes", "balls", "type-2.json");

        Assert.Contains(
            "schema: 'feltnest/ball/1' (Ball specification) cannot be used here",
            Assert.Throws<InputException>(() => OutlineReader.Read(path)).Message,
            StringComparison.Ordinal);
    }
}
