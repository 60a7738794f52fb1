using System.Globalization;

namespace FeltNest.Ball.Ranges;

/// <summary>What the specification can say but the program cannot compute yet: the one place that refuses it, so that it is lifted here alone.</summary>
public static class BuiltSoFar
{
    // Isotropic felt has shear modulus = modulus / (2 (1 + Poisson)); the share by which a rounded input may miss it.
    private const double ShearAgreement = 0.005;

    /// <summary>The specification itself when everything it asks for is built.</summary>
    /// <exception cref="InputException">A seam family other than two-harmonic, or felt that is not the same in all directions.</exception>
    public static BallSpec Checked(BallSpec ball)
    {
        if (ball.Seam.Curve != SeamFamily.TwoHarmonic)
        {
            throw new InputException(null, "seam.curve", "this seam family is reserved, not built yet: use two-harmonic");
        }

        FeltSpec felt = ball.Felt;
        if (felt.WarpModulusNPerMm != felt.WeftModulusNPerMm)
        {
            throw new InputException(null, "felt.weftModulusNPerMm", string.Create(
                CultureInfo.InvariantCulture,
                $"{felt.WeftModulusNPerMm:R} N/mm differs from felt.warpModulusNPerMm {felt.WarpModulusNPerMm:R}: felt with a warp is not built yet, both must be equal"));
        }

        double shear = felt.WarpModulusNPerMm / (2 * (1 + felt.Poisson));
        if (Math.Abs(felt.ShearModulusNPerMm - shear) > ShearAgreement * shear)
        {
            throw new InputException(null, "felt.shearModulusNPerMm", string.Create(
                CultureInfo.InvariantCulture,
                $"{felt.ShearModulusNPerMm:R} N/mm does not agree with the other two: modulus / (2 (1 + poisson)) = {shear:0.####} N/mm, within {100 * ShearAgreement} %"));
        }

        return ball;
    }
}
