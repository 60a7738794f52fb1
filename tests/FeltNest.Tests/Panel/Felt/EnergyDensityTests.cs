using FeltNest.Panel.Domain;
using FeltNest.Panel.Felt;
using Xunit;

namespace FeltNest.Tests.Panel.Felt;

public sealed class EnergyDensityTests
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
    private static readonly Metric Sphere = new(1.3, 0.2, 0.8);

    [Fact]
    public void Felt_that_is_not_stretched_holds_no_energy_and_no_force()
    {
        EnergyDensity rest = new(FeltLaw.Isotropic(1, 0.3), new Metric(4, 0, 9), 2, 0, 0, 3);
        double[] first = new double[4];

        rest.First(first);

        Assert.Equal(0, rest.Value, 15);
        Assert.All(first, value => Assert.Equal(0, value, 15));
    }

    [Fact]
    public void Uniaxial_stretch_gives_half_modulus_times_strain_squared()
    {
        // Plane stress with free sides: strain across is -nu times that along, energy E e^2/2 (R. W. Ogden, Non-Linear Elastic
        // Deformations, 1984, small-strain limit of section 4.3; exact here as the law is linear in Green strain).
        const double e = 0.1;
        const double nu = 0.3;
        FeltLaw law = FeltLaw.Isotropic(5, nu);

        Assert.Equal(5 * e * e / 2, law.Energy(1 + (2 * e), 0, 1 - (2 * nu * e)), 14);
    }

    [Fact]
    public void First_and_second_derivatives_agree_with_differences()
    {
        double[] g = [1.1, 0.15, -0.2, 0.9];
        double[] first = new double[4];
        double[] second = new double[16];
        double[] ahead = new double[4];
        double[] behind = new double[4];
        At(g).First(first);
        At(g).Second(second);
        const double h = 1e-6;
        for (int i = 0; i < 4; i++)
        {
            double[] more = [.. g];
            double[] less = [.. g];
            more[i] += h;
            less[i] -= h;
            Assert.Equal((At(more).Value - At(less).Value) / (2 * h), first[i], 1e-8);
            At(more).First(ahead);
            At(less).First(behind);
            for (int j = 0; j < 4; j++)
            {
                Assert.Equal((ahead[j] - behind[j]) / (2 * h), second[(4 * i) + j], 1e-8);
            }
        }
    }

    [Fact]
    public void The_two_ways_to_the_energy_agree()
    {
        EnergyDensity density = At([1.1, 0.15, -0.2, 0.9]);
        Metric c = density.Stretch;

        Assert.Equal(Uneven.Energy(c.XX, c.XY, c.YY) * density.Area, density.Value, 14);
    }

    [Fact]
    public void A_map_that_turns_felt_over_is_not_sound() => Assert.False(At([1, 0, 0, -1]).IsSound);

    [Fact]
    public void An_isotropic_law_is_the_same_in_every_direction()
    {
        FeltLaw law = FeltLaw.Isotropic(1, 0.3);
        double turn = 0.7;
        double cos = Math.Cos(turn);
        double sin = Math.Sin(turn);
        double xx = 1.4;
        double xy = 0.1;
        double yy = 0.8;
        double energy = law.Energy(
            (cos * cos * xx) + (2 * sin * cos * xy) + (sin * sin * yy),
            (sin * cos * (yy - xx)) + (((cos * cos) - (sin * sin)) * xy),
            (sin * sin * xx) - (2 * sin * cos * xy) + (cos * cos * yy));

        Assert.Equal(law.Energy(xx, xy, yy), energy, 14);
        Assert.True(law.IsMirrorSymmetric);
    }

    private static EnergyDensity At(double[] g) => new(Uneven, Sphere, g[0], g[1], g[2], g[3]);
}
