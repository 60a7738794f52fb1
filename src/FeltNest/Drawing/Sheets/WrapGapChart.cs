using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Parts;
using FeltNest.Panel.Wrap;

namespace FeltNest.Drawing.Sheets;

/// <summary>The gap between two copies of an outline, in mm round the seam, with waists and tips marked.</summary>
internal static class WrapGapChart
{
    private static readonly Pen Level = new(0.3, Ink.Soft, 1.5, 1);

    /// <summary>The chart.</summary>
    /// <param name="wrap">What is drawn: the gap as cut, and after the cure where that differs.</param>
    /// <param name="first">Pen of the gap as cut.</param>
    /// <param name="second">Pen of the gap after the cure.</param>
    public static LineChart Of(PieceResult wrap, Pen first, Pen second)
    {
        SeamPlaces places = SeamPlaces.Of(wrap.AsCut.Edge);
        IReadOnlyList<double> round = places.RoundMm;

        static double[] Gaps(EdgeFreeWrap free) => [.. free.Gaps.Select(gap => gap ?? double.NaN)];
        bool shrinks = !ReferenceEquals(wrap.AsCut, wrap.AfterCure);
        return new LineChart
        {
            Title = "Gap between the two edges, mm (below 0: overlap)",
            XTitle = "mm round the seam from the waist, as cut",
            X = round,
            Series =
            [
                new ChartSeries("as cut", Gaps(wrap.AsCut), first, Level: true),
                .. shrinks ? [new ChartSeries("after cure", Gaps(wrap.AfterCure), second, Level: true)] : Array.Empty<ChartSeries>(),
                new ChartSeries("closed", [.. round.Select(_ => 0.0)], Level, Level: true),
            ],
            MarkX = null,
            Named = places.Named,
        };
    }
}
