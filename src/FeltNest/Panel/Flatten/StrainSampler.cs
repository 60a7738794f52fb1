using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Flatten;

/// <summary>Principal stretches (sphere/flat) of a flat map.</summary>
/// <param name="map">The map.</param>
/// <param name="radius">Radius of the sphere, mm.</param>
internal sealed class StrainSampler(FlatMap map, double radius)
{
    /// <summary>Least area of sphere for a unit of disc at a tip, at unit radius: a twentieth of that of a usual seam. Where the seam
    /// crosses a tip so bluntly that less is left, the polynomials do not settle and strains read there are spikes.</summary>
    public const double LeastTipArea = 0.25;

    // Places whose squared distance along the panel is above this lie at a tip.
    private const double AtTip = 0.8;

    /// <summary>Whether strains at a place of the disc can be believed.</summary>
    public bool IsSettled(double x, double y) => x * x < AtTip || AreaAt(x, y) >= LeastTipArea;

    /// <summary>Refuses a panel that folds over itself, on the sphere or in the flat.</summary>
    /// <exception cref="NoAnswerException">It does, at a place that is told.</exception>
    public void RefuseFold(StrainField field)
    {
        for (int spoke = 0; spoke < field.Spokes / 2; spoke++)
        {
            (double y, double x) = Math.SinCos(map.Domain.EdgeAt(2 * Math.PI * spoke / field.Spokes).Angle);
            for (int ring = 1; ring < field.Rings; ring++)
            {
                double r = ring / (field.Rings - 1.0);
                FlatJet flat = map.At(r * x, r * y);
                if (!(AreaAt(r * x, r * y) > 0) || !((flat.Ux * flat.Vy) - (flat.Uy * flat.Vx) > 0))
                {
                    throw new NoAnswerException(FormattableString.Invariant(
                        $"the panel folds over itself {radius * flat.Place.X:0.0} mm along and {radius * flat.Place.Y:0.0} mm across from ")
                        + "its middle: the seam is too blunt or hollow at its tips, or too wavy, for a panel to follow");
                }
            }
        }
    }

    private bool IsSettled(StrainField field, int sample)
    {
        double angle = map.Domain.EdgeAt(2 * Math.PI * (sample % field.Spokes) / field.Spokes).Angle;
        double r = sample / field.Spokes / (field.Rings - 1.0);
        return IsSettled(r * Math.Cos(angle), r * Math.Sin(angle));
    }

    private double AreaAt(double x, double y)
    {
        DomainJet sphere = map.Domain.At(x, y);
        return sphere.Dx.Cross(sphere.Dy).Dot(sphere.Point);
    }

    /// <summary>Strain at a place of the disc.</summary>
    public StrainSample At(double x, double y)
    {
        DomainJet sphere = map.Domain.At(x, y);
        FlatJet flat = map.At(x, y);
        Metric c = new EnergyDensity(default, sphere.Metric, flat.Ux, flat.Uy, flat.Vx, flat.Vy).Stretch;
        double mean = (c.XX + c.YY) / 2;
        double half = (c.XX - c.YY) / 2;
        double apart = Math.Sqrt((half * half) + (c.XY * c.XY));

        // The lesser principal value by the determinant, which keeps its digits where the two are far apart.
        double major = mean + apart;
        double minor = ((c.XX * c.YY) - (c.XY * c.XY)) / major;
        return new StrainSample
        {
            Place = flat.Place * radius,
            MajorPercent = 100 * (Math.Sqrt(major) - 1),
            MinorPercent = 100 * (Math.Sqrt(minor) - 1),
            MajorAngle = 0.5 * Math.Atan2(c.XY, half),
            Fitted = sphere.Point,
        };
    }

    /// <summary>Strain on rings and spokes; spokes at equal steps of the seam parameter from s = 0.</summary>
    /// <param name="rings">Rings, the pole's included.</param>
    /// <param name="spokes">Samples a ring, an even number.</param>
    public StrainField Field(int rings, int spokes)
    {
        StrainSample[] samples = new StrainSample[rings * spokes];
        for (int spoke = 0; spoke < spokes / 2; spoke++)
        {
            (double y, double x) = Math.SinCos(map.Domain.EdgeAt(2 * Math.PI * spoke / spokes).Angle);
            for (int ring = 0; ring < rings; ring++)
            {
                double r = ring / (rings - 1.0);
                StrainSample here = At(r * x, r * y);
                samples[(ring * spokes) + spoke] = here;
                samples[(ring * spokes) + spoke + (spokes / 2)] =
                    here with { Place = -here.Place, Fitted = new(-here.Fitted.X, -here.Fitted.Y, here.Fitted.Z) };
            }
        }

        Array.Fill(samples, samples[0], 0, spokes);
        return new StrainField { Rings = rings, Spokes = spokes, Samples = samples };
    }

    /// <summary>Greatest value of a quantity of the strain over the panel, refined from a field's best sample.</summary>
    /// <param name="field">The field.</param>
    /// <param name="quantity">The quantity.</param>
    /// <param name="settled">Only where strains can be believed.</param>
    public double Greatest(StrainField field, Func<StrainSample, double> quantity, bool settled = false)
    {
        int best = 0;
        for (int i = 1; i < field.Samples.Count; i++)
        {
            bool counts = quantity(field.Samples[i]) > quantity(field.Samples[best]) && (!settled || IsSettled(field, i));
            best = counts ? i : best;
        }

        double angle = map.Domain.EdgeAt(2 * Math.PI * (best % field.Spokes) / field.Spokes).Angle;
        double r = best / field.Spokes / (field.Rings - 1.0);
        double found = quantity(field.Samples[best]);

        // Steps to the four sides, halved when none is better, down to where an extreme is flat to the last digits.
        const double finest = 1e-7;
        for (double step = 1.0 / field.Rings; step > finest;)
        {
            double bestR = r;
            double bestAngle = angle;
            double before = found;
            foreach ((double nr, double na) in new[]
            {
                (Math.Min(1, r + step), angle),
                (Math.Max(0, r - step), angle),
                (r, angle + step),
                (r, angle - step),
            })
            {
                (double x, double y) = (nr * Math.Cos(na), nr * Math.Sin(na));
                double value = settled && !IsSettled(x, y) ? double.NegativeInfinity : quantity(At(x, y));
                (found, bestR, bestAngle) = value > found ? (value, nr, na) : (found, bestR, bestAngle);
            }

            step = found > before ? step : step / 2;
            (r, angle) = (bestR, bestAngle);
        }

        return found;
    }
}
