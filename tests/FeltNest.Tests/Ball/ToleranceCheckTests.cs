using FeltNest.Ball;
using FeltNest.Ball.Rules;
using FeltNest.Ball.Tolerance;
using FeltNest.Files.Balls;
using FeltNest.Tests.Files;
using FeltNest.Tests.Panel;
using Xunit;

namespace FeltNest.Tests.Ball;

public sealed class ToleranceCheckTests : IDisposable
{
    // Area of one panel, mm2; invented, a round number.
    private const double Area = 6000;

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_ball_without_tolerances_has_no_spread() => Assert.Empty(Of(Balls.Usual()));

    [Fact]
    public void The_diameter_takes_the_core_once_and_the_layers_on_both_sides()
    {
        ToleranceFinding diameter = Of(With(new ToleranceSpec
        {
            CoreDiameterMm = 0.3,
            CoreMassG = 0,
            CementThicknessMm = 0.05,
            CementMassPerAreaGsm = 0,
            FeltFinishedThicknessMm = 0.2,
            FeltMassPerAreaGsm = 0,
        }))[0];

        // Own derivation: D + 2 (cement + felt), so 0.3 + 2 * 0.05 + 2 * 0.2, and the root of 0.3^2 + 0.1^2 + 0.4^2.
        Assert.Equal(0.8, diameter.WorstCase, 12);
        Assert.Equal(Math.Sqrt(0.09 + 0.01 + 0.16), diameter.RootSumSquare, 12);
    }

    [Fact]
    public void The_mass_takes_core_cement_and_felt_by_their_areas()
    {
        ToleranceFinding mass = Of(With(new ToleranceSpec
        {
            CoreDiameterMm = 0.3,
            CoreMassG = 0.5,
            CementThicknessMm = 0,
            CementMassPerAreaGsm = 20,
            FeltFinishedThicknessMm = 0,
            FeltMassPerAreaGsm = 40,
        }))[1];

        // Own derivation for a core of 60 mm and 120 g/m2 of cement: the film's area is pi D^2, its growth 2 pi D for each mm of D; both
        // panels are 2 * 6000 mm2.
        double grown = 2 * Math.PI * 60 * 0.3 * 120e-6;
        double film = Math.PI * 3600 * 20e-6;
        double felt = 2 * 6000 * 40e-6;
        Assert.Equal(0.5 + grown + film + felt, mass.WorstCase, 12);
        Assert.Equal(Math.Sqrt(0.25 + (grown * grown) + (film * film) + (felt * felt)), mass.RootSumSquare, 12);
    }

    [Fact]
    public void A_spread_is_within_the_rule_only_with_both_its_ends()
    {
        // The finished ball is 66.3 mm, the rule 65.4 to 68.6 mm: 0.8 keeps it, 1.0 falls below.
        Assert.Equal(RuleVerdict.Within, Of(With(new ToleranceSpec
        {
            CoreDiameterMm = 0.8,
            CoreMassG = 0,
            CementThicknessMm = 0,
            CementMassPerAreaGsm = 0,
            FeltFinishedThicknessMm = 0,
            FeltMassPerAreaGsm = 0,
        }))[0].WorstCaseVerdict);
        ToleranceFinding wide = Of(With(new ToleranceSpec
        {
            CoreDiameterMm = 0.8,
            CoreMassG = 0,
            CementThicknessMm = 0.1,
            CementMassPerAreaGsm = 0,
            FeltFinishedThicknessMm = 0,
            FeltMassPerAreaGsm = 0,
        }))[0];
        Assert.Equal((RuleVerdict.Outside, RuleVerdict.Within), (wide.WorstCaseVerdict, wide.RootSumSquareVerdict));
        Assert.Equal(
            RuleVerdict.NotKnown, Of(With(new ToleranceSpec
            {
                CoreDiameterMm = 1,
                CoreMassG = 0,
                CementThicknessMm = 0,
                CementMassPerAreaGsm = 0,
                FeltFinishedThicknessMm = 0,
                FeltMassPerAreaGsm = 0,
            }) with
            { RuleType = RuleType.None })[0].WorstCaseVerdict);
    }

    [Fact]
    public void Tolerances_are_read_and_those_left_out_are_none()
    {
        Assert.Equal(
            new ToleranceSpec
            {
                CoreDiameterMm = 0.3,
                CoreMassG = 0,
                CementMassPerAreaGsm = 0,
                FeltFinishedThicknessMm = 0.2,
                FeltMassPerAreaGsm = 0,
            },
            BallReader.Read(File("\"coreDiameterMm\": 0.3, \"feltFinishedThicknessMm\": 0.2")).Ball.Tolerances);

        InputException negative = Assert.Throws<InputException>(() => BallReader.Read(File("\"coreMassG\": -1")));
        Assert.Equal("tolerances.coreMassG", negative.Field);
        Assert.Equal("tolerances.coreMass", Assert.Throws<InputException>(() => BallReader.Read(File("\"coreMass\": 1"))).Field);
    }

    private static BallSpec With(ToleranceSpec tolerances) => Balls.Usual() with { Tolerances = tolerances };

    private static IReadOnlyList<ToleranceFinding> Of(BallSpec ball) => ToleranceCheck.Of(ball, MassBudget.Of(ball, Area), Area);

    private string File(string fields) => folder.Write(
        "ball.json",
        System.IO.File.ReadAllText(RepositoryFile.PathOf("shapes", "balls", "type-3.json"))
            .Replace("\"panel\":", $"\"tolerances\": {{ {fields} }}, \"panel\":", StringComparison.Ordinal));
}
