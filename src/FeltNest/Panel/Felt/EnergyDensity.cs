using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Felt;

/// <summary>Elastic energy at one place of the disc as a function of the gradient of the flat map, with its first and second
/// derivatives.</summary>
/// <remarks><para>The felt is stress-free when flat and F maps flat to sphere. With A the sphere's metric on the disc and G the gradient of
/// the flat map, C = F'F = K' A K with K = 1/G, and the energy over the disc is W(C) det G: the unknown is the flat shape, not the
/// stretched one.</para>
/// <para>With L = dG K, dC = -(C L + L' C), so the first derivative is det G (W I - C S) K', the configurational tension (J. D. Eshelby,
/// <i>J. Elasticity</i> 5, 1975), and the second is the bilinear form written in <see cref="Second"/>. Own derivation, tested against
/// differences.</para></remarks>
internal readonly ref struct EnergyDensity
{
    private readonly FeltLaw law;
    private readonly double det;
    private readonly double w;
    private readonly double k11;
    private readonly double k12;
    private readonly double k21;
    private readonly double k22;
    private readonly double c11;
    private readonly double c12;
    private readonly double c22;
    private readonly double s11;
    private readonly double s12;
    private readonly double s22;
    private readonly double m11;
    private readonly double m12;
    private readonly double m21;
    private readonly double m22;

    /// <summary>State at a place.</summary>
    /// <param name="law">Felt law.</param>
    /// <param name="a">Metric of the sphere on the disc.</param>
    /// <param name="ux">Flat u by x.</param>
    /// <param name="uy">Flat u by y.</param>
    /// <param name="vx">Flat v by x.</param>
    /// <param name="vy">Flat v by y.</param>
    public EnergyDensity(in FeltLaw law, in Metric a, double ux, double uy, double vx, double vy)
    {
        this.law = law;
        det = (ux * vy) - (uy * vx);
        k11 = vy / det;
        k12 = -uy / det;
        k21 = -vx / det;
        k22 = ux / det;
        double p11 = (a.XX * k11) + (a.XY * k21);
        double p12 = (a.XX * k12) + (a.XY * k22);
        double p21 = (a.XY * k11) + (a.YY * k21);
        double p22 = (a.XY * k12) + (a.YY * k22);
        c11 = (k11 * p11) + (k21 * p21);
        c12 = (k11 * p12) + (k21 * p22);
        c22 = (k12 * p12) + (k22 * p22);
        double e = (c11 - 1) / 2;
        double f = (c22 - 1) / 2;
        double g = c12;
        s11 = (law.UU * e) + (law.UV * f) + (law.US * g);
        s22 = (law.UV * e) + (law.VV * f) + (law.VS * g);
        s12 = (law.US * e) + (law.VS * f) + (law.SS * g);
        w = 0.5 * ((s11 * e) + (s22 * f) + (s12 * g));
        m11 = (c11 * s11) + (c12 * s12);
        m12 = (c11 * s12) + (c12 * s22);
        m21 = (c12 * s11) + (c22 * s12);
        m22 = (c12 * s12) + (c22 * s22);
    }

    /// <summary>Whether the flat map keeps its orientation here: where it does not, there is no energy.</summary>
    public bool IsSound => det > 0;

    /// <summary>Energy over a unit of disc area.</summary>
    public double Value => w * det;

    /// <summary>Flat area over disc area.</summary>
    public double Area => det;

    /// <summary>The stretch tensor in the flat axes.</summary>
    public Metric Stretch => new(c11, c12, c22);

    /// <summary>Derivatives by ux, uy, vx, vy.</summary>
    public void First(Span<double> to)
    {
        double e11 = w - m11;
        double e12 = -m12;
        double e21 = -m21;
        double e22 = w - m22;
        to[0] = det * ((e11 * k11) + (e12 * k12));
        to[1] = det * ((e11 * k21) + (e12 * k22));
        to[2] = det * ((e21 * k11) + (e22 * k12));
        to[3] = det * ((e21 * k21) + (e22 * k22));
    }

    /// <summary>Second derivatives, 4 x 4 rows in the order of <see cref="First"/>.</summary>
    public void Second(Span<double> to)
    {
        for (int a = 0; a < 4; a++)
        {
            for (int b = 0; b <= a; b++)
            {
                to[(4 * a) + b] = to[(4 * b) + a] = det * Pair(a >> 1, a & 1, b >> 1, b & 1);
            }
        }
    }

    // i, j: row and column of the first changed entry of G; p, q: of the second. L has one row, that of K: m for the first, n for the
    // second.
    private double Pair(int i, int j, int p, int q)
    {
        double m1 = j == 0 ? k11 : k21;
        double m2 = j == 0 ? k12 : k22;
        double n1 = q == 0 ? k11 : k21;
        double n2 = q == 0 ? k12 : k22;
        double mi = i == 0 ? m1 : m2;
        double mp = p == 0 ? m1 : m2;
        double ni = i == 0 ? n1 : n2;
        double np = p == 0 ? n1 : n2;
        double csmI = i == 0 ? (m11 * m1) + (m12 * m2) : (m21 * m1) + (m22 * m2);
        double csmP = p == 0 ? (m11 * m1) + (m12 * m2) : (m21 * m1) + (m22 * m2);
        double csnI = i == 0 ? (m11 * n1) + (m12 * n2) : (m21 * n1) + (m22 * n2);
        double csnP = p == 0 ? (m11 * n1) + (m12 * n2) : (m21 * n1) + (m22 * n2);
        double ci1 = i == 0 ? c11 : c12;
        double ci2 = i == 0 ? c12 : c22;
        double cp1 = p == 0 ? c11 : c12;
        double cp2 = p == 0 ? c12 : c22;
        double e = ci1 * m1;
        double f = ci2 * m2;
        double g = (ci1 * m2) + (ci2 * m1);
        double h = cp1 * n1;
        double k = cp2 * n2;
        double l = (cp1 * n2) + (cp2 * n1);
        double stiff = (h * ((law.UU * e) + (law.UV * f) + (law.US * g)))
            + (k * ((law.UV * e) + (law.VV * f) + (law.VS * g)))
            + (l * ((law.US * e) + (law.VS * f) + (law.SS * g)));
        double held = (n1 * ((s11 * m1) + (s12 * m2))) + (n2 * ((s12 * m1) + (s22 * m2)));
        double cip = p == 0 ? ci1 : ci2;
        return (w * ((mi * np) - (mp * ni))) - (np * csmI) - (mi * csnP) + stiff + (ni * csmP) + (mp * csnI) + (cip * held);
    }
}
