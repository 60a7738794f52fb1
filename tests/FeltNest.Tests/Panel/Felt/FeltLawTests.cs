using FeltNest.Ball;
using FeltNest.Panel.Felt;
using Xunit;

namespace FeltNest.Tests.Panel.Felt;

public sealed class FeltLawTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    [InlineData(-1.2)]
    [InlineData(1.5707963267948966)]
    public void A_pull_along_the_warp_meets_the_warp_modulus_and_narrows_the_weft(double direction)
    {
        // Definition of the moduli: a strain e along the warp with -nu e along the weft needs the tension E e along the warp and none along
        // the weft; energy E e^2/2.
        const double warp = 2.4;
        const double weft = 1.6;
        const double shear = 0.6;
        const double nu = 0.35;
        const double e = 0.01;
        FeltLaw law = FeltLaw.Orthotropic(warp, weft, shear, nu, direction);

        Assert.Equal(warp * e * e / 2, Energy(law, direction, e, -nu * e, 0), 15);

        // The other Poisson's ratio follows by symmetry: weft to warp it is nu E2/E1.
        Assert.Equal(weft * e * e / 2, Energy(law, direction, -nu * weft / warp * e, e, 0), 15);
        Assert.Equal(shear * e * e / 2, Energy(law, direction, 0, 0, e), 15);
    }

    [Fact]
    public void A_pull_at_45_degrees_meets_the_modulus_of_the_turned_compliance()
    {
        // 4/E45 = 1/E1 + 1/E2 + 1/G - 2 nu/E1 (R. M. Jones, Mechanics of Composite Materials, 2nd ed. 1999, section 2.6). Energy is least,
        // over the other strains, at E45 e^2/2.
        const double warp = 2.4;
        const double weft = 1.6;
        const double shear = 0.6;
        const double nu = 0.35;
        FeltLaw law = FeltLaw.Orthotropic(warp, weft, shear, nu, Math.PI / 4);
        double modulus = 4 / ((1 / warp) + (1 / weft) + (1 / shear) - (2 * nu / warp));

        // Strain along v and shear that leave tension along u alone.
        double det = (law.VV * law.SS) - (law.VS * law.VS);
        double v = ((law.VS * law.US) - (law.UV * law.SS)) / det;
        double s = ((law.UV * law.VS) - (law.VV * law.US)) / det;
        Assert.Equal(modulus / 2, law.Energy(3, s, 1 + (2 * v)), 13);
    }

    [Fact]
    public void Isotropic_moduli_give_the_isotropic_law_at_any_angle()
    {
        FeltLaw turned = FeltLaw.Orthotropic(2, 2, 2 / 2.6, 0.3, 0.7);
        FeltLaw plain = FeltLaw.Isotropic(2, 0.3);

        foreach ((double a, double b) in new[]
        {
            (turned.UU, plain.UU),
            (turned.UV, plain.UV),
            (turned.VV, plain.VV),
            (turned.US, 0),
            (turned.VS, 0),
            (turned.SS, plain.SS),
        })
        {
            Assert.Equal(b, a, 14);
        }

        Assert.Equal(plain, FeltLaw.For(Felt(2, 2, 0.769, 0.3), 0.7));
        Assert.Equal(plain, FeltLaw.For(Felt(2, 2, 2 / 2.6, 0.3), null));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(-90)]
    [InlineData(180)]
    [InlineData(270)]
    public void Along_and_across_the_warp_the_law_keeps_its_mirrors(double degrees) =>
        Assert.True(FeltLaw.For(Felt(2.4, 1.6, 0.6, 0.35), degrees * Math.PI / 180).IsMirrorSymmetric);

    [Fact]
    public void The_warp_lies_at_minus_the_warp_angle_in_the_panel_frame()
    {
        // Angle +20 degrees from the warp to +u: seen from u the warp lies 20 degrees clockwise, so a pull in that direction meets the
        // stiffer felt.
        FeltLaw law = FeltLaw.For(Felt(2.4, 0.6, 0.4, 0.35), 20 * Math.PI / 180);

        double Stiffness(double degrees) => Energy(law, degrees * Math.PI / 180, 0.01, 0, 0);
        Assert.True(Stiffness(-20) > Stiffness(-10) && Stiffness(-20) > Stiffness(-30));
    }

    [Theory]
    [InlineData(0, 2, 0.7, 0.3, "felt.warpModulusNPerMm")]
    [InlineData(2, -1, 0.7, 0.3, "felt.weftModulusNPerMm")]
    [InlineData(2, 2, double.NaN, 0.3, "felt.shearModulusNPerMm")]
    [InlineData(2, 2, 0.5, 1, "felt.poisson")]
    [InlineData(2, 8, 0.5, 0.5, "felt.poisson")]
    [InlineData(2, 2, 0.5, -0.1, "felt.poisson")]
    public void Moduli_that_are_not_positive_definite_are_refused(double warp, double weft, double shear, double poisson, string field) =>
        Assert.Equal(field, Assert.Throws<InputException>(() => FeltLaw.For(Felt(warp, weft, shear, poisson), 0)).Field);

    [Fact]
    public void Poisson_may_pass_1_where_the_warp_is_stiff_enough()
    {
        // Positive definite while nu < sqrt(E1/E2) = 2.
        Assert.True(FeltLaw.For(Felt(4, 1, 0.5, 1.9), 0).UU > 0);
        Assert.Contains(
            "below 2 is allowed", Assert.Throws<InputException>(() => FeltLaw.For(Felt(4, 1, 0.5, 2), 0)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Felt_with_a_warp_needs_an_angle() =>
        Assert.Equal("panel.warpAngleDeg", Assert.Throws<InputException>(() => FeltLaw.For(Felt(2.4, 1.6, 0.6, 0.35), null)).Field);

    // Energy for strains given along and across a direction.
    [Fact]
    public void A_mistyped_shear_modulus_is_told_the_one_of_felt_without_a_warp()
    {
        // E / (2 (1 + nu)) = 2 / 2.6.
        InputException error = Assert.Throws<InputException>(() => FeltLaw.For(Balls.Usual().Felt with { ShearModulusNPerMm = 0.7 }, null));

        Assert.Equal("felt.shearModulusNPerMm", error.Field);
        Assert.Contains("felt without a warp has 0.7692 here", error.Message, StringComparison.Ordinal);
    }

    private static double Energy(FeltLaw law, double direction, double along, double across, double shear)
    {
        (double s, double c) = Math.SinCos(direction);
        double uu = (along * c * c) + (across * s * s) - (shear * c * s);
        double vv = (along * s * s) + (across * c * c) + (shear * c * s);
        double twiceUV = (2 * (along - across) * c * s) + (shear * ((c * c) - (s * s)));
        return law.Energy(1 + (2 * uu), twiceUV, 1 + (2 * vv));
    }

    private static FeltSpec Felt(double warp, double weft, double shear, double poisson) =>
        Balls.Usual().Felt with { WarpModulusNPerMm = warp, WeftModulusNPerMm = weft, ShearModulusNPerMm = shear, Poisson = poisson };
}
