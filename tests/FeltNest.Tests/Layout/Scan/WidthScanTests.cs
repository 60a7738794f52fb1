using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Scan;
using Xunit;

namespace FeltNest.Tests.Layout.Scan;

/// <summary>Many widths on one set of tables, and a kept die on other widths.</summary>
public sealed class WidthScanTests
{
    private static readonly Outline Bone = Shapes.DogBone(2.3, 0.7, 24, 25);

    [Fact]
    public void Discs_of_diameter_one_gain_a_row_at_each_hexagonal_width()
    {
        // k staggered rows at pitch 1 need W = 1 + (k - 1) sqrt(3)/2; below it one row less, spread, is what H. Groemer's bound of 1960
        // allows no more than equal to.
        const double diameter = 50;
        Outline disc = Shapes.Polygon(720, diameter / 2);
        double width = diameter * (1 + Math.Sqrt(3) + 0.001);
        RollLayout three = new WidthScan(Shapes.Request(disc, width)).At(width)!;
        IReadOnlyList<DropWidth> drops = KeptDie.Widths(three, 1000);
        for (int rows = 1; rows <= 3; rows++)
        {
            Assert.Equal(diameter * (1 + ((rows - 1) * Math.Sqrt(3) / 2)), drops[rows - 1].LeastWidthMm, 0.1);
            Assert.Equal(rows * 1000 / diameter, drops[rows - 1].PanelsPerMetre, 0.05);
        }

        // The lattice goes on beyond the die's own rows.
        Assert.Equal(diameter * (1 + (9 * Math.Sqrt(3) / 2)), drops.Single(d => d.Rows == 10).LeastWidthMm, 0.5);
    }

    [Fact]
    public void A_kept_die_on_its_least_width_passes_the_check_and_a_tenth_less_does_not()
    {
        RollLayout die = Shapes.Lay(Shapes.Request(Bone, 400, gap: 3, edge: 10));
        DropWidth fewer = KeptDie.Widths(die, 400).Single(d => d.Rows == die.Bands[0].Repeat.Panels.Count - 1);
        PlacedPanel[] kept = [.. die.Bands[0].Repeat.Panels.OrderBy(p => p.YMm).SkipLast(1)];
        RollLayout On(double width) => die with
        {
            RollWidthMm = width,
            Bands = [new LayoutBand
            {
                YFromMm = 10,
                YToMm = width - 10,
                Repeat = new LayoutRepeat(die.Bands[0].Repeat.LengthMm, kept),
            }],
        };
        Assert.Empty(LayoutCheck.Verify(On(fewer.LeastWidthMm + 1e-6)).Violations);
        Assert.NotEmpty(LayoutCheck.Verify(On(fewer.LeastWidthMm - 0.1)).Violations);
    }

    [Fact]
    public void A_wider_roll_never_gives_less_and_every_width_passes_the_check()
    {
        WidthScan scan = new(Shapes.Request(Bone, 420, gap: 3, edge: 10));
        double last = 0;
        for (double width = 120; width <= 420; width += 20)
        {
            RollLayout layout = scan.At(width)!;
            Assert.Empty(LayoutCheck.Verify(layout).Violations);
            Assert.True(layout.PanelsPerMetre >= last * (1 - 1e-6), $"{width}");
            last = layout.PanelsPerMetre;
        }
    }

    [Fact]
    public void At_a_crossover_two_numbers_of_rows_give_the_same()
    {
        WidthScan scan = new(Shapes.Request(Bone, 420, gap: 3, edge: 10));
        (double, int)[] scanned = [.. new double[] { 300, 340, 380, 420 }.Select(w => (w, scan.At(w)!.Bands[0].Repeat.Panels.Count))];
        IReadOnlyList<Crossover> crossovers = scan.Crossovers(scanned);
        Assert.NotEmpty(crossovers);
        foreach (Crossover at in crossovers)
        {
            RollLayout below = scan.At(at.WidthMm - 0.05)!;
            RollLayout above = scan.At(at.WidthMm + 0.05)!;
            Assert.Equal(at.RowsBelow, below.Bands[0].Repeat.Panels.Count);
            Assert.Equal(at.RowsAbove, above.Bands[0].Repeat.Panels.Count);
            Assert.Equal(below.PanelsPerMetre, above.PanelsPerMetre, 5e-4 * below.PanelsPerMetre);
        }
    }

    [Fact]
    public void A_width_too_narrow_for_the_part_has_no_layout() => Assert.Null(new WidthScan(Shapes.Request(Bone, 420)).At(40));
}
