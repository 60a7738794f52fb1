using System.Globalization;
using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Files.Balls;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Panel;

namespace FeltNest.Benchmarks;

/// <summary>The table of forty cases: what each way of laying reaches on two panels, four gaps and five widths, as lines of
/// Markdown.</summary>
internal static class LayoutTable
{
    private const double Edge = 15;

    private static readonly double[] Waists = [26, 23];
    private static readonly double[] Gaps = [1, 2, 3, 4];
    private static readonly double[] Widths = [600, 900, 1200, 1500, 1800];

    public static void Print(string ballFile)
    {
        BallSpec ball = BallReader.Read(ballFile).Ball;
        Console.WriteLine("| panel, mm | gap | width | rows | rows of any kind, one die | free search | two dies | plane | bound |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|");
        foreach (double waist in Waists)
        {
            BallSpec other = ball with { Seam = ball.Seam with { WaistMm = waist } };
            FlatPanel panel = PanelFlattener.Flatten(other);
            LayoutPart part = CoverPart.Of(other, panel);
            foreach ((double gap, double width) in from gap in Gaps from width in Widths select (gap, width))
            {
                SearchRecord search = LayoutSearch.Run(
                    new LayoutRequest
                    {
                        Part = part,
                        RollWidthMm = width,
                        Trims = EdgeTrims.Both(Edge),
                        GapMm = gap,
                        Rules = new LayoutRules(null, 0, RowRule.Any, false) { Bands = 2 },
                        Effort = 5,
                        Seed = 1,
                    }).Search;
                double share = part.AreaMm2 / width / 10;
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {panel.LengthMm:0.0} x {panel.WidthMm:0.0} | {gap} | {width} | {Best(search, "parallel rows")} | "
                        + $"{Best(search, "rows of", "bands laid", "rows at")} | {Best(search, "free")} | {Best(search, "2 bands")} | "
                        + $"{search.PlaneUtilisationPercent:0.00} | {search.UpperBoundPercent:0.00} |"));

                string Best(SearchRecord record, params string[] words) =>
                    record.Methods.Where(m => words.Any(w => m.Method.StartsWith(w, StringComparison.Ordinal)))
                    .Select(m => m.PanelsPerMetre * share).DefaultIfEmpty(double.NaN).Max() is var most && double.IsNaN(most)
                        ? "-"
                        : most.ToString("0.00", CultureInfo.InvariantCulture);
            }
        }
    }
}
