using CsCheck;
using FeltNest.Die.Proof;
using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Die.Proof;

/// <summary>The narrowest zone, held against a second way by another library and against fits recomputed outside.</summary>
public sealed class ZoneFitTests
{
    private const int Sides = 2880;

    // An ellipse of half axes 30 and 20 mm; its corners lie on the curve.
    private static readonly Outline Ellipse = Outline.From(Enumerable.Range(0, Sides).Select(k => OnEllipse(k * Math.Tau / Sides, 0)));

    // Straightness data of a laser interferometer's manual (HP 5528A, section 21): heights in micrometres every tenth of the length. The
    // zones were recomputed by linear programming (HiGHS); the manual itself gives lines through the ends and by least squares.
    [Theory]
    [InlineData(new[] { -0.3, 0.9, 1.5, 2.5, 2.9, 3.6, 4.2, 5.1, 5.9, 7.2 }, 0.650)]
    [InlineData(new[] { -0.5, -1.2, -2.5, -3.8, -4.0, -4.8, -5.9, -6.2, -7.4, -8.8 }, 0.9333)]
    public void A_straight_edge_has_the_zone_of_the_manual_s_data(double[] heights, double zone)
    {
        const double scale = 0.01;
        Outline plate = Outline.From([new(-50, -100), new(950, -100), new(950, 0), new(-50, 0)]);
        Point2[] points = [.. heights.Select((y, i) => new Point2(100 * i, scale * y))];

        (RigidMove pose, IReadOnlyList<ZonePoint> held) = ZoneFit.Settle(new OutlineFeet(plate), points, RigidMove.None);

        Assert.Equal(zone * scale, 2 * points.Max(p => Math.Abs(pose.Apply(p).Y)), 1e-6);
        Assert.Equal(1, held.Sum(p => p.Share), 1e-9);
    }

    // Own data, recomputed by linear programming (HiGHS) with one linear step: a zone 0.190286 mm wide; least squares leave 0.1673 at the
    // worst place, so a zone of 0.3345. Steps taken anew on the curve itself may differ by the turn squared times the size, 0.0009.
    [Fact]
    public void One_bump_on_an_ellipse_is_shared_by_both_sides_of_the_zone()
    {
        Point2[] points = [.. Enumerable.Range(0, 24).Select(k => OnEllipse(k * Math.PI / 12, k == 2 ? 0.2 : 0))];

        MeasuredPanel panel = PanelFitter.Fit(Ellipse, points, new ProfileRule { ToleranceMm = 0.3 });

        Assert.Equal(0.190286, panel.ZoneMm, 0.0009);
        Assert.Equal(0.3345, 2 * Math.Abs(panel.SquaresWorstMm), 0.002);
        Assert.Equal(GlopZone.Half(Ellipse, points), panel.ZoneMm / 2, 1e-6);
    }

    // A dent that least squares would put outside the zone, in a panel that a zone of the tolerance can hold.
    [Fact]
    public void A_dent_that_the_zone_can_hold_conforms_though_least_squares_put_it_outside()
    {
        Point2[] points = [.. Enumerable.Range(0, 120).Select(k => OnEllipse(k * Math.PI / 60, -1.0 * Bump(k, 30, 6)))];

        MeasuredPanel panel = PanelFitter.Fit(Ellipse, points, new ProfileRule { ToleranceMm = 1.2 });

        // Half of a dent of 1.0 is the best there is, and its valley is flat: another start ends in it to a hundredth of a micrometre.
        Assert.True(Math.Abs(panel.SquaresWorstMm) > 0.6);
        Assert.Equal(GlopZone.Half(Ellipse, points), panel.ZoneMm / 2, 2e-5);
        Assert.Equal(0.5, panel.ZoneMm / 2, 1e-4);
        Assert.Equal(Conformity.Conforms, panel.Verdict);
    }

    // Known errors: dent, bump, taper, size and noise, and any place on the table.
    [Fact]
    public void Made_up_panels_have_the_zone_that_another_library_finds() =>
        Gen.Select(Gen.Int[0, 119], Gen.Double[-1, 1], Gen.Double[-0.4, 0.4], Gen.Double[-0.01, 0.01], Gen.Double[-0.05, 0.05].Array[120],
                Gen.Double[-0.04, 0.04])
            .Sample(
                (place, height, size, taper, noise, turn) =>
                {
                    Point2[] points =
                    [
                        .. Enumerable.Range(0, 120).Select(k =>
                            OnEllipse(k * Math.PI / 60, (height * Bump(k, place, 12)) + size + noise[k]) is var p
                                ? (p + new Point2(0, taper * p.X)).Turned(turn) + new Point2(0.3, -0.2)
                                : default),
                    ];

                    MeasuredPanel panel = PanelFitter.Fit(Ellipse, points, new ProfileRule { ToleranceMm = 1.2 });

                    // The other way may stop in a valley of its own: it is never narrower, and begins where this one ended as well.
                    Assert.True(panel.ZoneMm / 2 <= GlopZone.Half(Ellipse, points) + 1e-6);
                    Assert.Equal(GlopZone.Half(Ellipse, [.. panel.Points.Select(p => p.Place)]), panel.ZoneMm / 2, 1e-6);
                    Assert.True(Math.Abs(panel.SquaresWorstMm) >= (panel.ZoneMm / 2) - 1e-9);
                },
                iter: 20);

    [Fact]
    public void Points_in_the_frame_of_the_drawing_are_not_moved()
    {
        Point2[] points = [.. Enumerable.Range(0, 200).Select(k => OnEllipse(k * Math.PI / 100, 0) + new Point2(0.7, 0))];

        MeasuredPanel free = PanelFitter.Fit(Ellipse, points, new ProfileRule { ToleranceMm = 1.2 });
        MeasuredPanel kept = PanelFitter.Fit(Ellipse, points, new ProfileRule { ToleranceMm = 1.2, InFrame = true });

        Assert.Equal((Conformity.Conforms, Conformity.DoesNotConform), (free.Verdict, kept.Verdict));
        Assert.Equal(1.4, kept.ZoneMm, 0.001);
    }

    // A panel cut 0.03 mm larger all round needs 0.06 of zone: no turn or move takes it out.
    [Fact]
    public void A_size_that_is_wrong_all_round_is_no_matter_of_place()
    {
        Point2[] points = [.. Enumerable.Range(0, 200).Select(k => OnEllipse(k * Math.PI / 100, 0.03))];

        Assert.Equal(0.06, PanelFitter.Fit(Ellipse, points, new ProfileRule { ToleranceMm = 1.2 }).ZoneMm, 2e-4);
    }

    private static double Bump(int at, int place, int reach)
    {
        double off = Math.Abs(Math.IEEERemainder(at - place, 120));
        return off < reach ? (1 + Math.Cos(Math.PI * off / reach)) / 2 : 0;
    }

    private static Point2 OnEllipse(double t, double off)
    {
        (double sin, double cos) = Math.SinCos(t);
        Point2 normal = new(20 * cos, 30 * sin);
        return new Point2(30 * cos, 20 * sin) + (normal * (off / normal.Length));
    }
}
