using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>The figures of the costs file, in its order.</summary>
internal static class CostFigures
{
    // Looked through where no range is given: shares up to 20 %, ends up to 2 m, money up to ten times what it is.
    private const double MostPercent = 20;
    private const double MostEndMm = 2000;
    private const double MostTimes = 10;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<CostFigure> Of(CostInputs costs) =>
    [
        .. Rates(costs), .. OfFelt(), .. OfWork(),
    ];

    private static IEnumerable<CostFigure> Rates(CostInputs costs) =>
        costs.Rates.Select((rate, i) => new CostFigure
        {
            Field = $"rates[{i}].rate",
            Words = $"{costs.Currency} for one {rate.Currency}",
            Get = c => (double)c.Rates[i].Rate,
            With = (c, v) => c with { Rates = [.. c.Rates.Select((r, k) => k == i ? r with { Rate = (decimal)v } : r)] },
            UsualMost = Times,
        });

    private static CostFigure[] OfFelt() =>
    [
        Loss("roll.lengthM", "length of a roll, m", l => l.RollLengthM, (l, v) => l with { RollLengthM = v }),
        Loss("roll.endLossMm", "length lost at each roll end, mm", l => l.EndLossMm, (l, v) => l with { EndLossMm = v }, MostEndMm),
        Loss("roll.faultPercent", "faults, %", l => l.FaultPercent, (l, v) => l with { FaultPercent = v }),
        Loss("roll.rejectPercent", "rejects, %", l => l.RejectPercent, (l, v) => l with { RejectPercent = v }, MostPercent),
        Loss("roll.unpairedPercent", "panels without a partner, %", l => l.UnpairedPercent, (l, v) => l with { UnpairedPercent = v }),
        Money("felt.price", "price of the felt", c => c.Felt?.Amount, (c, v) => c with { Felt = c.Felt! with { Amount = v } }),
        new()
        {
            Field = "felt.massPerAreaGsm",
            Words = "mass of the felt, g/m2",
            Get = c => c.MassPerAreaGsm,
            With = (c, v) => c with { MassPerAreaGsm = v },
        },
    ];

    private static CostFigure[] OfWork() =>
    [
        Money("recovery.pricePerKg", "price of a kilogram of waste", c => c.RecoveryPerKg, (c, v) => c with { RecoveryPerKg = v }, Times),
        Money("strike.price", "labour and machine of a strike", c => c.PerStrike, (c, v) => c with { PerStrike = v }, Times),
        Money("strike.boardPrice", "board of a strike", c => c.BoardPerStrike, (c, v) => c with { BoardPerStrike = v }),
        Money("die.price", "price of the die", c => c.Die?.Price, (c, v) => c with { Die = c.Die! with { Price = v } }, Times),
        Money(
            "die.lifeStrikes", "strikes in a die's life", c => c.Die?.LifeStrikes,
            (c, v) => c with { Die = c.Die! with { LifeStrikes = (int)Math.Max(1, Math.Round(v)) } }),
        Money(
            "die.reRulePrice", "price of a new rule", c => c.Die?.ReRulePrice, (c, v) => c with { Die = c.Die! with { ReRulePrice = v } }),
        Money("setUp.hours", "hours of a set-up", c => c.SetUp?.Hours, (c, v) => c with { SetUp = c.SetUp! with { Hours = v } }),
        Money(
            "setUp.ratePerHour", "money for an hour of set-up", c => c.SetUp?.RatePerHour,
            (c, v) => c with { SetUp = c.SetUp! with { RatePerHour = v } }),
        Money(
            "setUp.batchThousandBalls", "thousand balls of a batch", c => c.SetUp?.BatchThousandBalls,
            (c, v) => c with { SetUp = c.SetUp! with { BatchThousandBalls = v } }),
        Money(
            "handlingPerThousandBalls", "handling of a thousand balls", c => c.HandlingPerThousandBalls,
            (c, v) => c with { HandlingPerThousandBalls = v }),
        Money(
            "interestPercent", "interest a year, %", c => c.InterestPercent, (c, v) => c with { InterestPercent = v }),
        Money(
            "surplusWorthPercent", "worth of felt left over, %", c => c.SurplusWorthPercent, (c, v) => c with { SurplusWorthPercent = v }),
        Money(
            "coating.pricePerM2", "coating and cement of a square metre", c => c.CoatingPerSquareMetre,
            (c, v) => c with { CoatingPerSquareMetre = v }),
        Money("overheadPercent", "overhead, %", c => c.OverheadPercent, (c, v) => c with { OverheadPercent = v }),
    ];

    private static double Times(double now) => MostTimes * now;

    private static CostFigure Loss(
        string field, string words, Func<FeltLosses, double?> get, Func<FeltLosses, double, FeltLosses> with, double? most = null) =>
        new()
        {
            Field = field,
            Words = words,
            Get = c => get(c.Losses),
            With = (c, v) => c with { Losses = with(c.Losses, v) },
            UsualMost = most is { } usual ? _ => usual : null,
        };

    private static CostFigure Money(
        string field, string words, Func<CostInputs, decimal?> get, Func<CostInputs, decimal, CostInputs> with,
        Func<double, double>? most = null) =>
        new()
        {
            Field = field,
            Words = words,
            Get = c => (double?)get(c),
            With = (c, v) => with(c, (decimal)v),
            UsualMost = most,
        };
}
