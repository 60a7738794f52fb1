using FeltNest.Seam;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>The seam by its angles along and across the panel, with two derivatives by the seam parameter.</summary>
internal readonly record struct SeamChart(
    double Along, double AlongSlope, double AlongBend, double Across, double AcrossSlope, double AcrossBend)
{
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
        return new SeamChart(
            Math.Atan2(p.X, p.Z), turn / r2, (turnSlope / r2) - (turn * r2Slope / (r2 * r2)), Math.Asin(p.Y), across,
            (b.Y / cos) + (across * across * p.Y / cos));
    }
}
