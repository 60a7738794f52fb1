using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Mixed;
using FeltNest.Layout.Rows.Tables;
using Xunit;

namespace FeltNest.Tests.Layout.Polish;

/// <summary>Every pair of panels within reach, copies included, is in the list: asked against all copies written out.</summary>
public sealed class PairListTests
{
    private static readonly LayoutRequest Request = Shapes.Request(Shapes.Of(1, 0, 0, 30, 0, 30, 10, 0, 10), 200, gap: 4, edge: 5);

    [Theory]
    [InlineData(32)]
    [InlineData(45)]
    [InlineData(130)]
    public void No_copy_within_reach_along_a_roll_is_missing(double reach)
    {
        // Rows far apart along the roll as written, one of them three times in the repeat.
        PoseModel model = RowModels.Mixed(
            Request, 90, [(0.2, -1, 1), (0.3, -2, 2)],
            [
                new MixedRow { Tilt = 0, Factor = 1, Turn = 0, At = new Point2(4, 20), Copies = 3 },
                new MixedRow { Tilt = 1, Factor = -1, Turn = Math.PI, At = new Point2(206, 50), Copies = 1 },
                new MixedRow { Tilt = 0, Factor = 1, Turn = 0, At = new Point2(-300, 90), Copies = 2 },
            ]);
        AllWithin(model, reach);
    }

    [Theory]
    [InlineData(30)]
    [InlineData(75)]
    public void No_copy_within_reach_in_the_plane_is_missing(double reach) =>
        AllWithin(
            RowModels.PlanePaired(Request, new RowLattice { Tilt = 0.4, Rows = 2, Pitch = 34, Shift = -47, Step = 26 }, new Point2(20, 3)),
            reach);

    [Fact]
    public void Rows_that_move_as_one_are_paired_once()
    {
        // Five rows a step of 15 and half a pitch of 34 apart, and reach for two of them: a panel with its own copy, the next row's two
        // nearest and the one above these.
        PoseModel model =
            RowModels.Of(Request, new RowLattice { Tilt = 0, Rows = 5, Pitch = 34, Shift = 17, Step = 15 }, TiltRange.Of(Request.Rules));
        List<PanelPair> pairs = PairList.Of(model, model.Parameters, 35);
        Assert.Equal(
            ["-17 15", "0 30", "17 15", "34 0"],
            pairs
                .Select(p => FormattableString.Invariant($"{p.OffsetX.At(model.Parameters)} {p.OffsetY.At(model.Parameters)}"))
                .Where(p => p is "34 0" or "17 15" or "-17 15" or "0 30")
                .Order(StringComparer.Ordinal));
        Assert.Equal(pairs.Count, pairs.Select(p => (Terms(p.OffsetX), Terms(p.OffsetY))).Distinct().Count());
    }

    private static void AllWithin(PoseModel model, double reach)
    {
        double[] at = model.Parameters;
        HashSet<(double, double, double, double)> listed = [.. PairList.Of(model, at, reach).SelectMany(p => new[]
        {
            Key(p.OffsetX.At(at), p.OffsetY.At(at), model.Panels[p.First].Angle.At(at), model.Panels[p.Second].Angle.At(at)),
            Key(-p.OffsetX.At(at), -p.OffsetY.At(at), model.Panels[p.Second].Angle.At(at), model.Panels[p.First].Angle.At(at)),
        })];
        int found = 0;
        (double X, double Y)[] periods = [.. model.Periods.Select(p => (p.X.At(at), p.Y.At(at)))];
        foreach (PanelPose a in model.Panels)
        {
            foreach (PanelPose b in model.Panels)
            {
                for (int k = -30; k <= 30; k++)
                {
                    for (int m = periods.Length > 1 ? -12 : 0; m <= (periods.Length > 1 ? 12 : 0); m++)
                    {
                        double x = b.X.At(at) - a.X.At(at) + (k * periods[0].X) + (m * (periods.Length > 1 ? periods[1].X : 0));
                        double y = b.Y.At(at) - a.Y.At(at) + (m * (periods.Length > 1 ? periods[1].Y : 0));
                        if (Math.Abs(x) <= reach && Math.Abs(y) <= reach && !(ReferenceEquals(a, b) && k == 0 && m == 0))
                        {
                            found++;
                            Assert.Contains(Key(x, y, a.Angle.At(at), b.Angle.At(at)), listed);
                        }
                    }
                }
            }
        }

        Assert.NotEqual(0, found);
    }

    private static string Terms(AffineForm form) => form.Constant + ":" + string.Join(' ', form.Terms);

    private static (double, double, double, double) Key(double x, double y, double first, double second) =>
        (Math.Round(x, 6) + 0.0, Math.Round(y, 6) + 0.0, Math.Round(first, 6), Math.Round(second, 6));
}
