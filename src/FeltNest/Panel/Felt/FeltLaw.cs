using FeltNest.Ball;

namespace FeltNest.Panel.Felt;

/// <summary>Plane-stress stiffness of felt in the panel's own axes: tension per width from Green strain, both in axes u, v of the flat panel.</summary>
/// <remarks>The law is linear between the second Piola-Kirchhoff tension and the Green strain (St Venant-Kirchhoff), as in R. W. Ogden, <i>Non-Linear Elastic Deformations</i>, 1984, section 4.3.
/// Strain order: uu, vv, twice uv. No bending, no wrinkling.</remarks>
/// <param name="UU">Tension uu for strain uu.</param>
/// <param name="UV">Tension uu for strain vv.</param>
/// <param name="VV">Tension vv for strain vv.</param>
/// <param name="US">Tension uu for twice the shear strain.</param>
/// <param name="VS">Tension vv for twice the shear strain.</param>
/// <param name="SS">Tension uv for twice the shear strain.</param>
public readonly record struct FeltLaw(double UU, double UV, double VV, double US, double VS, double SS)
{
    /// <summary>Whether the law equals its mirror image in the panel's axes.</summary>
    public bool IsMirrorSymmetric => US == 0 && VS == 0;

    /// <summary>Felt that is the same in all directions.</summary>
    /// <param name="modulus">Young's modulus times thickness.</param>
    /// <param name="poisson">Poisson's ratio.</param>
    public static FeltLaw Isotropic(double modulus, double poisson)
    {
        double plane = modulus / (1 - (poisson * poisson));
        return new FeltLaw(plane, poisson * plane, plane, 0, 0, modulus / (2 * (1 + poisson)));
    }

    /// <summary>The law of a felt for a panel, N/mm.</summary>
    /// <param name="felt">The felt, the same in all directions.</param>
    /// <exception cref="InputException">The felt has a warp: its moduli differ, or its shear modulus is not that of an isotropic felt; or they are no moduli at all.</exception>
    public static FeltLaw For(FeltSpec felt)
    {
        // Moduli are given to three digits: a shear modulus within this part of the isotropic one is meant to be it.
        const double rounding = 1e-3;
        double modulus = felt.WarpModulusNPerMm, shear = modulus / (2 * (1 + felt.Poisson));
        if (!(modulus > 0 && double.IsFinite(modulus)))
        {
            throw new InputException(null, "felt.warpModulusNPerMm", FormattableString.Invariant($"{modulus}; above 0 is allowed"));
        }

        if (!(felt.Poisson >= 0 && felt.Poisson < 1))
        {
            throw new InputException(null, "felt.poisson", FormattableString.Invariant($"{felt.Poisson}; 0 to below 1 is allowed"));
        }

        if (felt.WeftModulusNPerMm != modulus)
        {
            throw new InputException(null, "felt.weftModulusNPerMm", FormattableString.Invariant($"{felt.WeftModulusNPerMm}; {modulus} as along the warp is allowed, felt with a warp is not built yet"));
        }

        return Math.Abs((felt.ShearModulusNPerMm / shear) - 1) <= rounding
            ? Isotropic(modulus, felt.Poisson)
            : throw new InputException(null, "felt.shearModulusNPerMm", FormattableString.Invariant($"{felt.ShearModulusNPerMm}; {shear:0.####} (isotropic, to 0.1 %) is allowed, felt with a warp is not built yet"));
    }

    /// <summary>The law with all stiffnesses multiplied.</summary>
    public FeltLaw Scaled(double factor) => new(factor * UU, factor * UV, factor * VV, factor * US, factor * VS, factor * SS);

    /// <summary>Energy per flat area for a stretch tensor C (squared lengths on the sphere of unit lengths in the flat).</summary>
    /// <param name="cUU">C along u.</param>
    /// <param name="cUV">C between u and v.</param>
    /// <param name="cVV">C along v.</param>
    public double Energy(double cUU, double cUV, double cVV)
    {
        double u = (cUU - 1) / 2, v = (cVV - 1) / 2, s = cUV;
        return 0.5 * ((UU * u * u) + (VV * v * v) + (SS * s * s)) + (UV * u * v) + (US * u * s) + (VS * v * s);
    }
}
