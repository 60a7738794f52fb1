using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Panel.Domain;

public sealed class PanelDomainTests
{
    public static TheoryData<double> Waists => [20, 35, 47, 60, 90];

    [Theory]
    [MemberData(nameof(Waists))]
    public void The_rim_lies_on_the_seam(double waistDeg)
    {
        TwoHarmonicSeam seam = TwoHarmonicSeam.ForWaist(waistDeg * Math.PI / 180);
        SeamDomain domain = new(seam);
        for (double s = 0; s < 6.28; s += 0.13)
        {
            (double y, double x) = Math.SinCos(domain.EdgeAt(s).Angle);
            Assert.Equal(0, (domain.At(x, y).Point - seam.At(s).Point).Length, 10);
        }
    }

    [Theory]
    [MemberData(nameof(Waists))]
    public void The_disc_covers_half_the_sphere(double waistDeg)
    {
        SeamDomain domain = new(TwoHarmonicSeam.ForWaist(waistDeg * Math.PI / 180));
        DiscQuadrature rule = DiscQuadrature.Exact(120, true);
        double area = 0;
        for (int q = 0; q < rule.Count; q++)
        {
            DomainJet jet = domain.At(rule.X[q], rule.Y[q]);
            area += rule.Weights[q] * jet.Point.Dot(jet.Dx.Cross(jet.Dy));
        }

        Assert.Equal(2 * Math.PI, area, 8);
    }

    [Fact]
    public void Derivatives_agree_with_differences_on_seam_panels_and_caps()
    {
        const double h = 1e-5;
        PanelDomain[] domains = [new SeamDomain(TwoHarmonicSeam.ForWaist(0.8)), new CapDomain(1.1)];
        foreach (PanelDomain domain in domains)
        {
            foreach ((double x, double y) in new[] { (0.0, 0.0), (0.3, -0.5), (-0.8, 0.2), (2e-4, 1e-4) })
            {
                DomainJet jet = domain.At(x, y);
                SpherePoint dx = (0.5 / h) * (domain.At(x + h, y).Point - domain.At(x - h, y).Point);
                SpherePoint dy = (0.5 / h) * (domain.At(x, y + h).Point - domain.At(x, y - h).Point);
                Assert.Equal(0, (jet.Dx - dx).Length, 8);
                Assert.Equal(0, (jet.Dy - dy).Length, 8);
                Assert.Equal(1, jet.Point.Length, 12);
            }
        }
    }

    [Fact]
    public void A_seam_without_mirrors_is_filled_as_well()
    {
        // The two-harmonic seam seen from a panel frame turned about the pole keeps the half-turn but loses the mirrors of the axes.
        TurnedSeam seam = new(TwoHarmonicSeam.ForWaist(1), 0.1);
        SeamDomain domain = new(seam);
        for (double s = 0; s < 6.28; s += 0.13)
        {
            (double y, double x) = Math.SinCos(domain.EdgeAt(s).Angle);
            Assert.Equal(0, (domain.At(x, y).Point - seam.At(s).Point).Length, 8);
            Assert.True(domain.At(0.9 * x, 0.9 * y).Metric is var m && (m.XX * m.YY) - (m.XY * m.XY) > 0);
        }
    }

    private sealed class TurnedSeam(TwoHarmonicSeam seam, double turn) : SeamCurve
    {
        public override FeltNest.Ball.SeamFamily Family => FeltNest.Ball.SeamFamily.Points;

        public override double Length => seam.Length;

        public override double WaistAngle => seam.WaistAngle;

        public override double WidthAngle => seam.WidthAngle;

        public override double GreatestCurvature => seam.GreatestCurvature;

        public override bool IsMirrorSymmetric => false;

        public override SeamJet At(double s)
        {
            SeamJet jet = seam.At(s);
            return new SeamJet(Turned(jet.Point), Turned(jet.First), Turned(jet.Second));
        }

        private SpherePoint Turned(SpherePoint p) =>
            new((p.X * Math.Cos(turn)) - (p.Y * Math.Sin(turn)), (p.X * Math.Sin(turn)) + (p.Y * Math.Cos(turn)), p.Z);
    }
}
