using FeltNest.Ball;
using FeltNest.Ball.Rules;
using FeltNest.Files.Balls;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Ball;

public sealed class RuleCheckTests
{
    private static BallSpec TypeTwo { get; } = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;

    [Theory]
    // C. Lindsey, "Tennis Ball Performance Testing", 2021 (a secondary table): type 2 is 56.0 to 59.4 g and 6.54 to 6.86 cm, type 3 7.00 to
    // 7.30 cm.
    [InlineData(RuleType.Type2, 56.0, 59.4, 65.4, 68.6)]
    [InlineData(RuleType.Type3, 56.0, 59.4, 70.0, 73.0)]
    // From memory: no text was seen.
    [InlineData(RuleType.Stage1, 47.0, 51.5, 63.0, 68.6)]
    [InlineData(RuleType.Stage3Felt, 36.0, 49.0, 70.0, 80.0)]
    public void Rows_hold_the_limits_their_source_gives(RuleType type, double lightest, double heaviest, double smallest, double largest)
    {
        RuleRow row = RuleTable.Row(type)!;

        Assert.Equal((lightest, heaviest, smallest, largest), (row.MassG.Low, row.MassG.High, row.DiameterMm.Low, row.DiameterMm.High));
    }

    [Theory]
    [InlineData(65.4, true)]
    [InlineData(68.6, true)]
    [InlineData(65.39, false)]
    [InlineData(68.61, false)]
    public void Limits_count_as_within(double diameter, bool within) =>
        Assert.Equal(within ? RuleVerdict.Within : RuleVerdict.Outside, RuleTable.Row(RuleType.Type2)!.DiameterMm.Judge(diameter));

    [Fact]
    public void Limits_from_memory_never_give_a_bare_pass_or_fail()
    {
        foreach (RuleRow row in RuleTable.Rows)
        {
            foreach (RuleLimits limits in new[] { row.MassG, row.DiameterMm, row.ReboundCm }
                .Where(limits => limits.Mark == RuleMark.Memory))
            {
                Assert.Equal(RuleVerdict.WithinFromMemory, limits.Judge(limits.Low));
                Assert.Equal(RuleVerdict.OutsideFromMemory, limits.Judge(limits.High + 1));
            }
        }

        Assert.Equal(4, RuleTable.Rows.Count(row => row.MassG.Mark == RuleMark.Memory && row.DiameterMm.Mark == RuleMark.Memory));
    }

    [Fact]
    public void Where_no_rule_is_asked_for_nothing_is_known()
    {
        BallSpec ball = TypeTwo with { RuleType = RuleType.None };

        Assert.All(RuleCheck.Of(ball, MassBudget.Of(ball, 6000)), finding => Assert.Equal(RuleVerdict.NotKnown, finding.Verdict));
    }

    [Fact]
    public void The_finished_diameter_counts_cement_and_finished_felt_on_both_sides()
    {
        BallSpec ball = TypeTwo with
        {
            Core = new CoreSpec { OuterDiameterMm = 60, MassG = 46 },
            Cement = new CementSpec { ThicknessMm = 0.5, MassPerAreaGsm = 100 },
            Felt = TypeTwo.Felt with { FinishedThicknessMm = 3 },
        };

        RuleFinding diameter = RuleCheck.Of(ball, MassBudget.Of(ball, 6000))[0];

        Assert.Equal(67, diameter.Value);
        Assert.Equal(RuleVerdict.Within, diameter.Verdict);
    }

    [Fact]
    public void The_mass_budget_adds_core_cement_and_two_panels()
    {
        // Core of diameter 100 / sqrt(pi) mm has the surface 10,000 mm2 = 0.01 m2: 1.5 g of cement at 150 g/m2. Two panels of 5,000 mm2 at
        // 900 g/m2: 9 g.
        BallSpec ball = TypeTwo with
        {
            Core = new CoreSpec { OuterDiameterMm = 100 / Math.Sqrt(Math.PI), MassG = 40 },
            Cement = new CementSpec { ThicknessMm = 0, MassPerAreaGsm = 150 },
            Felt = TypeTwo.Felt with { MassPerAreaGsm = 900 },
        };

        MassBudget mass = MassBudget.Of(ball, 5000);

        Assert.Equal(1.5, mass.CementG, 12);
        Assert.Equal(9, mass.FeltG, 12);
        Assert.Equal(50.5, mass.TotalG, 12);
    }

    [Theory]
    [InlineData(5.9, true)]
    [InlineData(6.1, false)]
    [InlineData(15.9, false)]
    [InlineData(16.1, true)]
    public void Unusual_felt_mass_is_warned_of(double felt, bool warned) =>
        Assert.Equal(warned, new MassBudget { CoreG = 40, CementG = 1, FeltG = felt }.FeltWarning is not null);
}
