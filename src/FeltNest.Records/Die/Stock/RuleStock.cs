namespace FeltNest.Die.Stock;

/// <summary>How the pieces of rule of all dies ordered are cut from lengths of stock.</summary>
public sealed record RuleStock
{
    /// <summary>Length of one piece of stock, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Lost at each cut, mm.</summary>
    public required double CutLossMm { get; init; }

    /// <summary>The cuts, each so many times.</summary>
    public required IReadOnlyList<StockCut> Cuts { get; init; }

    /// <summary>Fewest lengths of stock that any plan can take.</summary>
    public required int Bound { get; init; }

    /// <summary>Lengths of stock that are taken.</summary>
    public int Lengths => Cuts.Sum(c => c.Times);

    /// <summary>Whether no plan takes fewer.</summary>
    public bool Proved => Lengths == Bound;

    /// <summary>Length left over of all, mm.</summary>
    public double OffcutMm => Cuts.Sum(c => c.Times * c.OffcutMm);
}
