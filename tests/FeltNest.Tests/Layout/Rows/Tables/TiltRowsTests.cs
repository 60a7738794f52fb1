using FeltNest.Geometry;
using FeltNest.Layout.Rows.Tables;
using Xunit;

namespace FeltNest.Tests.Layout.Rows.Tables;

/// <summary>Rows of discs, of which the least pitch is known, and of squares; parts mirrored and in pairs.</summary>
public sealed class TiltRowsTests
{
    // Discs of 40 with a gap of 2: centres at least 42 apart.
    private const double Apart = 42;
    private static readonly TiltRows Discs = new(TurnedPart.Make(Shapes.Polygon(1000, 20), 0, 0.05, 2));

    [Theory]
    [InlineData(2, 40)]
    [InlineData(2, 33)]
    [InlineData(5, 36.4)]
    [InlineData(3, 33)]
    [InlineData(7, 25)]
    [InlineData(7, 21.1)]
    public void The_least_pitch_of_discs_is_what_two_rows_that_touch_leave(int rows, double step)
    {
        // Rows a step s apart touch where half a pitch is sqrt(42^2 - s^2), unless a row's own discs touch first.
        double pitch = Math.Max(Apart, 2 * Math.Sqrt((Apart * Apart) - (step * step)));
        RowLattice found = Discs.Fit(rows, Discs.Height + ((rows - 1) * step))!;
        Assert.Equal(pitch, found.Pitch, 0.2);
        Assert.Equal(
            0, Math.IEEERemainder(found.Shift - (pitch / 2), pitch),
            Math.Max(0.2, 0.55 * Math.Abs(pitch - (2 * Math.Sqrt(Math.Max(0, (Apart * Apart) - (step * step)))))));
        Assert.Equal((rows, step), (found.Rows, Math.Round(found.Step, 6)));
        Assert.Equal(rows / found.Pitch, found.Density);
    }

    [Theory]
    [InlineData(4, 19)]
    [InlineData(6, 15)]
    public void Rows_that_reach_past_their_neighbours_keep_clear_of_every_row(int rows, double step)
    {
        Assert.Null(Discs.Fit(rows, Discs.Height + ((rows - 1) * step)));
        RowLattice found = Discs.Fit(rows, Discs.Height + ((rows - 1) * step), 200)!;
        Assert.True(IsClear(found.Pitch, found.Shift, 0.3));

        // Every pitch and shift of a grid, by circle geometry: none is shorter.
        double least = Apart;
        while (!Enumerable.Range(0, (int)(least / 0.1)).Any(k => IsClear(least, k * 0.1, 0.1)))
        {
            least += 0.1;
        }

        Assert.Equal(least, found.Pitch, 0.5);
        Assert.Null(Discs.Fit(rows, Discs.Height + ((rows - 1) * step), least - 1));

        bool IsClear(double pitch, double shift, double slack) => Enumerable.Range(1, rows - 1).All(n =>
        {
            double along = Math.IEEERemainder(n * shift, pitch);
            return (along * along) + (n * step * n * step) >= (Apart - slack) * (Apart - slack);
        });
    }

    [Fact]
    public void Rows_that_reach_past_their_neighbours_are_found_at_every_step()
    {
        // Between 14.3 and 21 every third row still passes clear of the first: there is a pitch for all of these.
        for (double step = 14.3; step < 21; step += 0.1)
        {
            Assert.NotNull(Discs.Fit(6, Discs.Height + (5 * step), 200));
        }
    }

    [Fact]
    public void A_single_row_needs_its_height_but_for_a_sample()
    {
        Assert.Equal((1, 42.0), (Discs.Fit(1, 40)!.Rows, Math.Round(Discs.Fit(1, 40)!.Pitch, 0)));
        Assert.NotNull(Discs.Fit(1, 39.96));
        Assert.Null(Discs.Fit(1, 39.9));
        Assert.Equal(Discs.OwnPitch, Discs.Fit(1, 500)!.Pitch);
    }

    [Fact]
    public void Fits_go_from_the_last_loose_row_count_to_the_deepest()
    {
        // Loose rows are 36.37 apart: on 190 mm of cloth 5 of them take 185.5. Six rows are 30 apart, a pitch of 58.8; seven 25, 67.5;
        // eight 21.4, 72.3; of nine next but one would meet.
        RowLattice[] fits = [.. Discs.Fits(190, 0.25)];
        Assert.Equal([4, 5, 6, 7, 8], fits.Select(f => f.Rows).Take(5));
        Assert.Equal([42, 42, 59, 67, 72], fits.Take(5).Select(f => Math.Round(f.Pitch, 0)));
        Assert.Empty(Discs.Fits(39, 0.25));
        Assert.Equal(1, Discs.Fits(45, 0.25).First().Rows);
    }

    [Fact]
    public void Squares_stand_above_each_other_and_never_between()
    {
        TiltRows squares = new(TurnedPart.Make(Shapes.Of(1, 0, 0, 10, 0, 10, 10, 0, 10), 0, 0.1, 2));
        Assert.Equal(12, squares.OwnPitch, 0.2);
        Assert.Equal(12, squares.Plane().Step, 0.1);
        Assert.Equal(12, squares.Fit(3, 34)!.Pitch, 0.2);
        Assert.Equal(34 - 10, 2 * squares.Fit(3, 34)!.Step, 1e-9);

        // Rows 1.5 apart in the place of 2: corners must be 2 apart aslant, so every second square is sqrt(2^2 - 1.5^2) beside the one
        // below, with both of them in a period.
        Assert.Equal(2 * (10 + Math.Sqrt(4 - 2.25)), squares.Fit(2, 21.5)!.Pitch, 0.5);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    public void A_mirrored_part_is_the_part_made_of_its_mirror(double tilt)
    {
        Outline hook = Shapes.Of(4, 0, 0, 4, 0, 4, 1, 1, 1, 1, 3, 0, 3);
        TurnedPart mirrored = TurnedPart.Make(hook, tilt, 0.1, 1.05).Mirrored();
        TurnedPart made = TurnedPart.Make(Outline.From(hook.Turned(tilt).Points.Select(p => new Point2(-p.X, p.Y))), 0, 0.1, 1.05);
        Assert.Equal(
            (made.First, made.FirstGrown, made.Top.Length, made.TopGrown.Length),
            (mirrored.First, mirrored.FirstGrown, mirrored.Top.Length, mirrored.TopGrown.Length));
        Assert.Equal(0, Off(made.Top, mirrored.Top) + Off(made.Bottom, mirrored.Bottom) + Off(made.TopGrown, mirrored.TopGrown), 1e-9);
        Assert.Equal(
            0, Off([made.MinX, made.MaxX, made.MinY, made.MaxY], [mirrored.MinX, mirrored.MaxX, mirrored.MinY, mirrored.MaxY]), 1e-9);
        Assert.Equal(Math.PI - tilt, mirrored.Tilt);
    }

    [Fact]
    public void A_pair_is_both_parts_turned_together()
    {
        // A bar of 20 by 10 and one turned upright beside it, 40 along: the pair tilted by 90 degrees stands with the second one above,
        // lying flat.
        Outline bar = Shapes.Of(1, 0, 0, 20, 0, 20, 10, 0, 10);
        TurnedPart pair = TurnedPart.Pair(bar, new Point2(40, 0), Math.PI / 2, Math.PI / 2, 0.1, 0);
        Assert.Equal(
            (400, -10, 45, 55), (Math.Round(pair.Area, 9), Math.Round(pair.MinY, 9), Math.Round(pair.MaxY, 9), Math.Round(pair.Height, 9)));
        Assert.Equal((-10, 10), (Math.Round(pair.MinX, 9), Math.Round(pair.MaxX, 9)));

        // In the middle both are met, at the sides only the flat one: from 35 to 45.
        Assert.Equal((45, -10), (Math.Round(pair.Top[pair.Top.Length / 2], 9), Math.Round(pair.Bottom[pair.Bottom.Length / 2], 9)));
        Assert.Equal((45, 35), (Math.Round(pair.Top[3], 9), Math.Round(pair.Bottom[3], 9)));
    }

    [Fact]
    public void Shifts_at_which_a_step_is_too_little_end_where_the_circles_touch()
    {
        TurnedPart disc = TurnedPart.Make(Shapes.Polygon(1000, 20), 0, 0.05, 2);
        StepTable table = StepTable.Make(disc, disc);
        foreach (double level in new[] { 10, 25, 36.37, 41 })
        {
            (double from, double to) = Assert.Single(table.Above(level));
            double half = Math.Sqrt((Apart * Apart) - (level * level));
            Assert.Equal(half, to, 0.3);
            Assert.Equal(-half, from, 0.3);
        }

        Assert.Empty(table.Above(42.1));
        Assert.Equal(42, table.Highest, 0.01);
    }

    private static double Off(double[] a, double[] b) => a.Zip(b, (x, y) => Math.Abs(x - y)).Max();
}
