using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Mixed;
using FeltNest.Layout.Rows.Tables;
using Xunit;

namespace FeltNest.Tests.Layout.Rows;

/// <summary>Where the panels of a model stand, by hand, and the model's cost against its slope.</summary>
public sealed class RowModelsTests
{
    private static readonly LayoutRequest Request = Shapes.Request(Shapes.Of(1, 0, 0, 30, 0, 30, 10, 0, 10), 100, gap: 4, edge: 5);
    private static readonly TiltRange Free = TiltRange.Of(Request.Rules);

    [Fact]
    public void Rows_stand_a_shift_and_a_step_from_each_other_and_within_one_repeat()
    {
        // Pitch 34, tilt 0.1, shift 20, step 15, the first at 12: x = 0, 20, 40 - 34.
        LayoutRepeat repeat = RowModels.Repeat(3, [34, 0.1, 20, 15, 12]);
        Assert.Equal(34, repeat.LengthMm);
        Assert.Equal([(0, 12), (20, 27), (6, 42)], repeat.Panels.Select(p => (p.XMm, p.YMm)));
        Assert.All(repeat.Panels, p => Assert.Equal(0.1 * 180 / Math.PI, p.AngleDeg, 1e-12));
    }

    [Fact]
    public void The_second_of_a_pair_stands_beside_the_first_and_turned()
    {
        LayoutRepeat repeat = RowModels.PairedRepeat(2, Math.PI, [34, 0, -5, 40, 12, 13, 11]);
        Assert.Equal([(0, 12, 0), (13, 23, 180), (29, 52, 0), (8, 63, 180)], repeat.Panels.Select(p => (p.XMm, p.YMm, p.AngleDeg)));
    }

    [Theory]
    [InlineData(30)]
    [InlineData(0)]
    [InlineData(359.5)]
    [InlineData(-10)]
    [InlineData(720)]
    public void An_angle_is_written_from_0_to_360_degrees_as_it_was_asked_for(double degrees) =>
        Assert.Equal(((degrees % 360) + 360) % 360, RowModels.Degrees(double.DegreesToRadians(degrees)));

    [Fact]
    public void A_model_begins_with_its_rows_on_the_lower_edge()
    {
        // Tilted by 30 degrees the bar reaches 15 sin 30 + 5 cos 30 below its middle.
        PoseModel model = RowModels.Of(Request, new RowLattice { Tilt = Math.PI / 6, Rows = 3, Pitch = 50, Shift = 7, Step = 26 }, Free);
        double low = 5 + (15 * 0.5) + (5 * Math.Sqrt(3) / 2);
        Assert.Equal([0, 7, 14], model.Panels.Select(p => p.X.At(model.Parameters)));
        Assert.Equal([low, low + 26, low + 52], model.Panels.Select(p => p.Y.At(model.Parameters)), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal((5, 95, 50), (model.Lower, model.Upper, model.Cost(model.Parameters)));
        Assert.Equal(Math.PI / 6, model.Panels[2].Angle.At(model.Parameters), 1e-12);
    }

    [Fact]
    public void Of_many_rows_those_that_can_meet_and_the_last_stand_in_the_model()
    {
        // Rows 12 apart, and panels that reach 2.5 x 15.8 and a gap of 4: 43.5, so two and four more rows, and the last.
        PoseModel model = RowModels.Of(
            Request with { RollWidthMm = 1000 }, new RowLattice { Tilt = 0, Rows = 50, Pitch = 34, Shift = 0, Step = 12 }, Free);
        Assert.Equal([0, 1, 2, 3, 4, 5, 49], model.Panels.Select(p => (int)Math.Round((p.Y.At(model.Parameters) - 10) / 12)));
    }

    [Fact]
    public void A_row_that_stands_three_times_in_a_repeat_stands_thirds_of_it_apart()
    {
        PoseModel model = RowModels.Mixed(
            Request, 90, [(0.2, -1, 1), (0.3, -2, 2)],
            [
                new MixedRow { Tilt = 0, Factor = 1, Turn = 0, At = new Point2(4, 20), Copies = 3 },
                new MixedRow { Tilt = 1, Factor = -1, Turn = Math.PI, At = new Point2(6, 60), Copies = 1 },
            ]);
        Assert.Equal(
            [(4, 20, 0.2), (34, 20, 0.2), (64, 20, 0.2), (6, 60, Math.PI - 0.3)],
            model.Panels.Select(p => (p.X.At(model.Parameters), p.Y.At(model.Parameters), p.Angle.At(model.Parameters))));
        Assert.Equal((-1, 2, double.NegativeInfinity), (model.Least[1], model.Most[2], model.Least[3]));
        Assert.Equal([false, true, true, false, false, false, false], model.IsAngle);
    }

    [Fact]
    public void The_cell_of_the_plane_is_its_sides_cross_product_and_its_slope_is_that_of_differences()
    {
        PoseModel model =
            RowModels.PlanePaired(Request, new RowLattice { Tilt = 0.4, Rows = 2, Pitch = 34, Shift = 7, Step = 26 }, new Point2(20, 3));
        double[] at = [.. model.Parameters];
        Assert.Equal(34 * 26, model.Cost(at), 1e-9);
        double[] slope = model.CostGradient(at);
        for (int i = 0; i < at.Length; i++)
        {
            double[] more = [.. at];
            double[] less = [.. at];
            more[i] += 1e-3;
            less[i] -= 1e-3;
            Assert.Equal((model.Cost(more) - model.Cost(less)) / 2e-3, slope[i], 1e-6);
        }

        // The second stands where the first one's tilt takes its offset.
        Point2 second = new Point2(20, 3).Turned(0.4);
        Assert.Equal((second.X, second.Y), (model.Panels[1].X.At(at), model.Panels[1].Y.At(at)));
        Assert.Equal(Math.PI + 0.4, model.Panels[1].Angle.At(at), 1e-12);
    }

    [Theory]
    [InlineData(64, 1)]
    [InlineData(127, 1)]
    [InlineData(128, 0.5)]
    [InlineData(1, 64)]
    [InlineData(0.6, 128)]
    public void A_part_is_scaled_by_a_power_of_two_to_the_size_of_a_panel(double radius, double factor)
    {
        Assert.Equal(factor, PoseScale.Of(radius));
        PoseModel model = RowModels.Mixed(
            Request, 90, [(0.2, -1, 1)], [new MixedRow { Tilt = 0, Factor = 1, Turn = 0, At = new Point2(4, 20), Copies = 3 }]);
        PoseModel scaled = PoseScale.Scaled(model, factor);
        Assert.Equal([90 * factor, 0.2, 4 * factor, 20 * factor], scaled.Parameters);
        Assert.Equal(
            (4 * factor, 5 * factor, 95 * factor, -1, 1), (scaled.Gap, scaled.Lower, scaled.Upper, scaled.Least[1], scaled.Most[1]));
        Assert.Equal(model.Parameters, PoseScale.Scaled(model, scaled.Parameters, 1 / factor));
        Assert.Equal(model.Part.MaxX * factor, scaled.Part.MaxX);
        Assert.Equal(model.Panels.Select(p => p.X.At(model.Parameters) * factor), scaled.Panels.Select(p => p.X.At(scaled.Parameters)));
    }
}
