using FeltNest.Die.Proof;
using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Die.Proof;

public sealed class PanelFitterTests
{
    // A panel-like outline: an ellipse of half axes 80 and 24 mm with a bump, so that only one pose fits.
    private static readonly Outline Wanted = Outline.From(Enumerable.Range(0, 720).Select(k => At(k * Math.PI / 360, 0)));

    [Theory]
    [InlineData(0.0, 0, 0)]
    [InlineData(17.0, 300, -40)]
    [InlineData(-163.0, 1000, 900)]
    public void A_moved_and_turned_panel_lies_back_on_its_outline(double turnDeg, double x, double y)
    {
        Point2[] points =
        [
            .. Enumerable.Range(0, 200)
                .Select(k => At((k + 0.3) * Math.PI / 100, 0).Turned(double.DegreesToRadians(turnDeg)) + new Point2(x, y)),
        ];
        MeasuredPanel panel = PanelFitter.Fit(Wanted, points, Rule(1.2));

        Assert.Equal(Conformity.Conforms, panel.Verdict);
        Assert.InRange(panel.SquaresRmsMm, 0, 0.003);
        Assert.Equal(0, Math.IEEERemainder(panel.TurnDeg + turnDeg, 360), 0.01);
        Assert.False(panel.Mirrored);
    }

    [Fact]
    public void A_panel_cut_larger_all_round_shows_it_as_its_mean()
    {
        MeasuredPanel panel = PanelFitter.Fit(Wanted, [.. Enumerable.Range(0, 120).Select(k => At(k * Math.PI / 60, 0.3))], Rule(1.2));

        Assert.Equal(0.3, panel.SquaresMeanMm, 0.01);
        Assert.Equal(0.3, panel.SquaresRmsMm, 0.01);
        Assert.Equal(Conformity.Conforms, panel.Verdict);
        Assert.Equal(
            Conformity.DoesNotConform,
            PanelFitter.Fit(Wanted, [.. Enumerable.Range(0, 120).Select(k => At(k * Math.PI / 60, 0.8))], Rule(1.2)).Verdict);
    }

    // Henzold, Geometrical Dimensioning and Tolerancing: the zone of a profile t reaches t/2 to either side, so a place passes up to t/2.
    [Fact]
    public void One_place_beyond_half_the_tolerance_fails()
    {
        Point2[] points = [.. Enumerable.Range(0, 200).Select(k => At(k * Math.PI / 100, k == 50 ? 0.75 : 0))];
        MeasuredPanel panel = PanelFitter.Fit(Wanted, points, Rule(1.2) with { InFrame = true });

        Assert.Equal(Conformity.DoesNotConform, panel.Verdict);
        Assert.Equal(1, panel.Failing);
        Assert.Equal(0.75, panel.Worst.OffMm, 0.03);
        Assert.Equal(Conformity.Conforms, PanelFitter.Fit(Wanted, points, Rule(1.8) with { InFrame = true }).Verdict);
    }

    [Fact]
    public void Points_taken_from_behind_are_told() =>
        Assert.True(
            PanelFitter.Fit(
                Wanted, [.. Enumerable.Range(0, 200).Select(k => At(k * Math.PI / 100, 0) is var p ? new Point2(-p.X, p.Y) : default)],
                Rule(1.2)).Mirrored);

    [Theory]
    [InlineData(1 / 25.4, "25.4 x too small")]
    [InlineData(25.4, "25.4 x too large")]
    [InlineData(0.1, "10 x too small")]
    [InlineData(0.5, "is it this panel")]
    public void A_slip_of_units_is_found(double factor, string told)
    {
        Point2[] points = [.. Enumerable.Range(0, 100).Select(k => At(k * Math.PI / 50, 0) * factor)];

        Assert.Contains(
            told, Assert.Throws<InputException>(() => PanelFitter.Fit(Wanted, points, Rule(1.2))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_few_points_are_refused() =>
        Assert.Contains(
            "holds 11 points: at least 12",
            Assert.Throws<InputException>(() => PanelFitter.Fit(Wanted, [.. Wanted.Points.Take(11)], Rule(1.2))).Message,
            StringComparison.Ordinal);

    private static ProfileRule Rule(double tolerance) => new() { ToleranceMm = tolerance };

    private static Point2 At(double t, double outside)
    {
        Point2 Curve(double s) => new(80 * Math.Cos(s), (24 * Math.Sin(s)) + (3 * Math.Exp(-20 * (s - 1) * (s - 1))));
        Point2 way = Curve(t + 1e-6) - Curve(t - 1e-6);
        return Curve(t) - (way.Left * (outside / way.Length));
    }
}
