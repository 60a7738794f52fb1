using CsCheck;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Scan;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Layout;

/// <summary>Random parts, widths, gaps and rules: every layout is verified again by the independent check.</summary>
public sealed class LayoutPropertyTests
{
    // Star-shaped outlines: radii at even angles, from nearly round to spiky.
    private static readonly Gen<Outline> Outlines =
        from corners in Gen.Int[3, 40]
        from least in Gen.Double[0.05, 1]
        from radii in Gen.Double[least, 1].Array[corners]
        from size in Gen.Double[5, 80]
        select Outline.From(radii.Select((r, i) => new Point2(size * r, 0).Turned(2 * Math.PI * i / corners))).Centred();

    private static readonly Gen<LayoutRequest> Requests =
        from outline in Outlines
        from share in Gen.Double[1.05, 8]
        from gap in Pick(0, 0.5, 4)
        from edge in Pick<double>(0, 15)
        from rows in Pick(RowRule.Same, RowRule.Alternate, RowRule.Any)
        from oneWay in Gen.Bool
        from warp in Pick<double?>(null, null, 0)
        let size = 2 * outline.Points.Max(p => p.Length)
        select Shapes.Request(outline, (share * size) + (2 * edge), gap, edge, rows, warp, oneWay);

    [Fact, Trait("tier", "long")]
    public void Every_layout_passes_the_independent_check_and_its_account_closes() => Requests.Sample(
        request =>
        {
            RollLayout layout = LayoutSearch.Run(request);
            CheckVerdict verdict = LayoutCheck.Verify(layout);
            Assert.Empty(verdict.Violations);
            Assert.True(verdict.LeastGapMm >= request.GapMm - 1e-6);
            YieldFigures yields = YieldAccount.Of(layout);
            WasteAccount account = yields.Account;
            Assert.Equal(
                100, account.GoodPanelsPercent + account.BetweenPanelsPercent + account.UnusedEdgePercent + account.EdgeTrimPercent, 1e-9);
            Assert.InRange(account.BetweenPanelsPercent, -1e-9, 100);
            Assert.InRange(account.UnusedEdgePercent, -1e-6, 100);
            Assert.True(yields.BallsPerMetre <= (yields.PanelsPerMetre / 2) + 1e-9);
        },
        iter: Runs.Count(24), threads: 1);

    // With FELTNEST_TEST_RUNS=100 these are the 2,000 of which tests/CHECKS.md gives the count.
    [Fact, Trait("tier", "long")]
    public void Outlines_of_every_kind_keep_gap_width_and_rules_in_the_independent_check()
    {
        for (int seed = 0; seed < Runs.Count(20); seed++)
        {
            LayoutRequest request = RandomRequests.Of(seed);
            CheckVerdict verdict = LayoutCheck.Verify(LayoutSearch.Run(request, null, TestContext.Current.CancellationToken));
            Assert.True(verdict.Passed, $"seed {seed}: {string.Join("; ", verdict.Violations)}");
            Assert.True(verdict.LeastGapMm >= request.GapMm - 1e-4, $"seed {seed}: gap {verdict.LeastGapMm}");
        }
    }

    [Fact, Trait("tier", "long")]
    public void Doubling_all_lengths_doubles_the_repeat() => Outlines.Sample(
        outline =>
        {
            double width = 7 * outline.Points.Max(p => p.Length);
            RollLayout small = LayoutSearch.Run(Shapes.Request(outline, width, gap: 1));
            RollLayout large = LayoutSearch.Run(Shapes.Request(Twice(outline), 2 * width, gap: 2));
            Assert.Equal(small.PanelsPerMetre, 2 * large.PanelsPerMetre, 1e-4 * small.PanelsPerMetre);
        },
        iter: Runs.Count(6), threads: 1);

    // A theorem for the best lattice; the two thousandths are for a lattice that is searched at tiny effort, not proved.
    [Fact, Trait("tier", "long")]
    public void A_plane_lattice_with_no_gap_is_never_lighter_than_parallel_rows_of_it() => Outlines.Sample(
        outline =>
        {
            LayoutRequest request = Shapes.Request(outline, 9 * outline.Points.Max(p => p.Length), oneWay: true);
            RollLayout layout = LayoutSearch.Run(request);
            RollLayout rows = new WidthScan(request).At(request.RollWidthMm)!;
            Assert.InRange(YieldAccount.Of(rows).UtilisationPercent, 0, layout.Search.PlaneUtilisationPercent * (1 + 2e-3));
        },
        iter: Runs.Count(10), threads: 1);

    private static Gen<T> Pick<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Outline Twice(Outline outline) => Outline.From(outline.Points.Select(p => p * 2));
}
