namespace FeltNest.Seam;

/// <summary>A closed curve near the unit sphere as sums of sines and cosines that have the seam's two symmetries term by term.</summary>
/// <remarks>x = sum of a sin ks + b cos ks over odd k; y follows from x, as s meets pi/2 - s; z = sum of c cos ks (k = 2, 6, 10, ...) and d
/// sin ks (k = 4, 8, ...). With b and d zero the curve has both mirrors. Points are drawn to the sphere along their radius.</remarks>
internal sealed class SeamSeries
{
    private readonly double[] plan;
    private readonly double[] planSkew;
    private readonly double[] height;
    private readonly double[] heightSkew;

    /// <summary>A curve of given coefficients.</summary>
    /// <param name="plan">a for k = 1, 3, 5, ...</param>
    /// <param name="planSkew">b for k = 1, 3, 5, ..., as many, or none.</param>
    /// <param name="height">c for k = 2, 6, 10, ...</param>
    /// <param name="heightSkew">d for k = 4, 8, 12, ..., or none.</param>
    public SeamSeries(double[] plan, double[] planSkew, double[] height, double[] heightSkew)
    {
        this.plan = plan;
        this.planSkew = planSkew;
        this.height = height;
        this.heightSkew = heightSkew;
    }

    /// <summary>Place and derivatives.</summary>
    public SeamJet At(double s)
    {
        double x = 0;
        double dx = 0;
        double ddx = 0;
        double y = 0;
        double dy = 0;
        double ddy = 0;
        double z = 0;
        double dz = 0;
        double ddz = 0;
        for (int i = 0; i < plan.Length; i++)
        {
            double k = (2 * i) + 1;
            double mate = i % 2 == 0 ? -1 : 1;
            double skew = planSkew.Length > 0 ? planSkew[i] : 0;
            (double sin, double cos) = Math.SinCos(k * s);
            double here = (plan[i] * sin) + (skew * cos);
            double slope = (plan[i] * cos) - (skew * sin);
            double there = mate * ((plan[i] * cos) + (skew * sin));
            double thereSlope = mate * ((skew * cos) - (plan[i] * sin));
            (x, dx, ddx) = (x + here, dx + (k * slope), ddx - (k * k * here));
            (y, dy, ddy) = (y + there, dy + (k * thereSlope), ddy - (k * k * there));
        }

        for (int i = 0; i < Math.Max(height.Length, heightSkew.Length); i++)
        {
            double k = (4 * i) + 2;
            double l = (4 * i) + 4;
            double c = i < height.Length ? height[i] : 0;
            double d = i < heightSkew.Length ? heightSkew[i] : 0;
            (double sinK, double cosK) = Math.SinCos(k * s);
            (double sinL, double cosL) = Math.SinCos(l * s);
            z += (c * cosK) + (d * sinL);
            dz += (d * l * cosL) - (c * k * sinK);
            ddz -= (c * k * k * cosK) + (d * l * l * sinL);
        }

        return OnSphere(new(x, y, z), new(dx, dy, dz), new(ddx, ddy, ddz));
    }

    // The curve p/|p| and its derivatives, from those of p.
    internal static SeamJet OnSphere(SpherePoint p, SpherePoint d, SpherePoint dd)
    {
        double r = p.Length;
        double dr = p.Dot(d) / r;
        double ddr = (d.Dot(d) + p.Dot(dd) - (dr * dr)) / r;
        SpherePoint unit = (1 / r) * p;
        SpherePoint first = (1 / r) * (d - (dr * unit));
        return new SeamJet(unit, first, (1 / r) * (dd - (2 * dr * first) - (ddr * unit)));
    }
}
