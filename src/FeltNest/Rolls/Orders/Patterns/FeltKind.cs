namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Rolls that are alike, counted together.</summary>
internal sealed record FeltKind
{
    /// <summary>Place in the list of kinds.</summary>
    public required int Index { get; init; }

    /// <summary>The rolls; of an offer those that may be bought.</summary>
    public required IReadOnlyList<StockRoll> Rolls { get; init; }

    /// <summary>Place of its felt and lot in the list of lots.</summary>
    public required int Lot { get; init; }

    /// <summary>Felt between its two ends, m.</summary>
    public required double ClearM { get; init; }

    /// <summary>Most felt that can be cut so that what remains goes back to stock, m; below 0 where nothing can.</summary>
    public required double KeepingM { get; init; }

    /// <summary>Cost of beginning a roll of which something goes back to stock, before what is cut.</summary>
    public required double BeginCost { get; init; }

    /// <summary>Cost of each metre that is cut where the rest goes back to stock.</summary>
    public required double MetreCost { get; init; }

    /// <summary>Cost of a roll of which nothing goes back.</summary>
    public required double WholeCost { get; init; }

    /// <summary>Dies that cut it, by their place in the question, with the share of good panels.</summary>
    public required IReadOnlyList<(int Die, double Share)> Dies { get; init; }

    /// <summary>First day on which it can be cut.</summary>
    public required DateOnly There { get; init; }

    /// <summary>What any of its rolls is.</summary>
    public StockRoll Roll => Rolls[0];
}
