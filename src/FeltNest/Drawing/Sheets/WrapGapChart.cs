using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Parts;
using FeltNest.Panel.Wrap;
using FeltNest.Seam;

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
        IReadOnlyList<SpherePoint> edge = wrap.AsCut.Edge;
        int n = edge.Count;
        double[] round = new double[n];
        for (int i = 1; i < n; i++)
        {
            round[i] = round[i - 1] + (edge[i] - edge[i - 1]).Length;
        }

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
            Named =
            [
                ("waist", 0),
                ("tip", round[Lowest(edge, 0, n / 2)]),
                ("waist", round[Highest(edge, n / 4, 3 * n / 4)]),
                ("tip", round[Lowest(edge, n / 2, n)]),
            ],
        };
    }

    // The pole lies on +z: tips are the places farthest from it, waists the nearest.
    private static int Lowest(IReadOnlyList<SpherePoint> edge, int from, int to) =>
        Enumerable.Range(from, to - from).MinBy(i => edge[i].Z);

    private static int Highest(IReadOnlyList<SpherePoint> edge, int from, int to) =>
        Enumerable.Range(from, to - from).MaxBy(i => edge[i].Z);
}
