namespace FeltNest.Panel.Shape;

/// <summary>Allowances in their order: half the seam gap inwards, then the felt's shrinkage made good, then its stretch when it is pulled
/// on, then the die against the panel.</summary>
/// <remarks>What happens to the felt is undone backwards: cut, pulled on, cured.</remarks>
internal static class AllowanceChain
{
    // Places round the edge at which its bends are looked at.
    private const int Places = 720;

    /// <summary>The edge with allowances, and what each did.</summary>
    /// <exception cref="InputException">Half the seam gap, or the die's offset, is more than the tightest bend or half the waist of the
    /// flat panel has room for.</exception>
    public static (CutEdge Edge, IReadOnlyList<PanelAllowance> Allowances) Apply(PanelRequest request, FlatEdge edge)
    {
        double inset = request.SeamGapMm / 2;
        double along = 1 / (1 - request.ShrinkWarp);
        double across = 1 / (1 - request.ShrinkWeft);

        // The warp lies at -angle in the panel's own frame; without an angle both factors are the same and the direction does not matter.
        double warp = -(request.WarpAngle ?? 0);
        EdgeMeasure plain = EdgeMeasure.Of(new CutEdge(edge, 0, 1, 1, 0, 0));
        RefuseWideGap(request, edge, plain);
        CutEdge pulled = new(edge, inset, along / (1 + request.StretchWarp), across / (1 + request.StretchWeft), warp, 0);
        CutEdge cut = Cut(request, edge);
        EdgeMeasure closed = EdgeMeasure.Of(new CutEdge(edge, inset, 1, 1, 0, 0));
        EdgeMeasure cured = EdgeMeasure.Of(new CutEdge(edge, inset, along, across, warp, 0));
        EdgeMeasure before = EdgeMeasure.Of(pulled);
        RefuseFarDie(request, pulled, before);
        return (cut,
        [
            Entry(1, "seam gap", FormattableString.Invariant($"{request.SeamGapMm:0.###} mm, half of it on each panel"), plain, closed),
            Entry(
                2, "cure shrinkage",
                FormattableString.Invariant($"warp {100 * request.ShrinkWarp:0.###} %, weft {100 * request.ShrinkWeft:0.###} %"), closed,
                cured),
            Entry(
                3, "stretch on application",
                FormattableString.Invariant($"warp {100 * request.StretchWarp:0.###} %, weft {100 * request.StretchWeft:0.###} %"), cured,
                before),
            Entry(
                4, "die offset", FormattableString.Invariant($"{request.DieOffsetMm:+0.###;-0.###;0} mm, above 0 outwards"), before,
                EdgeMeasure.Of(cut)),
        ]);
    }

    /// <summary>The edge with all allowances, unchecked and unmeasured.</summary>
    public static CutEdge Cut(PanelRequest request, FlatEdge edge) => new(
        edge, request.SeamGapMm / 2, 1 / (1 - request.ShrinkWarp) / (1 + request.StretchWarp),
        1 / (1 - request.ShrinkWeft) / (1 + request.StretchWeft), -(request.WarpAngle ?? 0), request.DieOffsetMm);

    private static void RefuseWideGap(PanelRequest request, FlatEdge edge, EdgeMeasure before)
    {
        double tightest = Enumerable.Range(0, Places).Max(i => edge.CurvatureAt(i * edge.Period / Places));
        double most = 2 * Math.Min(1 / tightest, before.WaistMm / 2);
        if (!(request.SeamGapMm >= 0 && request.SeamGapMm < most))
        {
            throw new InputException(null, "seam.seamGapMm", FormattableString.Invariant(
                $"{request.SeamGapMm} mm; 0 to below {most:0.##} mm leave this panel an edge"));
        }
    }

    private static void RefuseFarDie(PanelRequest request, CutEdge edge, EdgeMeasure before)
    {
        double[] bends = [.. Enumerable.Range(0, Places).Select(i => edge.StretchedCurvature(i * edge.Period / Places))];
        double inwards = Math.Min(1 / bends.Max(), before.WaistMm / 2);
        double outwards = bends.Min() < 0 ? -1 / bends.Min() : double.PositiveInfinity;
        if (!(request.DieOffsetMm > -inwards && request.DieOffsetMm < outwards))
        {
            throw new InputException(null, "panel.dieOffsetMm", FormattableString.Invariant(
                $"{request.DieOffsetMm} mm; above {-inwards:0.##} and below {outwards:0.##} mm leave this panel an edge"));
        }
    }

    private static PanelAllowance Entry(int step, string name, string value, EdgeMeasure before, EdgeMeasure after) =>
        new()
        {
            Step = step,
            Name = name,
            Value = value,
            LengthEffectMm = after.LengthMm - before.LengthMm,
            WidthEffectMm = after.WidthMm - before.WidthMm,
            AreaEffectMm2 = after.AreaMm2 - before.AreaMm2,
        };
}
