using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Rows.Tables;
using Xunit;

namespace FeltNest.Tests.Layout.Rows.Tables;

/// <summary>Step tables against circle geometry, against the plain loops they shorten, and kept over widths.</summary>
public sealed class StepTableTests
{
    private static readonly LayoutRules Free = new(null, 0, RowRule.Same, false);

    // Two discs of radius r with a gap g touch when their centres are 2r + g apart: step^2 + shift^2 = (2r + g)^2.
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void Discs_stand_on_each_other_as_circle_geometry_says(double gap)
    {
        TurnedPart disc = TurnedPart.Make(Shapes.Polygon(2000, 20), 0, 0.05, gap);
        StepTable table = StepTable.Make(disc, disc);
        double reach = 40 + gap;
        for (double shift = -0.9 * reach; shift <= 0.9 * reach; shift += 0.37)
        {
            Assert.Equal(Math.Sqrt((reach * reach) - (shift * shift)), table.At(shift), 0.06);
        }

        Assert.True(double.IsNegativeInfinity(table.At(reach + 1)));
        Assert.True(double.IsNegativeInfinity(table.At(-reach - 1)));

        // Hexagonal rows: at a pitch of one diameter the next row stands half a pitch aside and sqrt(3)/2 above.
        (double step, double shift2) = table.LeastOverRow(reach);
        Assert.Equal(reach * Math.Sqrt(3) / 2, step, 0.1);
        Assert.Equal(reach / 2, shift2, 0.1);
    }

    [Fact]
    public void The_least_step_over_a_row_is_the_least_of_all_shifts_asked_one_by_one()
    {
        Random random = new(5);
        for (int run = 0; run < 20; run++)
        {
            TurnedPart below = Turned(random);
            TurnedPart above = Turned(random);
            StepTable table = StepTable.Make(below, above);
            double pitch = 12 + (30 * random.NextDouble());
            (double step, double shift) = table.LeastOverRow(pitch);
            double plain = double.PositiveInfinity;
            int count = (int)Math.Ceiling(pitch / table.Grid);
            for (int n = 0; n < count; n++)
            {
                double at = pitch * n / count;
                double greatest = double.NegativeInfinity;
                for (int copy = -20; copy <= 20; copy++)
                {
                    greatest = Math.Max(greatest, table.At(at + (copy * pitch)));
                }

                Assert.Equal(greatest, table.AtRow(at, pitch), 1e-9);
                plain = Math.Min(plain, greatest);
            }

            Assert.Equal(plain, step, 1e-9);
            Assert.Equal(plain, table.AtRow(shift, pitch), 1e-9);
        }

        static TurnedPart Turned(Random random) => TurnedPart.Make(Shapes.DogBone(2, 0.4, 12, 4), 3 * random.NextDouble(), 0.1, 0.7);
    }

    [Fact]
    public void A_symmetric_part_has_the_same_tables_whether_mirrored_or_made()
    {
        Outline part = Shapes.DogBone(2, 0.4, 24, 20);
        TiltTables tables = new(part, 2, TiltRange.Of(Free), SearchEffort.Of(Shapes.Request(part, 500)));
        Assert.True(tables.HasMirror);
        Assert.True(tables.HasHalfTurn);
        for (int i = 0; i < tables.Tilts.Count; i += 7)
        {
            double tilt = Math.PI * i / tables.Tilts.Count;
            TiltRows made = new(TurnedPart.Make(part, tilt, tables.Grid, 2));
            Assert.Equal(tilt, tables.Tilts[i].Tilt, 1e-12);
            Assert.Equal(made.OwnPitch, tables.Tilts[i].OwnPitch, 1e-8);
            Assert.Equal(made.Plane().Step, tables.Tilts[i].Plane().Step, 1e-8);
            Assert.Equal(made.Fit(5, 470)?.Pitch ?? 0, tables.Tilts[i].Fit(5, 470)?.Pitch ?? 0, 1e-6);
        }
    }

    [Fact]
    public void Kept_tables_promise_what_tables_made_for_the_width_promise()
    {
        Outline part = Shapes.DogBone(2, 0.4, 12, 20);
        SearchEffort effort = SearchEffort.Of(Shapes.Request(part, 500));
        TiltTables kept = new(part, 3, TiltRange.Of(Free), effort);
        foreach (double width in new[] { 300.0, 487.5, 900 })
        {
            RowTables own = new(Shapes.Request(part, width, gap: 3), TiltRange.Of(Free), effort);
            Assert.Equal(own.Best(8), new RowTables(kept, width).Best(8));
        }
    }

    // A part that is not its own mirror keeps all its tilts.
    [Fact]
    public void A_lopsided_part_is_not_mirrored()
    {
        Outline part = Shapes.Of(10, 0, 0, 4, 0, 4, 1, 1, 1, 1, 3, 0, 3);
        TiltTables tables = new(part, 1, TiltRange.Of(Free), SearchEffort.Of(Shapes.Request(part, 500)));
        Assert.False(tables.HasMirror);
        Assert.False(tables.HasHalfTurn);
        Assert.True(tables.Wraps);
    }
}
