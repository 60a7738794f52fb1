using FeltNest.Rolls;
using Xunit;

namespace FeltNest.Tests.Rolls;

public sealed class FourPointScoreTests
{
    private const double Yard = 914.4;
    private const double Inch = 25.4;

    [Fact]
    public void Worked_examples_of_inspection_pages_come_out()
    {
        // Both worked on secondary inspection pages about ASTM D5430: 28 points on 150 yd x 56 in are 12.0; on 100 m x 1500 mm 18.67 per
        // 100 m2 (printed there as 19).
        Assert.Equal(12.0, FourPointScore.Of(28, 150 * Yard, 56 * Inch).Per100SquareYards, 9);
        Assert.Equal(18.67, FourPointScore.Of(28, 100_000, 1500).Per100SquareMetres, 2);
    }

    // Steps of ASTM D5430 as quoted by inspection pages: up to 3 in 1, up to 6 in 2, up to 9 in 3, longer 4.
    [Theory]
    [InlineData(3.0, 1)]
    [InlineData(3.01, 2)]
    [InlineData(6.0, 2)]
    [InlineData(6.01, 3)]
    [InlineData(9.0, 3)]
    [InlineData(9.01, 4)]
    public void Points_go_by_the_length_of_the_fault(double inches, int points) =>
        Assert.Equal(points, FourPointScore.PointsOf(inches * Inch));

    [Fact]
    public void No_yard_counts_more_than_four_and_a_fault_that_runs_on_counts_in_every_yard()
    {
        RollFault small = RollFault.Disc(500, 300, 5);
        FeltRoll roll = RollCases.Roll(10 * Yard, 1000);

        Assert.Equal(2, FourPointScore.Of(roll with { Faults = [small, small] }, 0).Points);
        Assert.Equal(4, FourPointScore.Of(roll with { Faults = [small, small, small, small, small, small] }, 0).Points);
        Assert.Equal(12, FourPointScore.Of(roll with { Faults = [RollFault.Box(10, 10, 2.5 * Yard, 1)] }, 0).Points);
    }

    [Fact]
    public void Cuttable_width_is_the_mean_width_less_the_trims()
    {
        FeltRoll roll = RollCases.Roll(1000, 0, RollFault.Disc(10, 10, 1)) with
        {
            Widths = [new() { XMm = 0, WidthMm = 1000 }, new() { XMm = 1000, WidthMm = 1100 }],
        };

        // One point on 1 m x 1.02 m.
        Assert.Equal(100 / 1.02, FourPointScore.Of(roll, 30).Per100SquareMetres, 9);
    }
}
