using FeltNest.Ball;
using FeltNest.Files.Balls;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Files;

public sealed class BallReaderTests : IDisposable
{
    private readonly TempFolder folder = new();

    public static TheoryData<string> Examples => ["type-2", "type-3", "stage-1", "stage-3-felt"];

    private static string Good { get; } = File.ReadAllText(RepositoryFile.PathOf("shapes", "balls", "type-2.json"));

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_ball_reads_and_lists_what_it_assumes(string name)
    {
        BallInput input = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", name + ".json"));

        Assert.Equal(name, EnumWord.Of(input.Ball.RuleType));
        Assert.Contains("felt.warpModulusNPerMm", input.Assumed);
    }

    [Fact]
    public void Every_field_lands_where_it_belongs()
    {
        const string ball = """
            { "schema": "feltnest/ball/1", "name": "N", "ruleType": "none",
              "core": { "outerDiameterMm": 61, "massG": 41 }, "cement": { "thicknessMm": 0.1, "massPerAreaGsm": 111 },
              "felt": { "name": "F", "construction": "needled", "thicknessMm": 3.1, "finishedThicknessMm": 2.9, "massPerAreaGsm": 801,
                "warpModulusNPerMm": 2.6, "weftModulusNPerMm": 2.6, "shearModulusNPerMm": 1.0, "poisson": 0.3, "neutralLayer": 0.4,
                "maxStretchPercent": 21, "maxEdgeCompressionPercent": 16, "cureShrinkWarpPercent": 1, "cureShrinkWeftPercent": 2 },
              "seam": { "curve": "two-harmonic", "waistMm": 27, "seamGapMm": 0.3 },
              "panel": { "flattening": "conformal", "edge": "true", "warpAngleDeg": -12.5 } }
            """;

        BallSpec read = BallReader.Read(folder.Write("ball.json", ball)).Ball;

        Assert.Equal(
            new BallSpec
            {
                Name = "N",
                RuleType = RuleType.None,
                Core = new CoreSpec { OuterDiameterMm = 61, MassG = 41 },
                Cement = new CementSpec { ThicknessMm = 0.1, MassPerAreaGsm = 111 },
                Felt = new FeltSpec
                {
                    Name = "F",
                    Construction = FeltConstruction.Needled,
                    ThicknessMm = 3.1,
                    FinishedThicknessMm = 2.9,
                    MassPerAreaGsm = 801,
                    WarpModulusNPerMm = 2.6,
                    WeftModulusNPerMm = 2.6,
                    ShearModulusNPerMm = 1.0,
                    Poisson = 0.3,
                    NeutralLayer = 0.4,
                    MaxStretchPercent = 21,
                    MaxEdgeCompressionPercent = 16,
                    CureShrinkWarpPercent = 1,
                    CureShrinkWeftPercent = 2,
                },
                Seam = new SeamSpec { Curve = SeamFamily.TwoHarmonic, WaistMm = 27, SeamGapMm = 0.3 },
                Panel = new PanelSpec(FlatteningMethod.Conformal, EdgeRule.True, -12.5),
            },
            read);
    }

    [Theory]
    [InlineData("\"outerDiameterMm\": 60.0", "\"outerDiameterMm\": 6000", "core.outerDiameterMm: 6000 mm is outside 20 to 200 mm")]
    [InlineData("\"outerDiameterMm\": 60.0", "\"outerDiameterMm\": -60", "core.outerDiameterMm: -60 mm is outside 20 to 200 mm")]
    [InlineData(
        "\"outerDiameterMm\": 60.0", "\"outerDiameterMm\": NaN",
        "core.outerDiameterMm: is not valid JSON at line 6, column 32: a number must be finite")]
    [InlineData("\"outerDiameterMm\": 60.0", "\"outerDiameterMm\": 1e999", "core.outerDiameterMm: 1e999 is too large")]
    [InlineData(
        "\"outerDiameterMm\": 60.0", "\"outerDiameterMm\": \"60,0\"",
        "core.outerDiameterMm: is the text \"60,0\" where a number is wanted (decimal mark is the point")]
    [InlineData("\"outerDiameterMm\": 60.0", "\"outerDiameterMm\": null", "core.outerDiameterMm: is null where a value is wanted")]
    [InlineData(
        "\"outerDiameterMm\": 60.0", "\"outerDiametreMm\": 60.0",
        "core.outerDiametreMm: is not a known field; did you mean 'outerDiameterMm'?")]
    [InlineData("\"outerDiameterMm\": 60.0,", "", "core.outerDiameterMm: is missing")]
    [InlineData("\"outerDiameterMm\": 60.0", "\"outerDiameterMm\": 60.0, \"outerDiameterMm\": 61", "core.outerDiameterMm: is given twice")]
    [InlineData(
        "\"massG\": 46.0 }", "\"massG\": 46.0, }",
        "core.massG: is not valid JSON at line 6, column 53: a comma stands before the closing bracket")]
    [InlineData(
        "\"schema\": \"feltnest/ball/1\"", "\"schema\": \"feltnest/ball/2\"",
        "schema: 'feltnest/ball/2' cannot be used here; allowed: feltnest/ball/1")]
    [InlineData("\"schema\": \"feltnest/ball/1\",", "", "schema: is missing; allowed: feltnest/ball/1")]
    [InlineData(
        "\"ruleType\": \"type-2\"", "\"ruleType\": \"type 2\"",
        "ruleType: 'type 2' is not known; allowed: type-1, type-2, type-3, high-altitude, stage-1, stage-2, stage-3-felt, stage-3-foam, "
            + "none")]
    [InlineData("\"name\": \"Example type 2, pressurised\"", "\"name\": \" \"", "name: is blank")]
    [InlineData(
        "\"warpModulusNPerMm\": 2.0", "\"warpModulusNPerMm\": 2.5",
        "panel.warpAngleDeg: any; felt with a warp (its moduli differ by direction) needs an angle")]
    [InlineData(
        "\"shearModulusNPerMm\": 0.769", "\"shearModulusNPerMm\": 0.9",
        "felt.shearModulusNPerMm: 0.9; felt without a warp has 0.7692 here, warp modulus / (2 (1 + poisson))")]
    [InlineData(
        "\"weftModulusNPerMm\": 2.0", "\"weftModulusNPerMm\": 200", "felt.poisson: 0.3; 0 to below 0.1 is allowed with these moduli")]
    [InlineData(
        "\"cureShrinkWarpPercent\": 0", "\"cureShrinkWarpPercent\": 2",
        "panel.warpAngleDeg: any, but the felt shrinks 2 % along the warp and 0 % along the weft")]
    [InlineData("\"two-harmonic\"", "\"points\"", "seam.waistMm: has no place beside seam.curve points")]
    [InlineData("\"waistMm\": 28.0", "\"waistMm\": 28.0, \"points\": []", "seam.points: has no place beside seam.curve two-harmonic")]
    [InlineData("\"two-harmonic\", \"waistMm\": 28.0", "\"points\"", "seam.points: is missing")]
    [InlineData(
        "\"two-harmonic\", \"waistMm\": 28.0", "\"points\", \"points\": [[1, 2]]",
        "seam.points[0]: is a list where three numbers [x, y, z] are wanted")]
    [InlineData(
        "\"two-harmonic\", \"waistMm\": 28.0", "\"points\", \"points\": [[1, 2, 3]]", "seam.points: 1 points; at least 24 are needed")]
    [InlineData(
        "\"two-harmonic\"", "\"two-harmonics\"",
        "seam.curve: 'two-harmonics' is not known; allowed: two-harmonic, four-arc, elastica, points, shaped; "
            + "did you mean 'two-harmonic'?")]
    [InlineData("\"waistMm\": 28.0", "\"waistMm\": 80", "seam.waistMm: 80 mm is outside 11.083 to 49.872 mm")]
    [InlineData(
        "\"warpAngleDeg\": \"any\"", "\"warpAngleDeg\": \"all\"",
        "panel.warpAngleDeg: \"all\" is not allowed: a number of degrees or \"any\"")]
    [InlineData("\"core\": {", "\"core\": 5, \"x\": {", "x: is not a known field")]
    public void A_bad_field_is_named_with_its_value_and_what_is_allowed(string good, string bad, string expected)
    {
        Assert.Contains(good, Good, StringComparison.Ordinal);
        string path = folder.Write("ball.json", Good.Replace(good, bad, StringComparison.Ordinal));

        InputException error = Assert.Throws<InputException>(() => BallReader.Read(path));

        Assert.StartsWith($"{path}: {expected}", error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    [Fact]
    public void Felt_with_a_warp_and_its_angle_are_taken_as_they_are()
    {
        BallSpec woven = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2-woven.json")).Ball;

        Assert.Equal(
            (3.0, 1.8, 0.6, 0.25),
            (woven.Felt.WarpModulusNPerMm, woven.Felt.WeftModulusNPerMm, woven.Felt.ShearModulusNPerMm, woven.Felt.Poisson));
        Assert.Equal(30, woven.Panel.WarpAngleDeg);
    }

    [Theory]
    [InlineData("four-arc", SeamFamily.FourArc)]
    [InlineData("elastica", SeamFamily.Elastica)]
    public void Every_seam_family_with_a_waist_is_taken(string word, SeamFamily family)
    {
        BallSpec ball = BallReader.Read(folder.Write("ball.json", Good.Replace("two-harmonic", word, StringComparison.Ordinal))).Ball;

        Assert.Equal((family, 28.0), (ball.Seam.Curve, ball.Seam.WaistMm));
    }

    [Fact]
    public void A_seam_given_as_points_keeps_them_in_order_and_has_no_waist_field()
    {
        TwoHarmonicSeam known = TwoHarmonicSeam.ForWaist(1);
        string[] rows =
        [
            .. Enumerable.Range(0, 120)
                .Select(i => known.At(2 * Math.PI * i / 120).Point)
                .Select(p => FormattableString.Invariant($"[{p.X:R}, {p.Y:R}, {p.Z:R}]")),
        ];
        string text = Good.Replace(
            "\"two-harmonic\", \"waistMm\": 28.0", $"\"points\", \"points\": [{string.Join(", ", rows)}]", StringComparison.Ordinal);

        SeamSpec seam = BallReader.Read(folder.Write("ball.json", text)).Ball.Seam;

        Assert.Equal((SeamFamily.Points, 0.0, 120), (seam.Curve, seam.WaistMm, seam.Points!.Count));
        Assert.Equal(new SeamPoint(known.At(0).Point.X, known.At(0).Point.Y, known.At(0).Point.Z), seam.Points[0]);
        Assert.Equal(1, SeamCurve.For(seam, 31.75).WaistAngle, 1e-6);
    }

    [Theory]
    [InlineData("", "is empty")]
    [InlineData("[]", "holds a list where an object { ... } is wanted")]
    [InlineData("{", "is not valid JSON at line 1, column 2: the text ends too early")]
    [InlineData("{ // no }", "is not valid JSON at line 1, column 3: comments are not allowed")]
    public void A_file_that_is_no_object_is_refused_in_one_line(string text, string expected)
    {
        string path = folder.Write("ball.json", text);

        InputException error = Assert.Throws<InputException>(() => BallReader.Read(path));

        Assert.Equal($"{path}: {expected}", error.Message);
    }

    [Fact]
    public void Nesting_without_end_is_refused()
    {
        string path = folder.Write("ball.json", "{\"a\":" + new string('[', 5000) + new string(']', 5000) + "}");

        Assert.StartsWith($"{path}: a", Assert.Throws<InputException>(() => BallReader.Read(path)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_and_a_folder_are_told_apart()
    {
        Assert.Equal(
            $"{folder.Path("no.json")}: no such file",
            Assert.Throws<InputException>(() => BallReader.Read(folder.Path("no.json"))).Message);
        Assert.Equal($"{folder.Root}: is a folder: name a file", Assert.Throws<InputException>(() => BallReader.Read(folder.Root)).Message);
    }

    [Fact]
    public void A_byte_order_mark_and_windows_line_ends_change_nothing()
    {
        string path = folder.Write("ball.json", "\uFEFF" + Good.Replace("\n", "\r\n", StringComparison.Ordinal));

        Assert.Equal(BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball, BallReader.Read(path).Ball);
    }
}
