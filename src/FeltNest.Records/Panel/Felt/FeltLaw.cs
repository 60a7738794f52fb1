using System.Globalization;
using FeltNest.Ball;

namespace FeltNest.Panel.Felt;

/// <summary>Plane-stress stiffness of felt in the panel's own axes: tension per width from Green strain, both in axes u, v of the flat
/// panel.</summary>
/// <remarks>The law is linear between the second Piola-Kirchhoff tension and the Green strain (St Venant-Kirchhoff), as in R. W. Ogden,
/// <i>Non-Linear Elastic Deformations</i>, 1984, section 4.3. Strain order: uu, vv, twice uv. No bending, no wrinkling.</remarks>
internal readonly record struct FeltLaw
{
    /// <summary>Tension uu for strain uu.</summary>
    public required double UU { get; init; }

    /// <summary>Tension uu for strain vv.</summary>
    public required double UV { get; init; }

    /// <summary>Tension vv for strain vv.</summary>
    public required double VV { get; init; }

    /// <summary>Tension uu for twice the shear strain.</summary>
    public required double US { get; init; }

    /// <summary>Tension vv for twice the shear strain.</summary>
    public required double VS { get; init; }

    /// <summary>Tension uv for twice the shear strain.</summary>
    public required double SS { get; init; }

    /// <summary>Whether the law equals its mirror image in the panel's axes.</summary>
    public bool IsMirrorSymmetric => US == 0 && VS == 0;

    /// <summary>Felt that is the same in all directions.</summary>
    /// <param name="modulus">Young's modulus times thickness.</param>
    /// <param name="poisson">Poisson's ratio.</param>
    public static FeltLaw Isotropic(double modulus, double poisson)
    {
        double plane = modulus / (1 - (poisson * poisson));
        return new FeltLaw
        {
            UU = plane,
            UV = poisson * plane,
            VV = plane,
            US = 0,
            VS = 0,
            SS = modulus / (2 * (1 + poisson)),
        };
    }

    /// <summary>Felt with a warp, seen from axes turned against it.</summary>
    /// <remarks>Plane stress of an orthotropic sheet and its turning as in R. M. Jones, <i>Mechanics of Composite Materials</i>, 2nd ed.
    /// 1999, sections 2.5 and 2.6.</remarks>
    /// <param name="warp">Modulus times thickness along the warp.</param>
    /// <param name="weft">Modulus times thickness along the weft.</param>
    /// <param name="shear">Shear modulus times thickness.</param>
    /// <param name="poisson">Shortening along the weft over stretch along the warp, for a pull along the warp.</param>
    /// <param name="direction">Direction of the warp in the panel's axes, radians.</param>
    /// <exception cref="ArgumentException">The moduli are not those of a stable sheet: its energy is not positive for every
    /// strain.</exception>
    public static FeltLaw Orthotropic(double warp, double weft, double shear, double poisson, double direction)
    {
        double part = 1 - (poisson * poisson * weft / warp);
        if (!(warp > 0 && weft > 0 && shear > 0 && part > 0))
        {
            throw new ArgumentException("the moduli are not positive definite", nameof(poisson));
        }

        double q11 = warp / part;
        double q22 = weft / part;
        double q12 = poisson * q22;
        double q66 = shear;
        (double s, double c) = Turn(direction);
        double cc = c * c;
        double ss = s * s;
        double cs = c * s;
        double along = q11 - q12 - (2 * q66);
        double across = q12 - q22 + (2 * q66);
        double mixed = 2 * (q12 + (2 * q66));
        return new FeltLaw
        {
            UU = (q11 * cc * cc) + (mixed * cc * ss) + (q22 * ss * ss),
            UV = ((q11 + q22 - (4 * q66)) * cc * ss) + (q12 * ((cc * cc) + (ss * ss))),
            VV = (q11 * ss * ss) + (mixed * cc * ss) + (q22 * cc * cc),
            US = cs * ((along * cc) + (across * ss)),
            VS = cs * ((along * ss) + (across * cc)),
            SS = ((q11 + q22 - (2 * q12) - (2 * q66)) * cc * ss) + (q66 * ((cc * cc) + (ss * ss))),
        };
    }

    /// <summary>Whether a felt is the same in all directions.</summary>
    public static bool IsIsotropic(FeltSpec felt)
    {
        // Moduli are given to three digits: a shear modulus within this part of the isotropic one is meant to be it.
        const double rounding = 1e-3;
        double shear = felt.WarpModulusNPerMm / (2 * (1 + felt.Poisson));
        return felt.WeftModulusNPerMm == felt.WarpModulusNPerMm && Math.Abs((felt.ShearModulusNPerMm / shear) - 1) <= rounding;
    }

    /// <summary>The law of a felt for a panel, N/mm.</summary>
    /// <param name="felt">The felt.</param>
    /// <param name="warpAngle">Angle from the warp to the panel's +u, radians; null where any angle serves, which only felt without a warp
    /// allows.</param>
    /// <exception cref="InputException">The moduli are no moduli, or are not positive definite together, or felt with a warp was given no
    /// angle.</exception>
    public static FeltLaw For(FeltSpec felt, double? warpAngle)
    {
        double warp = felt.WarpModulusNPerMm;
        double weft = felt.WeftModulusNPerMm;
        double shear = felt.ShearModulusNPerMm;
        foreach ((string field, double modulus) in new[] { ("warp", warp), ("weft", weft), ("shear", shear) })
        {
            if (!(modulus > 0 && double.IsFinite(modulus)))
            {
                throw new InputException(null, $"felt.{field}ModulusNPerMm", FormattableString.Invariant($"{modulus}; above 0 is allowed"));
            }
        }

        double most = Math.Sqrt(warp / weft);
        if (!(felt.Poisson >= 0 && felt.Poisson < most))
        {
            throw new InputException(null, "felt.poisson", string.Create(
                CultureInfo.InvariantCulture,
                $"{felt.Poisson}; 0 to below {most:0.####} is allowed with these moduli (the root of warp over weft modulus), else the "
                    + $"felt would give energy when stretched"));
        }

        if (IsIsotropic(felt))
        {
            return Isotropic(warp, felt.Poisson);
        }

        return warpAngle is { } angle ? Orthotropic(warp, weft, shear, felt.Poisson, -angle) : throw NoAngle(felt);
    }

    private static InputException NoAngle(FeltSpec felt) => felt.WarpModulusNPerMm == felt.WeftModulusNPerMm
        ? new InputException(null, "felt.shearModulusNPerMm", string.Create(
            CultureInfo.InvariantCulture,
            $"{felt.ShearModulusNPerMm}; felt without a warp has {felt.WarpModulusNPerMm / (2 * (1 + felt.Poisson)):0.####} here, warp "
                + $"modulus / (2 (1 + poisson)), within 0.1 %; any other value is felt with a warp, and panel.warpAngleDeg needs an angle "
                + $"in degrees"))
        : new InputException(
            null, "panel.warpAngleDeg", "any; felt with a warp (its moduli differ by direction) needs an angle in degrees");

    /// <summary>The law with all stiffnesses multiplied.</summary>
    public FeltLaw Scaled(double factor) => new()
    {
        UU = factor * UU,
        UV = factor * UV,
        VV = factor * VV,
        US = factor * US,
        VS = factor * VS,
        SS = factor * SS,
    };

    /// <summary>Energy per flat area for a stretch tensor C (squared lengths on the sphere of unit lengths in the flat).</summary>
    /// <param name="cUU">C along u.</param>
    /// <param name="cUV">C between u and v.</param>
    /// <param name="cVV">C along v.</param>
    public double Energy(double cUU, double cUV, double cVV)
    {
        double u = (cUU - 1) / 2;
        double v = (cVV - 1) / 2;
        double s = cUV;
        return 0.5 * ((UU * u * u) + (VV * v * v) + (SS * s * s)) + (UV * u * v) + (US * u * s) + (VS * v * s);
    }

    // Quarter turns are exact, so that a panel along or across the warp keeps its mirrors.
    private static (double Sin, double Cos) Turn(double angle)
    {
        // Angles this near to a quarter turn, radians, are it: 90 degrees is not exact in binary.
        const double straight = 1e-12;
        double quarters = Math.Round(angle / (Math.PI / 2));
        if (Math.Abs(angle - (quarters * Math.PI / 2)) > straight)
        {
            return Math.SinCos(angle);
        }

        if (quarters % 2 == 0)
        {
            return (0, 1);
        }

        return (1, 0);
    }
}
