using FeltNest.Numerics;
using Xunit;

namespace FeltNest.Tests.Numerics;

public sealed class FDistributionTests
{
    [Theory]
    [InlineData(4.96, 1, 10)]
    [InlineData(3.86, 3, 9)]
    [InlineData(3.10, 3, 20)]
    [InlineData(161.4, 1, 1)]
    public void One_in_twenty_lies_above_the_tabled_points(double point, int above, int below) =>
        // M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, 1964, table 26.9; its points have three digits.
        Assert.Equal(0.05, FDistribution.Tail(point, above, below), 0.0006);

    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(200)]
    public void With_two_freedoms_each_the_tail_has_its_closed_form(double ratio) =>
        Assert.Equal(1 / (1 + ratio), FDistribution.Tail(ratio, 2, 2), 1e-14);

    [Theory]
    [InlineData(1, 12.706)]
    [InlineData(5, 2.571)]
    [InlineData(27, 2.052)]
    [InlineData(120, 1.980)]
    public void The_factors_of_Students_t_are_those_of_the_tables(int freedom, double factor) =>
        // M. Abramowitz and I. Stegun, 1964, table 26.10, both sides together 0.05.
        Assert.Equal(factor, FDistribution.Student(0.05, freedom), 0.0006);
}
