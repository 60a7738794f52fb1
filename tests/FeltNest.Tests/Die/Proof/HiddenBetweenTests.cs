using CsCheck;
using FeltNest.Die.Proof;
using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Die.Proof;

/// <summary>What may hide between measured points.</summary>
public sealed class HiddenBetweenTests
{
    // A bound of slope L lets an unseen peak between equal points reach L s / 2 above them.
    [Fact]
    public void Between_points_on_the_line_half_the_stretch_times_the_steepness_can_hide()
    {
        HiddenBetween hidden = HiddenBetween.Of([(0, 0), (10, 0), (16, 0), (30, 0)], 40, 0.05);

        Assert.Equal(0.05 * 14 / 2, hidden.FarthestMm, 1e-12);
        Assert.Equal((14, 23), (hidden.WidestGapMm, hidden.WidestGapAt));
    }

    // Walked by small steps round the edge: at each place the farthest that every point allows.
    [Fact]
    public void The_farthest_is_what_a_walk_round_the_edge_finds() =>
        Gen.Select(Gen.Double[0, 100].Array[2, 12], Gen.Double[-1, 1].Array[12], Gen.Double[0.05, 0.5]).Sample((places, offs, steep) =>
        {
            // Distances that the steepness itself allows.
            (double Along, double Off)[] points = [.. places.Zip(offs, (s, d) => (s, d * steep))];
            double Round(double a, double b) => Math.Min(Math.Abs(a - b), 100 - Math.Abs(a - b));
            points = [.. points.Select(p => (p.Along, points.Min(q => q.Off + (steep * Round(p.Along, q.Along)))))];
            double walked = Enumerable.Range(0, 20000).Select(i => i / 200.0).Max(s => Math.Max(
                points.Min(p => p.Off + (steep * Round(s, p.Along))), -points.Max(p => p.Off - (steep * Round(s, p.Along)))));

            Assert.Equal(walked, HiddenBetween.Of(points, 100, steep).FarthestMm, steep * 0.0051);
        }, iter: 50);

    [Fact]
    public void A_fifth_of_the_edge_without_points_is_never_a_pass()
    {
        MeasuredPanel panel = Measured(k => k > 40);

        Assert.Equal(Conformity.Undecided, panel.Verdict);
        Assert.Equal(42.0 / 200 * panel.PerimeterMm, panel.WidestGapMm, 0.1);
        Assert.Equal(0, (panel.WidestGapPlace - new Point2(80, 0).Turned(20 * Math.Tau / 200)).Length, 0.2);
    }

    [Fact]
    public void Twelve_points_are_too_few_and_the_number_told_is_enough()
    {
        MeasuredPanel few = Measured(k => k % 17 == 0);
        int wanted = few.PointsWanted!.Value;
        int step = 200 / wanted;

        Assert.Equal(Conformity.Undecided, few.Verdict);
        Assert.Equal(Conformity.Conforms, Measured(k => k % step == 0).Verdict);
    }

    // A disc of radius 80 mm measured at those of 200 places.
    private static MeasuredPanel Measured(Func<int, bool> taken)
    {
        Outline disc = Outline.From(Enumerable.Range(0, 2000).Select(k => new Point2(80, 0).Turned(k * Math.Tau / 2000)));
        return PanelFitter.Fit(
            disc, [.. Enumerable.Range(0, 200).Where(taken).Select(k => new Point2(80, 0).Turned(k * Math.Tau / 200))],
            new ProfileRule { ToleranceMm = 1.2, InFrame = true });
    }
}
