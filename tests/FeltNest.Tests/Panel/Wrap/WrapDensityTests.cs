using FeltNest.Panel.Felt;
using FeltNest.Panel.Wrap.Solve;
using Xunit;

namespace FeltNest.Tests.Panel.Wrap;

public sealed class WrapDensityTests
{
    private static readonly FeltLaw Uneven = new()
    {
        UU = 2.1,
        UV = 0.5,
        VV = 1.3,
        US = 0.2,
        VS = -0.1,
        SS = 0.7,
    };

    [Fact]
    public void First_and_second_derivatives_agree_with_differences()
    {
        double[] z = [1.1, 0.15, -0.2, 0.9, 0.6];
        double[] first = new double[5];
        double[] second = new double[25];
        double[] ahead = new double[5];
        double[] behind = new double[5];
        At(z).First(first);
        At(z).Second(second);
        const double h = 1e-6;
        for (int i = 0; i < 5; i++)
        {
            double[] more = [.. z];
            double[] less = [.. z];
            more[i] += h;
            less[i] -= h;
            Assert.Equal((At(more).Value - At(less).Value) / (2 * h), first[i], 1e-8);
            At(more).First(ahead);
            At(less).First(behind);
            for (int j = 0; j < 5; j++)
            {
                Assert.Equal((ahead[j] - behind[j]) / (2 * h), second[(5 * i) + j], 1e-8);
            }
        }
    }

    [Fact]
    public void Value_and_pull_are_those_of_the_law()
    {
        WrapDensity density = At([1.1, 0.15, -0.2, 0.9, 0.6]);
        (double uu, double uv, double vv) = density.Strain;

        Assert.Equal(Uneven.Energy(1 + (2 * uu), 2 * uv, 1 + (2 * vv)), density.Value, 14);

        // Felt at rest on the equator of the chart pulls nothing; stretched along u alone it pulls along alone by the law's first column.
        Assert.Equal((0, 0), new WrapDensity(Uneven, 1, 0, 0, 1, 0).Pull(1, 0));
        double stretch = 1.01;
        double strain = ((stretch * stretch) - 1) / 2;
        (double along, double across) = new WrapDensity(Uneven, stretch, 0, 0, 1, 0).Pull(1, 0);
        Assert.Equal(stretch * Uneven.UU * strain, along, 14);
        Assert.Equal(Uneven.US * strain, across, 14);
    }

    private static WrapDensity At(double[] z) => new(Uneven, z[0], z[1], z[2], z[3], z[4]);
}
