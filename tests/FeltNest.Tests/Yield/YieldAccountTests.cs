using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Tests.Layout;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Yield;

public sealed class YieldAccountTests
{
    // Press Tools, ch. 6, MSME Tool Room training text: part 10 x 27, web 1.875, advance 11.875, strip 30.75, stock 32; utilisations
    // derived: 73.94 and 71.05 %.
    [Theory]
    [InlineData(30.75, 73.94)]
    [InlineData(32, 71.05)]
    public void The_strip_example_has_the_derived_utilisation(double stock, double percent)
    {
        YieldFigures yields = YieldAccount.Of(Strip(stock));
        Assert.Equal(percent, yields.UtilisationPercent, 0.005);
        Assert.Equal(100 - percent, yields.WastePercent, 0.005);
    }

    // E. M. Longfield, Sheet Metal Drafting, ch. 1: 266 interlocked trapezoids of 10 sq in on a 30 x 96 in sheet; true waste 220 sq in =
    // 7.64 %.
    [Fact]
    public void The_trapezoid_sheet_closes_at_its_true_waste()
    {
        Outline blank = Outline.From([new(0, 0), new(4.5, 0), new(4, 2.5), new(0.5, 2.5)]);
        PlacedPanel[] panels = [.. from row in Enumerable.Range(0, 38) from place in Enumerable.Range(0, 7) select Blank(row, place)];
        YieldFigures yields = YieldAccount.Of(Lay(blank, 96, 0, new LayoutRepeat(30, panels)));
        Assert.Equal(220.0 / 2880 * 100, yields.WastePercent, 1e-9);
        Assert.Equal(95 * 30.0 / 2880 * 100, 100 - yields.Account.UnusedEdgePercent, 1e-9);

        // Every second blank stands on its head: bases of 4.5 and 3.5 follow each other at 4 in.
        static PlacedPanel Blank(int row, int place) => place % 2 == 0
            ? new PlacedPanel { Part = 0, XMm = 4 * place, YMm = 2.5 * row, AngleDeg = 0 }
            : new PlacedPanel { Part = 0, XMm = (4 * place) + 4.5, YMm = (2.5 * row) + 2.5, AngleDeg = 180 };
    }

    [Fact]
    public void Felt_per_thousand_balls_follows_from_pairs_width_and_mass()
    {
        // By hand: two panels a repeat of 50 mm: 40 panels and 20 balls a metre, so 50 m per thousand; roll 1 m wide, 800 g/m2.
        Outline square = Outline.From([new(-10, -10), new(10, -10), new(10, 10), new(-10, 10)]);
        RollLayout layout = Lay(
            square, 1000, 0,
            new LayoutRepeat(
                50,
                [
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
                    new PlacedPanel { Part = 0, XMm = 25, YMm = 50, AngleDeg = 180 },
                ]));
        layout = layout with { Parts = [layout.Parts[0] with { MassPerAreaGsm = 800 }] };
        YieldFigures yields = YieldAccount.Of(layout);
        Assert.Equal(40, yields.PanelsPerMetre, 1e-9);
        Assert.Equal(20, yields.BallsPerMetre, 1e-9);
        Assert.Equal(50, yields.PerThousandBalls.Metres, 1e-9);
        Assert.Equal(50, yields.PerThousandBalls.SquareMetres, 1e-9);
        Assert.Equal(40, yields.PerThousandBalls.Kilograms!.Value, 1e-9);
    }

    [Fact]
    public void Panels_of_two_classes_do_not_pair_with_each_other()
    {
        Outline square = Outline.From([new(-10, -10), new(10, -10), new(10, 10), new(-10, 10)]);
        RollLayout layout = Lay(
            square, 1000, 0,
            new LayoutRepeat(
                100,
                [
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 30 },
                    new PlacedPanel { Part = 0, XMm = 50, YMm = 50, AngleDeg = -30 },
                    new PlacedPanel { Part = 0, XMm = 50, YMm = 90, AngleDeg = 150 },
                ]));
        Assert.Equal(
            [(0, 30.0, 10.0), (0, 150.0, 20.0)],
            YieldAccount.Classes(layout).Select(c => (c.Class.Part, c.Class.AngleDeg, c.PanelsPerMetre)));
        Assert.Equal(15, YieldAccount.Of(layout).BallsPerMetre, 1e-9);
    }

    private static RollLayout Strip(double stock) => Lay(
        Outline.From([new(0, 0), new(10, 0), new(10, 27), new(0, 27)]), stock, 1.875,
        new LayoutRepeat(11.875, [new PlacedPanel { Part = 0, XMm = 0, YMm = 1.875, AngleDeg = 0 }]));

    private static RollLayout Lay(Outline part, double width, double edge, LayoutRepeat repeat) => new()
    {
        Parts = [new LayoutPart
        {
            Name = "part",
            Ball = null,
            Outline = part,
            Arcs = null,
            MassPerAreaGsm = null,
            WarpAngleDeg = null,
        }],
        RollWidthMm = width,
        Trims = EdgeTrims.Both(edge),
        GapMm = 0,
        Rules = new LayoutRules(null, 0, RowRule.Any, false),
        Bands = [new LayoutBand { YFromMm = edge, YToMm = width - edge, Repeat = repeat }],
        Search = Shapes.ByHand(leastGapMm: 0),
    };
}
