using FeltNest.Geometry;
using FeltNest.Numerics;
using FeltNest.Panel;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Shape;
using FeltNest.Panel.Wrap;
using FeltNest.Seam;

namespace FeltNest.Design.SeamDesign;

/// <summary>Reads panels at places that stay the same from seam to seam.</summary>
internal sealed class SeamReader
{
    /// <summary>Places round the outline: 0.5 mm apart on a ball's panel, where the polygon lies 0.001 mm inside its curve.</summary>
    public const int Places = 480;

    // Rings of the field from the pole to the edge, and spokes over the whole turn: peaks are met to a few hundredths of a per cent.
    private const int Rings = 14;
    private const int Spokes = 176;

    private readonly FlatSpace space;
    private readonly bool feelsGap;
    private readonly GradientTable u;
    private readonly GradientTable v;
    private readonly double[] x;
    private readonly double[] y;

    /// <summary>Tabulates the functions of a space.</summary>
    /// <param name="space">The space.</param>
    /// <param name="feelsGap">Whether every panel is also laid on with its edge free: the dearest of what is read.</param>
    public SeamReader(FlatSpace space, bool feelsGap = false)
    {
        this.space = space;
        this.feelsGap = feelsGap;
        int share = space.IsMirrorSymmetric ? 4 : 2;
        List<(double X, double Y)> places = [(0, 0)];
        for (int ring = 1; ring < Rings; ring++)
        {
            for (int spoke = 0; spoke <= Spokes / share; spoke++)
            {
                (double sin, double cos) = Math.SinCos(2 * Math.PI * spoke / Spokes);
                double r = ring / (Rings - 1.0);
                places.Add((r * cos, r * sin));
            }
        }

        (x, y) = ([.. places.Select(p => p.X)], [.. places.Select(p => p.Y)]);
        u = new GradientTable(space.U, x, y);
        v = new GradientTable(space.V, x, y);
    }

    /// <summary>Looks at a panel.</summary>
    public SeamLook At(PanelRequest request, SeamDomain domain, double[] coefficients)
    {
        FlatMap map = new(domain, space, coefficients);
        FlatEdge edge = new(map, request.RadiusMm);
        CutEdge cut = AllowanceChain.Cut(request, edge);
        Point2[] outline = new Point2[Places];
        double[] curvature = new double[Places / 2];
        SpherePoint[] seam = new SpherePoint[Places];
        for (int i = 0; i < Places / 2; i++)
        {
            double s = 2 * Math.PI * i / Places;
            Point2 place = cut.At(s).Place;
            (outline[i], outline[i + (Places / 2)]) = (place, -place);
            SeamJet jet = request.Seam.At(s);
            curvature[i] = jet.GeodesicCurvature / request.RadiusMm;
            seam[i] = request.RadiusMm * jet.Point;
            seam[i + (Places / 2)] = new SpherePoint(-seam[i].X, -seam[i].Y, seam[i].Z);
        }

        (double[] stretch, double[] compression, double[] chart) = Strains(domain, coefficients);
        return new SeamLook
        {
            Outline = outline,
            Stretch = stretch,
            Compression = compression,
            Chart = chart,
            Curvature = curvature,
            Seam = seam,
            Gaps = feelsGap ? Gaps(request, edge) : [],
        };
    }

    private static double[] Gaps(PanelRequest request, FlatEdge edge)
    {
        WrapRequest laid = new(request.RadiusMm, request.Seam, request.Law, null, PanelFlattener.EdgeMap(edge));
        return [.. PanelWrap.RoughGaps(laid).Select(gap => gap ?? 0)];
    }

    private (double[] Stretch, double[] Compression, double[] Chart) Strains(SeamDomain domain, double[] coefficients)
    {
        int n = x.Length;
        double[] flatU = new double[2 * n];
        double[] flatV = new double[2 * n];
        for (int i = 0; i < space.U.Count; i++)
        {
            DenseRows.Add(flatU, coefficients[i], u.Row(i));
        }

        for (int i = 0; i < space.V.Count; i++)
        {
            DenseRows.Add(flatV, coefficients[space.U.Count + i], v.Row(i));
        }

        double[] stretch = new double[n];
        double[] compression = new double[n];
        double[] chart = new double[n];
        for (int q = 0; q < n; q++)
        {
            DomainJet sphere = domain.At(x[q], y[q]);
            chart[q] = sphere.Dx.Cross(sphere.Dy).Dot(sphere.Point);
            Metric c = new EnergyDensity(
                default, sphere.Metric, flatU[q], flatU[q + n], flatV[q], flatV[q + n]).Stretch;
            double mean = (c.XX + c.YY) / 2;
            double half = (c.XX - c.YY) / 2;
            double major = mean + Math.Sqrt((half * half) + (c.XY * c.XY));
            stretch[q] = 100 * (Math.Sqrt(major) - 1);
            compression[q] = 100 * (1 - Math.Sqrt(((c.XX * c.YY) - (c.XY * c.XY)) / major));
        }

        return (stretch, compression, chart);
    }
}
