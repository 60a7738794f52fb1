using FeltNest.Numerics;
using Xunit;

namespace FeltNest.Tests.Numerics;

public sealed class EllipticIntegralTests
{
    [Fact]
    public void At_zero_both_are_a_quarter_turn()
    {
        Assert.Equal(Math.PI / 2, EllipticIntegral.CompleteK(0), 15);
        Assert.Equal(Math.PI / 2, EllipticIntegral.CompleteE(0), 15);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Both_agree_with_their_defining_integrals(double m)
    {
        // The integrands are periodic and smooth, so equal steps are exact to the last digits.
        const int steps = 400;
        double k = 0;
        double e = 0;
        for (int i = 0; i < steps; i++)
        {
            double sin = Math.Sin(Math.PI * (i + 0.5) / steps);
            double root = Math.Sqrt(1 - (m * sin * sin));
            k += Math.PI / 2 / steps / root;
            e += Math.PI / 2 / steps * root;
        }

        Assert.Equal(k, EllipticIntegral.CompleteK(m), 13);
        Assert.Equal(e, EllipticIntegral.CompleteE(m), 13);
    }

    [Fact]
    public void Legendres_relation_holds()
    {
        // A. M. Legendre: E K' + E' K - K K' = pi/2 (Abramowitz and Stegun, 1964, 17.3.13).
        const double m = 0.3;
        double k = EllipticIntegral.CompleteK(m);
        double e = EllipticIntegral.CompleteE(m);
        double kc = EllipticIntegral.CompleteK(1 - m);
        double ec = EllipticIntegral.CompleteE(1 - m);
        Assert.Equal(Math.PI / 2, (e * kc) + (ec * k) - (k * kc), 14);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1)]
    public void A_parameter_out_of_range_is_refused(double m) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EllipticIntegral.CompleteE(m));
}
