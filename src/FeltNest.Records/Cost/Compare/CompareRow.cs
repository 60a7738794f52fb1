using FeltNest.Cost.Sheet;
using FeltNest.Layout;
using FeltNest.Yield;

namespace FeltNest.Cost.Compare;

/// <summary>One width or offer with its answer.</summary>
public sealed record CompareRow
{
    /// <summary>The question.</summary>
    public required CompareCase Case { get; init; }

    /// <summary>Its place, 1 the best: by cost where every row has one, else by square metres.</summary>
    public required int Rank { get; init; }

    /// <summary>The lay that is taken: where costs are known, the one that costs least of <see cref="Front"/>.</summary>
    public required RollLayout Layout { get; init; }

    /// <summary>Most panels of one layer a strike of it cuts, or null for one repeat.</summary>
    public required int? MostPanels { get; init; }

    /// <summary>Yield of the lay alone.</summary>
    public required YieldFigures Yield { get; init; }

    /// <summary>The felt over a whole roll.</summary>
    public required FeltAccount Account { get; init; }

    /// <summary>The cost sheet, or null where no price is known.</summary>
    public required CostSheet? Sheet { get; init; }

    /// <summary>The ways to cut this felt of which none is better in felt, strikes and cavities together, least felt first; one where no
    /// price is known.</summary>
    public required IReadOnlyList<LayChoice> Front { get; init; }

    /// <summary>The layout with least felt, cut with as many repeats a strike as are allowed.</summary>
    public required LayChoice LeastFelt { get; init; }

    /// <summary>True where the way that is taken is not the one with least felt, as it costs less.</summary>
    public bool CostsLessThanLeastFelt => Sheet is not null && LeastFelt.Sheet!.Total > Sheet.Total;

    /// <summary>The same felt where it comes as wide as its name says, or null where that is the planned width.</summary>
    public required NominalWidth? Nominal { get; init; }

    /// <summary>The die that is kept on this width, or null where none is kept or no row of it fits.</summary>
    public required KeptDieRow? Kept { get; init; }

    /// <summary>What dies beyond the first save, or null where one die cuts the lay.</summary>
    public SecondDie? Further { get; init; }

    /// <summary>What a thousand balls cost, or null.</summary>
    public decimal? Total => Sheet?.Total;

    /// <summary>Rows across the width, where the lay is of one repeat.</summary>
    public int Rows => Layout.Bands[0].Repeat.Panels.Select(p => Math.Round(p.YMm, 6)).Distinct().Count();
}
