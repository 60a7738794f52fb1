using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Design.SeamDesign;

/// <summary>A layout found on the roll as parallel rows that a seam can be designed for.</summary>
internal static class SeamRowsLay
{
    // Rows whose steps differ by more than this, mm, are not parallel rows of one step.
    private const double Even = 1e-6;

    /// <summary>The rows of a layout; null where it is no stack of equal rows, one panel a pitch.</summary>
    public static SeamLay? Of(LayoutRequest request, RollLayout layout)
    {
        if (layout.Bands.Count != 1)
        {
            return null;
        }

        LayoutRepeat repeat = layout.Bands[0].Repeat;
        PlacedPanel[] panels = [.. repeat.Panels.OrderBy(panel => panel.YMm)];
        double pitch = repeat.LengthMm;
        double step = panels.Length > 1 ? panels[1].YMm - panels[0].YMm : 0;
        double shift = panels.Length > 1 ? panels[1].XMm - panels[0].XMm : 0;
        if (!Enumerable.Range(1, panels.Length - 1).All(i => IsInStep(panels[0], panels[i], i * shift, i * step, pitch)))
        {
            return null;
        }

        RowLattice rows = new()
        {
            Tilt = double.DegreesToRadians(Math.IEEERemainder(panels[0].AngleDeg, 180)),
            Rows = panels.Length,
            Pitch = pitch,
            Shift = shift,
            Step = step,
        };
        PoseModel model = RowModels.Of(request, rows, TiltRange.Of(request.Rules));
        double[] at = [.. model.Parameters];
        at[^1] = panels[0].YMm;
        return new SeamLay
        {
            Model = model with { Parameters = at },
            PanelsPerCost = panels.Length,
            WidthMm = request.RollWidthMm,
            Warp = request.Rules.WarpAngleDeg is null ? null : RowModels.Tilt,
        };
    }

    private static bool IsInStep(PlacedPanel first, PlacedPanel panel, double shift, double step, double pitch) =>
        Math.Abs(Math.IEEERemainder(panel.XMm - first.XMm - shift, pitch)) <= Even
        && Math.Abs(Math.IEEERemainder(panel.AngleDeg - first.AngleDeg, 180)) <= Even
        && Math.Abs(panel.YMm - first.YMm - step) <= Even;
}
