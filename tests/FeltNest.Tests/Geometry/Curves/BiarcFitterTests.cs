using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using Xunit;

namespace FeltNest.Tests.Geometry.Curves;

public sealed class BiarcFitterTests
{
    [Fact]
    public void A_circle_becomes_arcs_of_its_own_radius()
    {
        BiarcFit fit = BiarcFitter.Fit(new Ellipse(10, 10), 0.01, CurveSymmetry.Mirrors);

        Assert.Equal(8, fit.Arcs.Vertices.Count);
        Assert.InRange(fit.Deviation, 0, 1e-12);
        Assert.Equal(Math.PI * 100, fit.Arcs.Area, 9);
        Assert.Equal(2 * Math.PI * 10, fit.Arcs.Perimeter, 9);
    }

    [Theory]
    [InlineData(nameof(CurveSymmetry.None), 0.01)]
    [InlineData(nameof(CurveSymmetry.HalfTurn), 0.01)]
    [InlineData(nameof(CurveSymmetry.Mirrors), 0.01)]
    [InlineData(nameof(CurveSymmetry.Mirrors), 0.02)]
    [InlineData(nameof(CurveSymmetry.Mirrors), 0.0001)]
    public void An_ellipse_is_met_within_the_tolerance(string symmetry, double tolerance)
    {
        Ellipse ellipse = new(60, 25);

        BiarcFit fit = BiarcFitter.Fit(ellipse, tolerance, Enum.Parse<CurveSymmetry>(symmetry));

        Assert.InRange(fit.Deviation, tolerance / 10, tolerance);
        Assert.InRange(DenseDeviation(ellipse, fit.Arcs), 0, tolerance);
        Assert.InRange(Math.Abs(fit.Arcs.Area - (Math.PI * 60 * 25)), 0, tolerance * fit.Arcs.Perimeter);
        AssertTangent(fit.Arcs);
    }

    [Fact]
    public void Arcs_are_few_and_grow_as_the_cube_root_of_the_accuracy()
    {
        // The distance of a biarc from a smooth curve falls with the third power of its length (Meek and Walton, J. Comput. Appl. Math. 59,
        // 1995), so a tolerance 1000 times finer takes 10 times the arcs.
        int coarse = BiarcFitter.Fit(new Ellipse(60, 25), 0.01, CurveSymmetry.Mirrors).Arcs.Vertices.Count;
        int fine = BiarcFitter.Fit(new Ellipse(60, 25), 0.00001, CurveSymmetry.Mirrors).Arcs.Vertices.Count;

        Assert.InRange(coarse, 16, 48);
        Assert.InRange((double)fine / coarse, 7, 12);
    }

    [Fact]
    public void Mirror_sides_and_the_half_turned_outline_are_equal_to_the_last_digit()
    {
        IReadOnlyList<ArcVertex> arcs = BiarcFitter.Fit(new Ellipse(60, 25), 0.01, CurveSymmetry.Mirrors).Arcs.Vertices;
        int n = arcs.Count;
        for (int i = 0; i < n; i++)
        {
            ArcVertex turned = arcs[(i + (n / 2)) % n];
            ArcVertex mirrored = arcs[((n / 2) - i + n) % n];
            Assert.Equal(new ArcVertex(-arcs[i].X, -arcs[i].Y, arcs[i].Turn), turned);
            Assert.Equal(new Point2(arcs[i].X, -arcs[i].Y), mirrored.Point);
            Assert.Equal(arcs[i].Turn, arcs[((n / 2) - i - 1 + n) % n].Turn);
        }
    }

    [Fact]
    public void An_outline_that_bends_both_ways_keeps_its_joints_smooth()
    {
        Waisted curve = new();

        BiarcFit fit = BiarcFitter.Fit(curve, 0.01, CurveSymmetry.Mirrors);

        Assert.Contains(fit.Arcs.Vertices, v => v.Turn < 0);
        Assert.InRange(DenseDeviation(curve, fit.Arcs), 0, 0.01);
        AssertTangent(fit.Arcs);
    }

    [Fact]
    public void A_straight_pair_of_ends_gives_a_straight_biarc()
    {
        Biarc straight = Biarc.Between(new(new(0, 0), new(2, 0)), new(new(5, 0), new(1, 0)));

        Assert.Equal(0, straight.First.Turn);
        Assert.Equal(0, straight.Second.Turn);
        Assert.Equal(3, straight.DistanceTo(new Point2(2, 3)), 12);
        Assert.Equal(5, straight.DistanceTo(new Point2(8, -4)), 12);
    }

    [Fact]
    public void A_biarc_leaves_and_arrives_in_the_directions_asked()
    {
        Point2 start = new(1, 0.2);
        Point2 end = new(-0.3, 1);
        Biarc biarc = Biarc.Between(new(new(0, 0), start), new(new(4, 3), end));
        ArcPiece first = ArcPiece.Between(biarc.First.Point, biarc.Second.Point, biarc.First.Turn);
        ArcPiece second = ArcPiece.Between(biarc.Second.Point, biarc.End, biarc.Second.Turn);

        Assert.Equal(0, first.Spoke(0).Dot(start), 9);
        Assert.Equal(0, second.Spoke(second.Turn).Dot(end), 9);
        Assert.Equal(0, first.Spoke(first.Turn).Cross(second.Spoke(0)), 9);
        Assert.Equal(0, biarc.DistanceTo(first.Centre + first.Spoke(first.Turn / 3)), 12);
    }

    [Fact]
    public void A_curve_with_a_corner_is_refused() =>
        Assert.Throws<GeometryException>(() => BiarcFitter.Fit(new Cornered(), 1e-6, CurveSymmetry.None));

    private static double DenseDeviation(IPlaneCurve curve, ArcOutline arcs)
    {
        ArcPiece[] pieces =
        [
            .. arcs.Vertices.Select((v, i) => ArcPiece.Between(v.Point, arcs.Vertices[(i + 1) % arcs.Vertices.Count].Point, v.Turn)),
        ];
        double worst = 0;
        for (int i = 0; i < 5000; i++)
        {
            Point2 p = curve.At(curve.Period * i / 5000).Place;
            worst = Math.Max(worst, pieces.Min(arc => Math.Abs(
                Math.IEEERemainder(
                    Math.Atan2(p.Y - arc.Centre.Y, p.X - arc.Centre.X) - arc.StartAngle - (arc.Turn / 2),
                    2 * Math.PI)) <= (Math.Abs(arc.Turn) / 2) + 1e-9
                ? Math.Abs((p - arc.Centre).Length - arc.Radius)
                : double.PositiveInfinity));
        }

        return worst;
    }

    private static void AssertTangent(ArcOutline arcs)
    {
        int n = arcs.Vertices.Count;
        for (int i = 0; i < n; i++)
        {
            ArcVertex a = arcs.Vertices[i];
            ArcVertex b = arcs.Vertices[(i + 1) % n];
            ArcVertex c = arcs.Vertices[(i + 2) % n];
            Point2 arrives = (b.Point - a.Point).Turned(a.Turn / 2);
            Point2 leaves = (c.Point - b.Point).Turned(-b.Turn / 2);
            Assert.Equal(0, arrives.Cross(leaves) / (arrives.Length * leaves.Length), 9);
            Assert.True(arrives.Dot(leaves) > 0);
        }
    }

    private sealed record Ellipse(double A, double B) : IPlaneCurve
    {
        public double Period => 2 * Math.PI;

        public CurvePoint At(double t) => new(new(A * Math.Sin(t), -B * Math.Cos(t)), new(A * Math.Cos(t), B * Math.Sin(t)));
    }

    private sealed class Waisted : IPlaneCurve
    {
        public double Period => 2 * Math.PI;

        public CurvePoint At(double t)
        {
            // The measured baseball piece of H. Hundal, sci.math, 1 Aug 1995, scaled to 64 mm and turned to start at its waist.
            (double sin, double cos) = Math.SinCos(t);
            (double sin3, double cos3) = Math.SinCos(3 * t);
            return new(
                64 * new Point2((1.3 * sin) - (0.0236 * sin3), (-0.408 * cos) + (0.158 * cos3)),
                64 * new Point2((1.3 * cos) - (0.0708 * cos3), (0.408 * sin) - (0.474 * sin3)));
        }
    }

    private sealed class Cornered : IPlaneCurve
    {
        public double Period => 4;

        public CurvePoint At(double t)
        {
            Point2[] corners = [new(0, 0), new(1, 0), new(1, 1), new(0, 1), new(0, 0)];
            int side = Math.Min((int)t, 3);
            Point2 along = corners[side + 1] - corners[side];
            return new(corners[side] + (along * (t - side)), along);
        }
    }
}
