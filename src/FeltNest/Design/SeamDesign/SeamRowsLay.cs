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
        for (int i = 1; i < panels.Length; i++)
        {
            double off = Math.IEEERemainder(panels[i].XMm - panels[0].XMm - (i * shift), pitch);
            double turn = Math.IEEERemainder(panels[i].AngleDeg - panels[0].AngleDeg, 180);
            if (Math.Abs(off) > Even || Math.Abs(turn) > Even || Math.Abs(panels[i].YMm - panels[0].YMm - (i * step)) > Even)
            {
                return null;
            }
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
}
