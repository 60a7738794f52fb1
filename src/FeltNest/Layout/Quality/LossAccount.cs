using FeltNest.Layout.Limits;

namespace FeltNest.Layout.Quality;

/// <summary>Splits the waste of a layout by what causes it.</summary>
internal static class LossAccount
{
    // A panel whose edge is this near to the edge of the run, as a share of its height, stands at the edge.
    private const double AtEdge = 0.05;

    /// <summary>The split.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="planeNoGap">Panels per mm2 of the best lattice in the plane without gap.</param>
    /// <param name="plane">The same with the gap.</param>
    internal static LossSplit Of(LayoutRequest request, RollLayout layout, double planeNoGap, double plane)
    {
        double area = request.Part.AreaMm2;
        double width = request.RollWidthMm;
        double good = 100 * layout.PanelsPerMetre / 1000 * area / width;
        double lattice = 100 * plane * area;
        IReadOnlyList<(double Low, double High)> runs = FreeCloth.Of(request);
        double shape = 100 - (100 * planeNoGap * area);
        double gap = (100 * planeNoGap * area) - lattice;
        double trim = lattice * (width - runs.Sum(run => run.High - run.Low)) / width;
        double edges = lattice / width * runs.Sum(run => Edge(layout, run.Low, 1, plane) + Edge(layout, run.High, -1, plane));
        return new LossSplit
        {
            ShapePercent = shape,
            GapPercent = gap,
            TrimPercent = trim,
            EdgesPercent = edges,
            RowFitPercent = 100 - good - shape - gap - trim - edges,
        };
    }

    // k rows take (k - 1) steps and a height, so the lattice pays height - step for both edges together, half of it for one; the step has
    // the gap in it. The row at the edge has n panels in its repeat, and in the lattice such a row would take n/(density pitch) of width.
    private static double Edge(RollLayout layout, double edge, int side, double plane)
    {
        foreach (LayoutBand band in layout.Bands)
        {
            double[] heights = [.. band.Repeat.Panels
                .Select(p => (Place: p, Turned: layout.Parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg))))
                .Where(p =>
                    Math.Abs(
                        (side > 0
                            ? p.Place.YMm + p.Turned.MinY
                            : p.Place.YMm + p.Turned.MaxY) - edge) < AtEdge * (p.Turned.MaxY - p.Turned.MinY))
                .Select(p => p.Turned.MaxY - p.Turned.MinY)];
            if (heights.Length > 0)
            {
                double step = heights.Length / (plane * band.Repeat.LengthMm);
                return (heights.Average() - step) / 2;
            }
        }

        return 0;
    }
}
