using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;

namespace FeltNest.Tests.Cost.Sheet;

/// <summary>An example made up for the arithmetic (own derivation, panel and prices invented): 34 panels of 6500 mm2 in 175 mm of a 1520 mm
/// roll of 50 m.</summary>
public static class ConstructedExample
{
    /// <summary>The lay: trims of 15 mm, panels over the whole usable width.</summary>
    public static LayPlan Plan { get; } = new(1520, 30, 0, 1, [new CutBand(175, 34, 34 * 6500, 1490, 1)]);

    /// <summary>300 mm lost at each end, 1.5 % faults, 0.5 % rejects.</summary>
    public static FeltLosses Losses { get; } = new(50, 300, 1.5, 0.5, 0, null);

    /// <summary>14.00 a metre.</summary>
    public static FeltPrice Price { get; } = new(14m, PriceUnit.Metre, "XTS");

    /// <summary>0.30 a kilogram of waste, 0.045 a strike, a die of 900 for 50,000 strikes, 35 to set up a batch of 50,000 balls.</summary>
    public static CostInputs Costs { get; } = CostInputs.Bare("XTS") with
    {
        Losses = Losses,
        RecoveryPerKg = 0.30m,
        PerStrike = 0.045m,
        Die = new DieCost(900, 50_000, 0, 0),
        SetUp = new SetUpCost(1, 35, 50),
    };
}
