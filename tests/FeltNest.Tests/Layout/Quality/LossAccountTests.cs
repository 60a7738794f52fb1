using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Quality;
using Xunit;

namespace FeltNest.Tests.Layout.Quality;

/// <summary>The loss split of squares of 10 with a gap of 2, whose lattices are known: one in 100 mm2 without the gap, one in 144 with
/// it.</summary>
public sealed class LossAccountTests
{
    private const double NoGap = 1 / 100.0;
    private const double Plane = 1 / 144.0;
    private static readonly LayoutRequest Request = Shapes.Request(Shapes.Of(1, 0, 0, 10, 0, 10, 10, 0, 10), 32, gap: 2, edge: 5);

    [Fact]
    public void Rows_of_the_lattice_that_just_fit_lose_nothing_to_their_fit()
    {
        // Two rows on 22 mm of cloth between trims of 5: 2 x 100 of 12 x 32. A row is 10 high and takes 12 in the lattice, so both edges
        // together save 2 of 32 at 100/144.
        LossSplit loss = LossAccount.Of(
            Request,
            Lay(Request, 12, new() { Part = 0, XMm = 0, YMm = 10, AngleDeg = 0 }, new() { Part = 0, XMm = 6, YMm = 22, AngleDeg = 0 }),
            NoGap, Plane);
        Assert.Equal(0, loss.ShapePercent, 1e-9);
        Assert.Equal(100 * (1 - (100 / 144.0)), loss.GapPercent, 1e-9);
        Assert.Equal(100 * 100 / 144.0 * 10 / 32, loss.TrimPercent, 1e-9);
        Assert.Equal(-100 * 100 / 144.0 * 2 / 32, loss.EdgesPercent, 1e-9);
        Assert.Equal(0, loss.RowFitPercent, 1e-9);
    }

    [Fact]
    public void Rows_spread_over_more_cloth_and_a_longer_repeat_lose_it_to_their_fit()
    {
        // 3 mm more between the rows, and a repeat of 15 in the place of 12: a row then takes 144/15 = 9.6 in the lattice, so the edges
        // cost 0.4 of 35.
        LayoutRequest wider = Request with { RollWidthMm = 35 };
        LossSplit loss = LossAccount.Of(
            wider, Lay(wider, 15, new() { Part = 0, XMm = 0, YMm = 10, AngleDeg = 0 }, new() { Part = 0, XMm = 6, YMm = 25, AngleDeg = 0 }),
            NoGap, Plane);
        Assert.Equal(100 * 100 / 144.0 * 0.4 / 35, loss.EdgesPercent, 1e-9);
        Assert.Equal((100 * 100 / 144.0 * (25 - 0.4) / 35) - (100 * 200.0 / 15 / 35), loss.RowFitPercent, 1e-9);
    }

    [Fact]
    public void A_row_of_several_panels_a_repeat_takes_that_many_steps_less_of_width()
    {
        // The same lattice with two panels a row written in a repeat of 24.
        LossSplit loss = LossAccount.Of(
            Request,
            Lay(
                Request, 24, new() { Part = 0, XMm = 0, YMm = 10, AngleDeg = 0 }, new() { Part = 0, XMm = 12, YMm = 10, AngleDeg = 0 },
                new() { Part = 0, XMm = 6, YMm = 22, AngleDeg = 0 }, new() { Part = 0, XMm = 18, YMm = 22, AngleDeg = 0 }), NoGap, Plane);
        Assert.Equal(-100 * 100 / 144.0 * 2 / 32, loss.EdgesPercent, 1e-9);
        Assert.Equal(0, loss.RowFitPercent, 1e-9);
    }

    [Fact]
    public void A_stripe_counts_as_trim_and_has_edges_of_its_own()
    {
        // A stripe of 8 between the rows: cloth from 5 to 15 and from 23 to 33, a row in each, four edges at -1.
        LayoutRequest striped =
            Request with { RollWidthMm = 38, Rules = Request.Rules with { Forbidden = [new ForbiddenStrip { YFromMm = 15, YToMm = 23 }] } };
        LossSplit loss = LossAccount.Of(
            striped,
            Lay(striped, 12, new() { Part = 0, XMm = 0, YMm = 10, AngleDeg = 0 }, new() { Part = 0, XMm = 6, YMm = 28, AngleDeg = 0 }),
            NoGap, Plane);
        Assert.Equal(100 * 100 / 144.0 * 18 / 38, loss.TrimPercent, 1e-9);
        Assert.Equal(-100 * 100 / 144.0 * 4 / 38, loss.EdgesPercent, 1e-9);
        Assert.Equal(0, loss.RowFitPercent, 1e-9);
    }

    [Fact]
    public void An_edge_where_no_panel_stands_costs_nothing_as_an_edge()
    {
        // 0.51 mm, a twentieth of a row and a little, below the first row.
        LayoutRequest wider = Request with { RollWidthMm = 32.51 };
        LossSplit loss = LossAccount.Of(
            wider,
            Lay(wider, 12, new() { Part = 0, XMm = 0, YMm = 10.51, AngleDeg = 0 }, new() { Part = 0, XMm = 6, YMm = 22.51, AngleDeg = 0 }),
            NoGap, Plane);
        Assert.Equal(-100 * 100 / 144.0 * 1 / 32.51, loss.EdgesPercent, 1e-9);
    }

    [Fact]
    public void The_shape_loses_what_the_lattice_without_a_gap_leaves_and_rows_at_one_edge_count_by_their_mean_height()
    {
        // Had the best lattice one part in 125 mm2, a fifth of the cloth would be lost to the shape. At the lower edge stand a square and
        // one on its corner: (10 + 14.142)/2 high, each taking 144/24 = 6 of width in a repeat of 24, 12 together.
        LossSplit loss =
            LossAccount.Of(
                Request,
                Lay(
                    Request, 24, new() { Part = 0, XMm = 0, YMm = 10, AngleDeg = 0 },
                    new() { Part = 0, XMm = 12, YMm = 5 + (5 * Math.Sqrt(2)), AngleDeg = 45 }), 1 / 125.0, Plane);
        Assert.Equal(20, loss.ShapePercent, 1e-9);
        Assert.Equal(80 - (100 * 100 / 144.0), loss.GapPercent, 1e-9);
        Assert.Equal(100 * 100 / 144.0 / 32 * (5 + (5 * Math.Sqrt(2)) - 12) / 2, loss.EdgesPercent, 1e-9);
        Assert.Equal(
            100, (100 * 200 / 24.0 / 32) + loss.ShapePercent + loss.GapPercent + loss.TrimPercent + loss.EdgesPercent + loss.RowFitPercent,
            1e-9);
    }

    [Fact]
    public void The_bound_counts_every_run_and_of_two_parts_the_one_that_fills_best()
    {
        // Squares of 10 and 30 grown by 1: 100 + 40 + pi and 900 + 120 + pi. Runs of 20 and 20 stand for 22 and 22 of 60, one of 50 for 52.
        LayoutRequest roll = Request with { RollWidthMm = 60 };
        LayoutRequest striped = roll with { Rules = roll.Rules with { Forbidden = [new ForbiddenStrip { YFromMm = 25, YToMm = 35 }] } };
        double percent = 100 * 100 / (140 + Math.PI) * 44 / 60;
        Assert.Equal(percent, UtilisationBound.Percent(striped), 0.01);
        Assert.Equal(percent / 100 * 60 / 100 * 1000, UtilisationBound.PanelsPerMetre(striped)!.Value, 0.1);
        LayoutRequest two = roll with { Second = new SecondPart(Shapes.Part(Shapes.Of(3, 0, 0, 10, 0, 10, 10, 0, 10)), null) };
        Assert.Equal(100 * 900 / (1020 + Math.PI) * 52 / 60, UtilisationBound.Percent(two), 0.01);
        Assert.Null(UtilisationBound.PanelsPerMetre(two));
    }

    private static RollLayout Lay(LayoutRequest request, double repeat, params PlacedPanel[] panels) => new()
    {
        Parts = [request.Part],
        RollWidthMm = request.RollWidthMm,
        Trims = request.Trims,
        GapMm = request.GapMm,
        Rules = request.Rules,
        Bands = [new LayoutBand
        {
            YFromMm = request.Usable.Low,
            YToMm = request.Usable.High,
            Repeat = new LayoutRepeat(repeat, panels),
        }],
        Search = Shapes.ByHand(leastGapMm: 0),
    };
}
