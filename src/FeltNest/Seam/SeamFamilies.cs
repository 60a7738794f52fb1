using System.Globalization;
using FeltNest.Ball;

namespace FeltNest.Seam;

/// <summary>The seam curve that a family or a ball asks for.</summary>
internal static class SeamFamilies
{
    extension(SeamCurve)
    {
        /// <summary>Least and greatest waist a family takes, radians.</summary>
        /// <exception cref="InputException">The family is that of given points, which have a waist of their own.</exception>
        public static (double Least, double Greatest) WaistRange(SeamFamily family) => family switch
        {
            SeamFamily.TwoHarmonic => (TwoHarmonicSeam.LeastWaistAngle, TwoHarmonicSeam.GreatestWaistAngle),
            SeamFamily.FourArc => (FourArcSeam.LeastWaistAngle, FourArcSeam.GreatestWaistAngle),
            SeamFamily.Elastica => (ElasticaSeam.LeastWaistAngle, ElasticaSeam.GreatestWaistAngle),
            SeamFamily.Shaped => (TwoHarmonicSeam.LeastWaistAngle, TwoHarmonicSeam.GreatestWaistAngle),
            _ => throw HasOwnWaist(),
        };

        /// <summary>The curve of a family with a given waist.</summary>
        /// <param name="family">Family wanted.</param>
        /// <param name="waistAngle">Waist as a great-circle arc, radians, within <see cref="WaistRange"/>.</param>
        /// <exception cref="InputException">The family is that of given points, which have a waist of their own.</exception>
        public static SeamCurve For(SeamFamily family, double waistAngle) => family switch
        {
            SeamFamily.TwoHarmonic => TwoHarmonicSeam.ForWaist(waistAngle),
            SeamFamily.FourArc => FourArcSeam.ForWaist(waistAngle),
            SeamFamily.Elastica => ElasticaSeam.ForWaist(waistAngle),
            _ => throw HasOwnWaist(),
        };

        /// <summary>The curve a ball asks for.</summary>
        /// <param name="seam">What is asked.</param>
        /// <param name="radiusMm">Radius of the fitted sphere, mm.</param>
        /// <exception cref="InputException">The waist does not fit the sphere, or the points are no seam.</exception>
        public static SeamCurve For(SeamSpec seam, double radiusMm)
        {
            if (seam.Curve == SeamFamily.Points)
            {
                return seam.WaistMm == 0
                    ? PointSeam.Through(seam.Points ?? [])
                    : throw new InputException(
                        null, "seam.waistMm",
                        FormattableString.Invariant($"{seam.WaistMm} mm, but a seam given as points has a waist of its own; leave it out"));
            }

            if (seam.Offsets is not null && seam.Curve != SeamFamily.Shaped)
            {
                throw new InputException(null, "seam.offsets", "given, but seam.curve is not shaped; leave one of them out");
            }

            if (seam.Points is not null)
            {
                throw new InputException(null, "seam.points", "given, but seam.curve is not points; leave one of them out");
            }

            (double least, double greatest) = WaistRange(seam.Curve);
            double waist = seam.WaistMm / radiusMm;
            return waist >= least && waist <= greatest
                ? Of(seam, waist, radiusMm)
                : throw new InputException(null, "seam.waistMm", string.Create(
                    CultureInfo.InvariantCulture,
                    $"{seam.WaistMm} mm on a fitted sphere of radius {radiusMm:0.###} mm; "
                        + $"{Math.Ceiling(least * radiusMm * 100) / 100:0.##} "
                        + $"to {Math.Floor(greatest * radiusMm * 100) / 100:0.##} mm are allowed"));
        }
    }

    private static SeamCurve Of(SeamSpec seam, double waist, double radiusMm) => seam.Curve == SeamFamily.Shaped
        ? ShapedSeam.Of(waist, [.. (seam.Offsets ?? []).Select(wave => (wave.Order, wave.AmountMm / radiusMm))])
        : SeamCurve.For(seam.Curve, waist);

    private static InputException HasOwnWaist() =>
        new(null, "seam.curve", "points; a waist can be chosen for two-harmonic, four-arc and elastica");
}
