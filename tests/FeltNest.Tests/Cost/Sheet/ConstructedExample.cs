using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;

namespace FeltNest.Tests.Cost.Sheet;

/// <summary>An example made up for the arithmetic (own derivation, panel and prices invented): 34 panels of 6500 mm2 in 175 mm of a 1520 mm
/// roll of 50 m.</summary>
internal static class ConstructedExample
{
    /// <summary>The lay: trims of 15 mm, panels over the whole usable width.</summary>
    public static LayPlan Plan { get; } = new()
    {
        RollWidthMm = 1520,
        TrimMm = 30,
        UnusedEdgeMm = 0,
        Plies = 1,
        Bands = [new CutBand
        {
            RepeatMm = 175,
            Panels = 34,
            PanelAreaMm2 = 34 * 6500,
            HeightMm = 1490,
            StrikesPerRepeat = 1,
        }],
    };

    /// <summary>300 mm lost at each end, 1.5 % faults, 0.5 % rejects.</summary>
    public static FeltLosses Losses { get; } = new()
    {
        RollLengthM = 50,
        EndLossMm = 300,
        FaultPercent = 1.5,
        RejectPercent = 0.5,
        UnpairedPercent = 0,
        MostPanelsPerStrike = null,
    };

    /// <summary>14.00 a metre.</summary>
    public static FeltPrice Price { get; } = new(14m, PriceUnit.Metre, "XTS");

    /// <summary>0.30 a kilogram of waste, 0.045 a strike, a die of 900 for 50,000 strikes, 35 to set up a batch of 50,000 balls.</summary>
    public static CostInputs Costs { get; } = CostInputs.Bare("XTS") with
    {
        Losses = Losses,
        RecoveryPerKg = 0.30m,
        PerStrike = 0.045m,
        Die = new DieCost { Price = 900, LifeStrikes = 50_000, ReRules = 0, ReRulePrice = 0 },
        SetUp = new SetUpCost { Hours = 1, RatePerHour = 35, BatchThousandBalls = 50 },
    };
}
