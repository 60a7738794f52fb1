using FeltNest.Yield;

namespace FeltNest.Cost.Sheet;

/// <summary>Felt bought against felt on balls, over one roll.</summary>
public sealed record FeltAccount
{
    /// <summary>Length of roll the account is made for, m; null where the roll has no stated length.</summary>
    public required double? RollLengthM { get; init; }

    /// <summary>Repeats cut from the roll, of the first band; null without a stated length.</summary>
    public required double? Repeats { get; init; }

    /// <summary>Length left over behind the first band, mm.</summary>
    public required double RemnantMm { get; init; }

    /// <summary>Panels cut from the roll.</summary>
    public required double PanelsCut { get; init; }

    /// <summary>Panels that pair to balls.</summary>
    public required double PanelsGood { get; init; }

    /// <summary>Felt bought per thousand good balls.</summary>
    public required FeltUsage PerThousandBalls { get; init; }

    /// <summary>Felt in the panels of a thousand balls, m2.</summary>
    public required double NetSquareMetres { get; init; }

    /// <summary>Strikes per thousand good balls.</summary>
    public required double StrikesPerThousandBalls { get; init; }

    /// <summary>Panels one strike gives, all layers.</summary>
    public required double PanelsPerStrike { get; init; }

    /// <summary>Where every per cent goes.</summary>
    public required FeltShares Shares { get; init; }

    /// <summary>Layers that one strike cuts.</summary>
    public int Plies { get; init; } = 1;

    /// <summary>Panels of one layer that a strike cuts: the cavities of the die, or their mean where a lay has several dies.</summary>
    public double Cavities => PanelsPerStrike / Plies;

    /// <summary>Balls from the roll.</summary>
    public double Balls => PanelsGood / 2;

    /// <summary>Share of the panels cut that end on a ball.</summary>
    public double GoodShare => PanelsGood / PanelsCut;
}
