using FeltNest.Layout;
using FeltNest.Layout.Bands;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;
using Xunit;

namespace FeltNest.Tests.Layout.Bands;

/// <summary>Two bands brought to one repeat, by hand: bars of 30 by 10 on cloth from 5 to 195.</summary>
public sealed class SharedRepeatTests
{
    private static readonly LayoutRequest Request = Shapes.Request(Shapes.Of(1, 0, 0, 30, 0, 30, 10, 0, 10), 200, gap: 4, edge: 5);

    [Fact]
    public void Three_of_the_one_pitch_and_two_of_the_other_share_the_longer_of_both()
    {
        // 3 x 40 = 120 and 2 x 60.5 = 121; no other small multiples are within 2 % of each other. Two rows of three and three rows of two:
        // 12 panels.
        RowLattice lower = new() { Tilt = 0, Rows = 2, Pitch = 40, Shift = 7, Step = 15 };
        RowLattice upper = new() { Tilt = Math.PI / 2, Rows = 3, Pitch = 60.5, Shift = 5, Step = 36 };
        LayStart[] starts = [.. SharedRepeat.Starts(Request, lower, upper, TiltRange.Of(Request.Rules))];
        Assert.Equal(3, starts.Length);
        Assert.All(starts, s => Assert.Equal(12 / 121.0, s.Density, 1e-12));

        // The lower band begins on the lower edge, 5 + 5; the upper one ends at the upper, 195 - 15 - 2 x 36 for its first row, and a third
        // of its pitch further along in every start.
        for (int phase = 0; phase < 3; phase++)
        {
            PoseModel model = starts[phase].Model;
            double[] at = model.Parameters;
            (double X, double Y, double Angle)[] panels =
            [
                .. model.Panels.Select(p => (Math.Round(p.X.At(at), 9), Math.Round(p.Y.At(at), 9), p.Angle.At(at))),
            ];
            double third = Math.Round(121 / 3.0, 9);
            double two = Math.Round(242 / 3.0, 9);
            double shift = phase * 60.5 / 3;
            Assert.Equal(
                [(0, 10), (third, 10), (two, 10), (7, 25), (7 + third, 25), (7 + two, 25)],
                panels.Take(6).Select(p => (Math.Round(p.X, 9), p.Y)));
            Assert.Equal(
                [(0, 108), (60.5, 108), (5, 144), (65.5, 144), (10, 180), (70.5, 180)],
                panels.Skip(6).Select(p => (Math.Round(p.X - shift, 6), p.Y)));
            Assert.All(panels, p => Assert.Equal(p.Y > 100 ? Math.PI / 2 : 0, p.Angle));
        }
    }

    [Theory]
    [InlineData(40, 40.8, 3)]
    [InlineData(40, 40.81, 0)]
    [InlineData(40, 20, 3)]
    [InlineData(10, 91, 3)]
    [InlineData(10, 100, 0)]
    public void Repeats_within_two_per_cent_and_of_at_most_nine_pitches_are_shared(double first, double second, int starts) =>
        Assert.Equal(
            starts,
            SharedRepeat.Starts(
                Request, new() { Tilt = 0, Rows = 2, Pitch = first, Shift = 7, Step = 15 },
                new() { Tilt = 0, Rows = 2, Pitch = second, Shift = 5, Step = 15 }, TiltRange.Of(Request.Rules))
                .Count(s => s.Model.Panels.Count <= 20));

    [Fact]
    public void A_die_of_more_than_a_hundred_and_twenty_panels_is_not_begun()
    {
        Assert.Equal(
            3,
            SharedRepeat.Starts(
                Request, new() { Tilt = 0, Rows = 60, Pitch = 40, Shift = 7, Step = 1 },
                new() { Tilt = 0, Rows = 60, Pitch = 40, Shift = 5, Step = 1 }, TiltRange.Of(Request.Rules))
                .Count());
        Assert.Empty(
            SharedRepeat.Starts(
                Request, new() { Tilt = 0, Rows = 61, Pitch = 40, Shift = 7, Step = 1 },
                new() { Tilt = 0, Rows = 60, Pitch = 40, Shift = 5, Step = 1 }, TiltRange.Of(Request.Rules)));
    }
}
