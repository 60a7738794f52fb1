using FeltNest.Seam;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>The seam by its angles along and across the panel, with two derivatives by the seam parameter.</summary>
internal readonly record struct SeamChart
{
    public required double Along { get; init; }

    public required double AlongSlope { get; init; }

    public required double AlongBend { get; init; }

    public required double Across { get; init; }

    public required double AcrossSlope { get; init; }

    public required double AcrossBend { get; init; }

    /// <summary>The place of a parameter.</summary>
    public static SeamChart At(SeamCurve seam, double s)
    {
        SeamJet jet = seam.At(s);
        (SpherePoint p, SpherePoint d, SpherePoint b) = (jet.Point, jet.First, jet.Second);
        double r2 = (p.X * p.X) + (p.Z * p.Z);
        double r2Slope = 2 * ((p.X * d.X) + (p.Z * d.Z));
        double turn = (d.X * p.Z) - (p.X * d.Z);
        double turnSlope = (b.X * p.Z) - (p.X * b.Z);
        double cos = Math.Sqrt(r2);
        double across = d.Y / cos;
        return new SeamChart
        {
            Along = Math.Atan2(p.X, p.Z),
            AlongSlope = turn / r2,
            AlongBend = (turnSlope / r2) - (turn * r2Slope / (r2 * r2)),
            Across = Math.Asin(p.Y),
            AcrossSlope = across,
            AcrossBend = (b.Y / cos) + (across * across * p.Y / cos),
        };
    }
}
