using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Scan;

namespace FeltNest.Cost.Priced;

/// <summary>Lays one part over many widths, by search or from one set of tables, each lay checked.</summary>
internal sealed class WidthLays
{
    private readonly LayoutRequest request;
    private readonly WidthScan? scan;
    private readonly LayoutFrontSource search;

    /// <summary>Prepares the work.</summary>
    /// <param name="request">Part, gap and rules; for a scan its width is the widest that will be asked for.</param>
    /// <param name="scanned">True for parallel rows from one set of tables.</param>
    /// <param name="search">Gives the layouts of a width where no scan does.</param>
    /// <exception cref="InputException">A rule that parallel rows do not keep.</exception>
    /// <exception cref="NoAnswerException">The part fits the widest roll at no allowed tilt.</exception>
    public WidthLays(LayoutRequest request, bool scanned, LayoutFrontSource search)
    {
        this.request = request;
        this.search = search;
        if (scanned && NotKept(request) is { } rule)
        {
            throw new InputException(
                rule,
                "is not kept by the scan of a range of widths, which lays parallel rows: list the widths, and each is searched by all "
                    + "ways");
        }

        scan = scanned ? new WidthScan(request) : null;
    }

    /// <summary>The rule that parallel rows from one set of tables do not keep, or null.</summary>
    public static AskedFor? NotKept(LayoutRequest request) => request.Rules switch
    {
        { Rows: not RowRule.Same } => AskedFor.Rows,
        { Bands: > 1 } => AskedFor.Bands,
        { Forbidden.Count: > 0 } => AskedFor.ForbiddenStripes,
        { Die: { } die } => die.MostPanels is null ? AskedFor.DieBed : AskedFor.DiePanels,
        { LeastRepeatMm: > 0 } => AskedFor.LeastRepeat,
        _ => null,
    };

    /// <summary>The lays on a width.</summary>
    /// <exception cref="NoAnswerException">The part does not fit.</exception>
    public LayFront On(double widthMm, EdgeTrims trims, CancellationToken stop)
    {
        LayoutRequest here = request with { RollWidthMm = widthMm, Trims = trims };
        if (scan is null)
        {
            return new LayFront(search(here, stop));
        }

        // The search says in its own words why a part does not fit, and takes over where a scanned lay fails the check.
        IReadOnlyList<RollLayout> scanned = scan.Front(widthMm);
        if (scanned.Count == 0 || !LayoutCheck.Verify(scanned[0]).Passed)
        {
            return new LayFront(search(here, stop));
        }

        double least = scanned[0].PanelsPerMetre / (1 + LayFront.MostMoreFelt);
        return new LayFront(
        [
            scanned[0], .. scanned.Skip(1).Where(lay => lay.PanelsPerMetre >= least && LayoutCheck.Verify(lay).Passed),
        ]);
    }

    /// <summary>Widths between which the best number of parallel rows changes.</summary>
    public IReadOnlyList<Crossover> Crossovers(IReadOnlyList<(double WidthMm, int Rows)> scanned) => scan?.Crossovers(scanned) ?? [];
}
