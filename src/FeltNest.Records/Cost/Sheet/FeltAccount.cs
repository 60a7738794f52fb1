using FeltNest.Yield;

namespace FeltNest.Cost.Sheet;

/// <summary>Felt bought against felt on balls, over one roll.</summary>
/// <param name="RollLengthM">Length of roll the account is made for, m; null where the roll has no stated length.</param>
/// <param name="Repeats">Repeats cut from the roll, of the first band; null without a stated length.</param>
/// <param name="RemnantMm">Length left over behind the first band, mm.</param>
/// <param name="PanelsCut">Panels cut from the roll.</param>
/// <param name="PanelsGood">Panels that pair to balls.</param>
/// <param name="PerThousandBalls">Felt bought per thousand good balls.</param>
/// <param name="NetSquareMetres">Felt in the panels of a thousand balls, m2.</param>
/// <param name="StrikesPerThousandBalls">Strikes per thousand good balls.</param>
/// <param name="PanelsPerStrike">Panels one strike gives, all layers.</param>
/// <param name="Shares">Where every per cent goes.</param>
public sealed record FeltAccount(
    double? RollLengthM, double? Repeats, double RemnantMm, double PanelsCut, double PanelsGood, FeltUsage PerThousandBalls,
    double NetSquareMetres, double StrikesPerThousandBalls,
    double PanelsPerStrike, FeltShares Shares)
{
    /// <summary>Layers that one strike cuts.</summary>
    public int Plies { get; init; } = 1;

    /// <summary>Panels of one layer that a strike cuts: the cavities of the die, or their mean where a lay has several dies.</summary>
    public double Cavities => PanelsPerStrike / Plies;

    /// <summary>Balls from the roll.</summary>
    public double Balls => PanelsGood / 2;

    /// <summary>Share of the panels cut that end on a ball.</summary>
    public double GoodShare => PanelsGood / PanelsCut;
}
