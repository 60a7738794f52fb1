using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>Elastic energy for a flat area as a function of where the felt lies on the sphere, by the angles along (l) and across (p) of
/// (sin l cos p, sin p, cos l cos p), with its derivatives by l_u, l_v, p_u, p_v and p.</summary>
/// <remarks>C = cos^2 p grad l grad l' + grad p grad p', energy as in <see cref="FeltLaw.Energy"/>.</remarks>
internal readonly struct WrapDensity
{
    private readonly FeltLaw law;
    private readonly double lu;
    private readonly double lv;
    private readonly double pu;
    private readonly double pv;
    private readonly double k;
    private readonly double k1;
    private readonly double k2;
    private readonly double e;
    private readonly double f;
    private readonly double g;
    private readonly double s11;
    private readonly double s22;
    private readonly double s12;

    /// <summary>State at a place.</summary>
    public WrapDensity(in FeltLaw law, double lu, double lv, double pu, double pv, double p)
    {
        this.law = law;
        (this.lu, this.lv, this.pu, this.pv) = (lu, lv, pu, pv);
        (double sin, double cos) = Math.SinCos(p);
        (k, k1, k2) = (cos * cos, -2 * sin * cos, 2 * ((sin * sin) - (cos * cos)));
        e = ((k * lu * lu) + (pu * pu) - 1) / 2;
        f = ((k * lv * lv) + (pv * pv) - 1) / 2;
        g = (k * lu * lv) + (pu * pv);
        s11 = (law.UU * e) + (law.UV * f) + (law.US * g);
        s22 = (law.UV * e) + (law.VV * f) + (law.VS * g);
        s12 = (law.US * e) + (law.VS * f) + (law.SS * g);
    }

    /// <summary>Energy.</summary>
    public double Value => 0.5 * ((s11 * e) + (s22 * f) + (s12 * g));

    /// <summary>Stretch tensor less the unit tensor, halved: uu, uv, vv.</summary>
    public (double UU, double UV, double VV) Strain => (e, g / 2, f);

    /// <summary>Tension across a flat edge of unit length with this normal, as a force along and across on the sphere.</summary>
    public (double Along, double Across) Pull(double nu, double nv)
    {
        double tu = (s11 * nu) + (s12 * nv);
        double tv = (s12 * nu) + (s22 * nv);
        double c = Math.Sqrt(k);
        return (c * ((lu * tu) + (lv * tv)), (pu * tu) + (pv * tv));
    }

    /// <summary>First derivatives.</summary>
    public void First(Span<double> to)
    {
        to[0] = k * ((s11 * lu) + (s12 * lv));
        to[1] = k * ((s12 * lu) + (s22 * lv));
        to[2] = (s11 * pu) + (s12 * pv);
        to[3] = (s12 * pu) + (s22 * pv);
        to[4] = k1 * ((s11 * lu * lu / 2) + (s22 * lv * lv / 2) + (s12 * lu * lv));
    }

    /// <summary>Second derivatives, 5 x 5 rows.</summary>
    public void Second(Span<double> to)
    {
        ReadOnlySpan<double> de = [k * lu, 0, pu, 0, k1 * lu * lu / 2];
        ReadOnlySpan<double> df = [0, k * lv, 0, pv, k1 * lv * lv / 2];
        ReadOnlySpan<double> dg = [k * lv, k * lu, pv, pu, k1 * lu * lv];
        for (int i = 0; i < 5; i++)
        {
            double a = (law.UU * de[i]) + (law.UV * df[i]) + (law.US * dg[i]);
            double b = (law.UV * de[i]) + (law.VV * df[i]) + (law.VS * dg[i]);
            double c = (law.US * de[i]) + (law.VS * df[i]) + (law.SS * dg[i]);
            for (int j = 0; j < 5; j++)
            {
                to[(5 * i) + j] = (a * de[j]) + (b * df[j]) + (c * dg[j]);
            }
        }

        to[0] += s11 * k;
        to[6] += s22 * k;
        to[12] += s11;
        to[18] += s22;
        to[1] += s12 * k;
        to[5] += s12 * k;
        to[13] += s12;
        to[17] += s12;
        double byU = k1 * ((s11 * lu) + (s12 * lv));
        double byV = k1 * ((s22 * lv) + (s12 * lu));
        to[4] += byU;
        to[20] += byU;
        to[9] += byV;
        to[21] += byV;
        to[24] += k2 * ((s11 * lu * lu / 2) + (s22 * lv * lv / 2) + (s12 * lu * lv));
    }
}
