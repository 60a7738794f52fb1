using FeltNest.Cost.Compare.Findings;
using FeltNest.Layout;
using FeltNest.Layout.Scan;

namespace FeltNest.Cost.Compare;

/// <summary>Widths or offers side by side.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Rows">Answers in the order of the cases.</param>
/// <param name="Unanswered">Cases without a lay, with the reason.</param>
/// <param name="Sweep">Waste of parallel rows over the width, for the chart; empty where the rules are not those of parallel rows.</param>
/// <param name="Crossovers">Widths at which a die designed anew changes its number of rows; found for a scan alone.</param>
/// <param name="Die">The die whose drop widths are given: the kept one, or that of the best row; null where that has several bands.</param>
/// <param name="DropWidths">Least widths of its rows, fewest first.</param>
/// <param name="BreakEvens">Break-even prices of every two offers.</param>
/// <param name="Values">What a millimetre is worth on the best row.</param>
/// <param name="Flips">Values of single assumptions at which another row becomes the cheapest; empty without costs.</param>
/// <param name="Swings">What the figures with a stated range do to the best row, the widest first; empty where none has one.</param>
/// <param name="Gang">Dies and layers weighed on the best row; empty where the costs file names none.</param>
/// <param name="CutShort">True where cases are missing because the work was ended early.</param>
public sealed record Comparison(
    CompareQuestion Question, IReadOnlyList<CompareRow> Rows, IReadOnlyList<(string Name, string Reason)> Unanswered,
    IReadOnlyList<SweepPoint> Sweep, IReadOnlyList<Crossover> Crossovers,
    RollLayout? Die, IReadOnlyList<DropWidth> DropWidths, IReadOnlyList<BreakEven> BreakEvens, IReadOnlyList<LengthValue> Values,
    IReadOnlyList<RankFlip> Flips,
    IReadOnlyList<CostSwing> Swings, IReadOnlyList<GangChoice> Gang, bool CutShort)
{
    /// <summary>Rows, best first.</summary>
    public IReadOnlyList<CompareRow> Ranking => [.. Rows.OrderBy(r => r.Rank)];

    /// <summary>The best row.</summary>
    public CompareRow Best => Rows.First(r => r.Rank == 1);

    /// <summary>True where every row has a cost.</summary>
    public bool HasCosts => Rows.All(r => r.Sheet is not null);
}
