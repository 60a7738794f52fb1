using CsCheck;
using FeltNest.Die.Check;
using FeltNest.Die.Proof;
using FeltNest.Files;
using FeltNest.Files.Dies;
using FeltNest.Geometry;
using FeltNest.Tests.Panel.Trace;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using Xunit;

namespace FeltNest.Tests.Die.Proof;

/// <summary>Dies as made, of known errors.</summary>
public sealed class MadeDieTests
{
    private static readonly ProfileRule Rule = new() { ToleranceMm = 0.5 };

    private static readonly StatedDie Die = MadeDieCases.Panels;

    [Fact]
    public void A_die_as_drawn_conforms_wherever_it_lay_when_measured()
    {
        MadeDie made = Judged((_, p) => p.Turned(2.1) + new Point2(311, -57), named: false);

        Assert.Equal(Conformity.Conforms, made.Verdict);
        Assert.Equal(Die.Cavities.Count, made.Cavities.Count);
        Assert.InRange(made.Farthest.OffMm.Length, 0, 1e-4);
        Assert.InRange(made.Worst.Edge.ZoneMm, 0, 1e-3);
        Assert.All(made.Cavities, c => Assert.InRange(Math.Abs(c.InPlaceMm), 0, 1e-3));
        Assert.False(made.Mirrored);
    }

    // Places stretched from anywhere: no turn helps, and the best move leaves the stretch times the radius of the smallest circle round
    // them (NetTopologySuite finds that circle).
    [Fact]
    public void Places_stretched_by_a_share_are_off_by_that_share_of_the_circle_round_them()
    {
        const double stretch = 1e-3;
        MadeDie straight = Judged((_, p) => p);
        Point2[] places = [.. straight.Cavities.Select(c => c.Wanted)];
        MinimumBoundingCircle circle = new(new GeometryFactory().CreateMultiPointFromCoords(
            [.. places.Select(p => new Coordinate(p.X, p.Y))]));

        MadeDie made = Judged((number, p) => (p + (places[number - 1] * stretch)).Turned(-0.4));

        Assert.Equal(stretch * circle.GetRadius(), made.Farthest.OffMm.Length, 1e-4);
        Assert.InRange(made.Worst.Edge.ZoneMm, 0, 1e-3);
    }

    [Fact]
    public void One_cavity_out_of_its_place_is_named_and_refuses_the_die()
    {
        MadeDie made = Judged((number, p) => number == 2 ? p + new Point2(0, 0.9) : p);

        Assert.Equal(Conformity.DoesNotConform, made.Verdict);
        Assert.Contains(made.Cavities, c => c.Number == 2 && c.Position == Conformity.DoesNotConform);
        Assert.All(made.Cavities, c => Assert.Equal(Conformity.Conforms, c.Edge.Verdict));
    }

    // Turned about its own middle a cavity is in its place, and its ends are not: a degree on 70 mm is 1.2 mm.
    [Fact]
    public void A_cavity_turned_in_its_place_is_refused_too()
    {
        Point2 middle = Judged((_, p) => p).Cavities[0].Wanted;

        MadeDie made = Judged((number, p) => number == 1 ? (p - middle).Turned(0.0175) + middle : p);

        Assert.InRange(made.Cavities[0].OffMm.Length, 0, 0.02);
        Assert.True(Math.Abs(made.Cavities[0].InPlaceMm) > 0.5);
        Assert.Equal(Conformity.DoesNotConform, made.Cavities[0].Position);
    }

    [Fact]
    public void Edges_too_large_all_round_tell_how_far_to_set_the_next_ones_back()
    {
        ArcOutline edge = Die.Edges[Die.Cavities[0].Part];
        double larger = 0.1 * edge.Perimeter / (2 * edge.Area);
        MadeDie straight = Judged((_, p) => p);

        MadeDie made = Judged((number, p) =>
            p + ((p - straight.Cavities[number - 1].Wanted) * larger));

        // Grown about its middle an outline gains its area twice the share: the mean distance is that area over its length.
        Assert.Equal(0.1, made.MeanOffMm, 0.005);
    }

    [Fact]
    public void A_cavity_without_points_leaves_the_die_undecided()
    {
        MadeDie made = MadeDieJudge.Of(Die, MadeDieCases.Rings(Die, (_, p) => p)[1..], Rule, 0.4);

        Assert.Equal(Conformity.Undecided, made.Verdict);
        Assert.Equal([1], made.NotMeasured);
    }

    [Fact]
    public void In_the_die_s_frame_a_shift_of_the_whole_is_an_error_of_place()
    {
        MadeDie made = MadeDieJudge.Of(
            Die, MadeDieCases.Rings(Die, (_, p) => p + new Point2(0.5, 0)), Rule with { InFrame = true }, 0.4);

        Assert.All(made.Cavities, c => Assert.Equal(0.5, c.OffMm.X, 1e-3));
        Assert.Equal(Conformity.DoesNotConform, made.Verdict);
    }

    // Two discs of radius 30 mm on a scan of 2 pixels a mm: each is a ring of its own, at its place and of its size.
    [Fact]
    public void Blanks_on_a_scan_are_rings_in_one_frame()
    {
        byte[] picture = new ScanPicture { Size = (400, 200), Image = p => p * 2 }
            .Of([ScanPicture.Disc(new(50, 50), 30), ScanPicture.Disc(new(150, 50), 30)]);

        IReadOnlyList<MeasuredRing> rings = RingsReader.Read(InputText.Of("blanks.png", picture) with { Dpi = 2 * 25.4 }, 2);

        Assert.Equal(2, rings.Count);
        Assert.All(rings, ring =>
        {
            Point2 middle = ring.Points.Aggregate(default(Point2), (sum, p) => sum + p) * (1.0 / ring.Points.Count);
            Assert.All(ring.Points, p => Assert.Equal(30, (p - middle).Length, 0.5));
        });
        double[] left = [.. rings.Select(ring => ring.Points.Min(p => p.X)).Order()];
        Assert.Equal(100, left[1] - left[0], 0.5);
    }

    [Fact]
    public void Rings_that_lie_otherwise_are_not_taken_for_this_die() =>
        Assert.Contains(
            "does not lie as the cavities of the die do",
            Assert.Throws<InputException>(() => Judged((number, p) => p + new Point2(40 * number, 0), named: false)).Message,
            StringComparison.Ordinal);

    // The worst place is never nearer by least squares than by the fit for the farthest.
    [Fact]
    public void Laying_for_the_farthest_is_no_worse_than_least_squares_and_no_turn_betters_it() =>
        Gen.Select(Gen.Double[-0.5, 0.5].Array[12], Gen.Double[0, 100].Array[12]).Sample((errors, at) =>
        {
            (Point2 From, Point2 To)[] pairs =
            [
                .. Enumerable.Range(0, 6).Select(i => new Point2(at[i], at[i + 6])).Select((p, i) =>
                    (p + new Point2(errors[i], errors[i + 6]), p)),
            ];
            double Worst(RigidMove move) => pairs.Max(p => (move.Apply(p.From) - p.To).Length);

            RigidMove found = PlaceFit.Settle(pairs);

            Assert.True(Worst(found) <= Worst(PlaceFit.Squares(pairs)) + 1e-12);
            foreach ((double x, double y, double turn) in ((double, double, double)[])
                [(1e-3, 0, 0), (-1e-3, 0, 0), (0, 1e-3, 0), (0, -1e-3, 0), (0, 0, 1e-5), (0, 0, -1e-5), (1e-3, 1e-3, 1e-5)])
            {
                Assert.True(Worst(found.Then(turn, new Point2(50, 50), new Point2(x, y))) >= Worst(found) - 1e-6);
            }
        }, iter: 100);

    private static MadeDie Judged(Func<int, Point2, Point2> move, bool named = true) =>
        MadeDieJudge.Of(Die, MadeDieCases.Rings(Die, move, named), Rule, 0.4);
}
