using FeltNest.Cost.Sheet;
using FeltNest.Layout;
using FeltNest.Yield;

namespace FeltNest.Cost.Compare;

/// <summary>One width or offer with its answer.</summary>
/// <param name="Case">The question.</param>
/// <param name="Rank">Its place, 1 the best: by cost where every row has one, else by square metres.</param>
/// <param name="Layout">The lay.</param>
/// <param name="Yield">Yield of the lay alone.</param>
/// <param name="Account">The felt over a whole roll.</param>
/// <param name="Sheet">The cost sheet, or null where no price is known.</param>
/// <param name="Nominal">The same felt where it comes as wide as its name says, or null where that is the planned width.</param>
/// <param name="Kept">The die that is kept on this width, or null where none is kept or no row of it fits.</param>
public sealed record CompareRow(
    CompareCase Case, int Rank, RollLayout Layout, YieldFigures Yield, FeltAccount Account, CostSheet? Sheet, NominalWidth? Nominal,
    KeptDieRow? Kept)
{
    /// <summary>What dies beyond the first save, or null where one die cuts the lay.</summary>
    public SecondDie? Further { get; init; }

    /// <summary>What a thousand balls cost, or null.</summary>
    public decimal? Total => Sheet?.Total;

    /// <summary>Rows across the width, where the lay is of one repeat.</summary>
    public int Rows => Layout.Bands[0].Repeat.Panels.Select(p => Math.Round(p.YMm, 6)).Distinct().Count();
}
