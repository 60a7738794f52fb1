using System.Globalization;

namespace FeltNest.Panel.Shape;

/// <summary>Allowances in their order: half the seam gap inwards, then the felt's shrinkage made good.</summary>
internal static class AllowanceChain
{
    /// <summary>The edge with allowances, and what each did.</summary>
    /// <exception cref="InputException">Half the seam gap is more than the tightest bend or half the waist of the flat panel has room for.</exception>
    public static (CutEdge Edge, IReadOnlyList<PanelAllowance> Allowances) Apply(PanelRequest request, FlatEdge edge)
    {
        double inset = request.SeamGapMm / 2, along = 1 / (1 - request.ShrinkWarp), across = 1 / (1 - request.ShrinkWeft);

        // The warp lies at -angle in the panel's own frame; without an angle both factors are the same and the direction does not matter.
        double warp = -(request.WarpAngle ?? 0);
        CutEdge plain = new(edge, 0, 1, 1, 0), closed = new(edge, inset, 1, 1, 0), cut = new(edge, inset, along, across, warp);
        EdgeMeasure before = EdgeMeasure.Of(plain);
        RefuseWideGap(request, edge, before);
        EdgeMeasure between = EdgeMeasure.Of(closed), after = EdgeMeasure.Of(cut);
        return (cut,
        [
            Entry(1, "seam gap", string.Create(CultureInfo.InvariantCulture, $"{request.SeamGapMm:0.###} mm, half of it on each panel"), before, between),
            Entry(2, "cure shrinkage", string.Create(CultureInfo.InvariantCulture, $"warp {100 * request.ShrinkWarp:0.###} %, weft {100 * request.ShrinkWeft:0.###} %"), between, after),
        ]);
    }

    private static void RefuseWideGap(PanelRequest request, FlatEdge edge, EdgeMeasure before)
    {
        const int places = 720;
        double tightest = Enumerable.Range(0, places).Max(i => edge.CurvatureAt(i * edge.Period / places));
        double most = 2 * Math.Min(1 / tightest, before.WaistMm / 2);
        if (!(request.SeamGapMm >= 0 && request.SeamGapMm < most))
        {
            throw new InputException(null, "seam.seamGapMm", FormattableString.Invariant(
                $"{request.SeamGapMm} mm; 0 to below {most:0.##} mm leave this panel an edge"));
        }
    }

    private static PanelAllowance Entry(int step, string name, string value, EdgeMeasure before, EdgeMeasure after) =>
        new(step, name, value, after.LengthMm - before.LengthMm, after.WidthMm - before.WidthMm, after.AreaMm2 - before.AreaMm2);
}
