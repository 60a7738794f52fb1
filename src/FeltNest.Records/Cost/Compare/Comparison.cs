using FeltNest.Cost.Compare.Findings;
using FeltNest.Layout;
using FeltNest.Layout.Scan;

namespace FeltNest.Cost.Compare;

/// <summary>Widths or offers side by side.</summary>
public sealed record Comparison
{
    /// <summary>What was asked.</summary>
    public required CompareRequest Question { get; init; }

    /// <summary>Answers in the order of the cases.</summary>
    public required IReadOnlyList<CompareRow> Rows { get; init; }

    /// <summary>Cases without a lay, with the reason.</summary>
    public required IReadOnlyList<(string Name, string Reason)> Unanswered { get; init; }

    /// <summary>Waste of parallel rows over the width, for the chart; empty where the rules are not those of parallel rows.</summary>
    public required IReadOnlyList<SweepPoint> Sweep { get; init; }

    /// <summary>Widths at which a die designed anew changes its number of rows; found for a scan alone.</summary>
    public required IReadOnlyList<Crossover> Crossovers { get; init; }

    /// <summary>The die whose drop widths are given: the kept one, or that of the best row; null where that has several
    /// bands.</summary>
    public required RollLayout? Die { get; init; }

    /// <summary>Least widths of its rows, fewest first.</summary>
    public required IReadOnlyList<DropWidth> DropWidths { get; init; }

    /// <summary>Break-even prices of every two offers.</summary>
    public required IReadOnlyList<BreakEven> BreakEvens { get; init; }

    /// <summary>What a millimetre is worth on the best row.</summary>
    public required IReadOnlyList<LengthValue> Values { get; init; }

    /// <summary>Values of single assumptions at which another row becomes the cheapest; empty without costs.</summary>
    public required IReadOnlyList<RankFlip> Flips { get; init; }

    /// <summary>What the figures with a stated range do to the best row, the widest first; empty where none has one.</summary>
    public required IReadOnlyList<CostSwing> Swings { get; init; }

    /// <summary>Dies and layers weighed on the best row; empty where the costs file names none.</summary>
    public required IReadOnlyList<GangChoice> Gang { get; init; }

    /// <summary>What all figures that may be off make of the costs together; null where none has a range or a price is missing.</summary>
    public required CostOutlook? Outlook { get; init; }

    /// <summary>What money could be spent on, the best first; empty where the balls of a year or a price are not known.</summary>
    public required IReadOnlyList<YearChoice> Years { get; init; }

    /// <summary>True where cases are missing because the work was ended early.</summary>
    public required bool CutShort { get; init; }

    /// <summary>Rows, best first.</summary>
    public IReadOnlyList<CompareRow> Ranking => [.. Rows.OrderBy(r => r.Rank)];

    /// <summary>The best row.</summary>
    public CompareRow Best => Rows.First(r => r.Rank == 1);

    /// <summary>True where every row has a cost.</summary>
    public bool HasCosts => Rows.All(r => r.Sheet is not null);
}
