using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using FeltNest.Panel.Budget;

namespace FeltNest.Files.Panels;

/// <summary>Columns of <c>gap-budget.csv</c>: a line a place round the seam, for each state of the felt.</summary>
internal static class GapBudgetListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("gap-budget.csv")
        .Text(new WordField("state", ["at fitting", "after cure"], "state of the felt"), l => l.State)
        .Number(new NumberField("s", "seam parameter on panel A, radians from its waist"), l => l.Station.S)
        .Number(new NumberField("alongMm", "way round the seam from the waist"), l => l.Station.AlongMm)
        .Number(new NumberField("gapMm", "gap with nothing off; below 0 an overlap"), l => l.Station.GapMm)
        .Number(new NumberField("worstLeastMm", "least gap in the worst case"), l => l.Station.WorstLeastMm)
        .Number(new NumberField("worstMostMm", "greatest gap in the worst case"), l => l.Station.WorstMostMm)
        .Number(new NumberField("rootSumSquareMm", "plus-minus by the root sum square"), l => l.Station.RootSumSquareMm)
        .Number(
            new NumberField("withinPercent", 0, 100, "balls within the adhesive's range here; empty without one"),
            l => l.Station.WithinPercent);

    /// <summary>A place in a state of the felt.</summary>
    internal readonly record struct Line(string State, GapStation Station);
}
