using FeltNest.Ball;
using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Thickness;

/// <summary>Works out what the felt's thickness adds to a panel.</summary>
/// <remarks>See README.md beside this file for formulas and sources.</remarks>
internal static class CoverThickness
{
    extension(ThroughThickness)
    {
        /// <summary>Of a ball's panel.</summary>
        public static ThroughThickness Of(BallSpec ball, FlatPanel panel)
        {
            double radius = panel.Sphere.RadiusMm;
            FeltLaw law = FeltLaw.For(ball.Felt, ball.Panel.WarpAngleDeg * Math.PI / 180);
            FeltLayer[] layers = [.. Layers(ball.Felt, radius)];
            double bending = Bending(law, ball.Felt.ThicknessMm, radius);
            (double edge, double s) = EdgeStrain(law, panel);
            double? limit = ball.Felt.PuckerLimitPercent is var most && most < 100 ? most : null;
            return new ThroughThickness
            {
                Layers = layers,
                Extremes = [.. layers.Select(layer => Extremes(layer, panel.Strain))],
                BendingNPerMm = bending,
                BendingNmm = bending * panel.Sphere.PanelAreaMm2,
                EdgeStrainNPerMm = edge,
                EdgeStrainS = s,
                PuckerLimitPercent = limit,
                HasOwnPuckerLimit = ball.Felt.MaxCompressionPercent is not null,
                PuckerSharePercent = limit is { } percent ? ShareAbove(panel, percent) : 0,
            };
        }
    }

    /// <summary>Glue face, middle and nap face of a felt on a sphere.</summary>
    /// <param name="felt">The felt.</param>
    /// <param name="radius">Radius of its neutral layer, mm.</param>
    internal static IEnumerable<FeltLayer> Layers(FeltSpec felt, double radius)
    {
        foreach (FeltLayerName name in Enum.GetValues<FeltLayerName>())
        {
            double z = (((int)name / 2.0) - felt.NeutralLayer) * felt.ThicknessMm;
            yield return new FeltLayer { Name = name, FromNeutralMm = z, Factor = 1 + (z / radius) };
        }
    }

    /// <summary>Energy of bending a unit of area of felt to a sphere, N/mm.</summary>
    /// <param name="law">Stiffness of the felt, N/mm.</param>
    /// <param name="thickness">Its thickness, mm.</param>
    /// <param name="radius">Radius of the sphere, mm.</param>
    internal static double Bending(in FeltLaw law, double thickness, double radius) =>
        (law.UU + (2 * law.UV) + law.VV) * thickness * thickness / (24 * radius * radius);

    private static LayerExtremes Extremes(FeltLayer layer, StrainSummary neutral) => new()
    {
        MaxStretchPercent = layer.PercentOf(neutral.MaxStretchPercent),
        MaxCompressionPercent = -layer.PercentOf(-neutral.MaxCompressionPercent),
    };

    // A spike at a tip reads more than the greatest real strain and is no strain of the felt.
    private static (double Energy, double S) EdgeStrain(FeltLaw law, FlatPanel panel)
    {
        const double spike = 0.5;
        (double most, double s) = (0, 0);
        for (int spoke = 0; spoke < panel.Field.Spokes; spoke++)
        {
            StrainSample here = panel.Field.At(panel.Field.Rings - 1, spoke);
            bool real = here.MajorPercent <= panel.Strain.MaxStretchPercent + spike
                && -here.MinorPercent <= panel.Strain.MaxCompressionPercent + spike;
            double energy = EnergyOnBall(law, here);
            (most, s) = real && energy > most ? (energy, 2 * Math.PI * spoke / panel.Field.Spokes) : (most, s);
        }

        return (most, s);
    }

    private static double EnergyOnBall(in FeltLaw law, StrainSample here)
    {
        double major = 1 + (here.MajorPercent / 100);
        double minor = 1 + (here.MinorPercent / 100);
        (double sin, double cos) = Math.SinCos(here.MajorAngle);
        double a = major * major;
        double b = minor * minor;
        double flat = law.Energy((a * cos * cos) + (b * sin * sin), (a - b) * sin * cos, (a * sin * sin) + (b * cos * cos));
        return flat / (major * minor);
    }

    // Cells between rings and spokes count by the mean of their corners. What a spike at a tip reads above the greatest real compression
    // does not count.
    private static double ShareAbove(FlatPanel panel, double limit)
    {
        StrainField field = panel.Field;
        double most = panel.Strain.MaxCompressionPercent;
        (double above, double all) = (0, 0);
        for (int ring = 0; ring + 1 < field.Rings; ring++)
        {
            for (int spoke = 0; spoke < field.Spokes; spoke++)
            {
                StrainSample[] corners =
                [
                    field.At(ring, spoke), field.At(ring + 1, spoke), field.At(ring + 1, spoke + 1), field.At(ring, spoke + 1),
                ];
                double area = (corners[2].Place - corners[0].Place).Cross(corners[3].Place - corners[1].Place) / 2;
                all += area;
                above += corners.Average(corner => Math.Min(most, -corner.MinorPercent)) > limit ? area : 0;
            }
        }

        return 100 * above / all;
    }
}
