using FeltNest.Layout;

namespace FeltNest.Tests.Layout;

/// <summary>Stands in for the search where a test asks what a study makes of layouts, not how they are found: rows of bounding boxes, all
/// panels as they are, which for squares at angle 0 is the best there is.</summary>
internal static class BoxRows
{
    /// <summary>The rows of a request.</summary>
    /// <exception cref="NoAnswerException">Not one row fits.</exception>
    internal static RollLayout Of(LayoutRequest request, CancellationToken stop)
    {
        _ = stop;
        double height = request.Part.Outline.MaxY - request.Part.Outline.MinY;
        double length = request.Part.Outline.MaxX - request.Part.Outline.MinX;
        int rows = (int)Math.Floor((request.UsableWidthMm + request.GapMm + 1e-9) / (height + request.GapMm));
        if (rows == 0)
        {
            throw new NoAnswerException(FormattableString.Invariant($"a row needs {height + request.Trims.TotalMm} mm"));
        }

        PlacedPanel[] placed =
        [
            .. Enumerable.Range(0, rows).Select(row => new PlacedPanel
            {
                Part = 0,
                XMm = 0,
                YMm = request.Trims.LowerMm - request.Part.Outline.MinY + (row * (height + request.GapMm)),
                AngleDeg = 0,
            }),
        ];
        (double low, double high) = request.Usable;
        return new RollLayout
        {
            Parts = request.Parts,
            RollWidthMm = request.RollWidthMm,
            Trims = request.Trims,
            GapMm = request.GapMm,
            Rules = request.Rules,
            Bands = [new LayoutBand { YFromMm = low, YToMm = high, Repeat = new LayoutRepeat(length + request.GapMm, placed) }],
            Search = Shapes.ByHand(request.GapMm),
        };
    }
}
