using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Files.Balls;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Ball;

public sealed class BallRangesTests
{
    private static BallSpec Good { get; } = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;

    public static TheoryData<string, double> Outside => new()
    {
        { "core.outerDiameterMm", 19.9 },
        { "core.massG", 0 },
        { "cement.thicknessMm", -0.1 },
        { "cement.massPerAreaGsm", 2001 },
        { "felt.thicknessMm", 13 },
        { "felt.finishedThicknessMm", 0 },
        { "felt.massPerAreaGsm", 49 },
        { "felt.warpModulusNPerMm", 0 },
        { "felt.weftModulusNPerMm", -2 },
        { "felt.shearModulusNPerMm", 0 },
        { "felt.poisson", 1 },
        { "felt.neutralLayer", 1.01 },
        { "felt.maxStretchPercent", 101 },
        { "felt.maxEdgeCompressionPercent", -1 },
        { "felt.cureShrinkWarpPercent", 31 },
        { "felt.cureShrinkWeftPercent", -0.1 },
        { "seam.waistMm", 5 },
        { "seam.seamGapMm", 4 },
        { "panel.warpAngleDeg", 181 },
        { "core.outerDiameterMm", double.NaN },
    };

    [Theory]
    [MemberData(nameof(Outside))]
    public void A_number_outside_its_range_is_named_by_its_path(string field, double value)
    {
        InputException error = Assert.Throws<InputException>(() => BallRanges.Checked(With(field, value)));

        Assert.Equal(field, error.Field);
        Assert.Contains(" is outside ", error.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_that_may_be_zero_may_be_zero()
    {
        BallSpec ball = Good;
        foreach (string field in new[]
        {
            "cement.thicknessMm",
            "cement.massPerAreaGsm",
            "felt.neutralLayer",
            "felt.cureShrinkWarpPercent",
            "felt.cureShrinkWeftPercent",
            "seam.seamGapMm",
            "felt.maxEdgeCompressionPercent",
        })
        {
            ball = With(field, 0, ball);
        }

        Assert.Same(ball, BallRanges.Checked(ball));
    }

    private static BallSpec With(string field, double value) => With(field, value, Good);

    private static BallSpec With(string field, double value, BallSpec ball) => field switch
    {
        "core.outerDiameterMm" => ball with { Core = ball.Core with { OuterDiameterMm = value } },
        "core.massG" => ball with { Core = ball.Core with { MassG = value } },
        "cement.thicknessMm" => ball with { Cement = ball.Cement with { ThicknessMm = value } },
        "cement.massPerAreaGsm" => ball with { Cement = ball.Cement with { MassPerAreaGsm = value } },
        "seam.waistMm" => ball with { Seam = ball.Seam with { WaistMm = value } },
        "seam.seamGapMm" => ball with { Seam = ball.Seam with { SeamGapMm = value } },
        "panel.warpAngleDeg" => ball with { Panel = ball.Panel with { WarpAngleDeg = value } },
        _ => ball with { Felt = FeltWith(field, value, ball.Felt) },
    };

    private static FeltSpec FeltWith(string field, double value, FeltSpec felt) => field switch
    {
        "felt.thicknessMm" => felt with { ThicknessMm = value },
        "felt.finishedThicknessMm" => felt with { FinishedThicknessMm = value },
        "felt.massPerAreaGsm" => felt with { MassPerAreaGsm = value },
        "felt.warpModulusNPerMm" => felt with { WarpModulusNPerMm = value },
        "felt.weftModulusNPerMm" => felt with { WeftModulusNPerMm = value },
        "felt.shearModulusNPerMm" => felt with { ShearModulusNPerMm = value },
        "felt.poisson" => felt with { Poisson = value },
        "felt.neutralLayer" => felt with { NeutralLayer = value },
        "felt.maxStretchPercent" => felt with { MaxStretchPercent = value },
        "felt.maxEdgeCompressionPercent" => felt with { MaxEdgeCompressionPercent = value },
        "felt.cureShrinkWarpPercent" => felt with { CureShrinkWarpPercent = value },
        "felt.cureShrinkWeftPercent" => felt with { CureShrinkWeftPercent = value },
        _ => throw new ArgumentException(field),
    };
}
