namespace FeltNest.Ball.Passport;

/// <summary>The shear modulus from strips at 0, 45 and 90 degrees.</summary>
/// <remarks>1/G = 4/E45 - (1 - v12)/E1 - (1 - v21)/E2 with v21 = v12 E2/E1 (R. M. Jones, <i>Mechanics of Composite Materials</i>, 2nd ed.
/// 1999, section 2.6). It holds for moduli times thickness as well.</remarks>
internal static class ShearFit
{
    /// <summary>The modulus with its spread, and its error for one per cent of the bias modulus.</summary>
    /// <exception cref="NoAnswerException">The bias strips are too stiff for any shear modulus.</exception>
    public static (FeltValue Value, double Gain) Of(FeltValue warp, FeltValue weft, FeltValue bias, FeltValue poisson)
    {
        double softness = (4 / bias.Value) - (1 / warp.Value) - (1 / weft.Value) + (2 * poisson.Value / warp.Value);
        if (!(softness > 0))
        {
            throw new NoAnswerException(
                "strips at 45 degrees are too stiff beside those at 0 and 90 degrees: no shear modulus gives that; look at directions and "
                    + "forces");
        }

        double shear = 1 / softness;
        double slope = -shear * shear;
        FeltValue value = SpecimenMean.Joined(shear,
        [
            (bias, slope * -4 / (bias.Value * bias.Value)),
            (warp, slope * (1 - (2 * poisson.Value)) / (warp.Value * warp.Value)),
            (weft, slope / (weft.Value * weft.Value)),
            (poisson, slope * 2 / warp.Value),
        ]);
        return (value, 4 * shear / bias.Value);
    }
}
