using FeltNest.Ball.Rules;

namespace FeltNest.Ball.Tolerance;

/// <summary>Judges the spread of a ball's finished diameter and mass against its row of the rule table.</summary>
/// <remarks>To first order in the tolerances; the panel's area is that of the die and has none.</remarks>
internal static class ToleranceCheck
{
    /// <summary>Findings for finished diameter and mass; empty where the ball states no tolerances.</summary>
    public static IReadOnlyList<ToleranceFinding> Of(BallSpec ball, MassBudget mass, double panelAreaMm2)
    {
        if (ball.Tolerances is not { } off)
        {
            return [];
        }

        // g/m2 times mm2.
        const double perSquareMillimetre = 1e-6;
        double diameter = ball.Core.OuterDiameterMm;
        double film = Math.PI * diameter * perSquareMillimetre;
        double core = off.CoreDiameterMm ?? 0;
        RuleRow? row = RuleTable.Row(ball.RuleType);
        return
        [
            Judged(
                "finished diameter", ball.FinishedDiameterMm, "mm", row?.DiameterMm, core, 2 * (off.CementThicknessMm ?? 0),
                2 * off.FeltFinishedThicknessMm),
            Judged(
                "mass", mass.TotalG, "g", row?.MassG,
                off.CoreMassG,
                2 * film * ball.Cement.MassPerAreaGsm * core,
                film * diameter * off.CementMassPerAreaGsm,
                2 * panelAreaMm2 * perSquareMillimetre * off.FeltMassPerAreaGsm),
        ];
    }

    private static ToleranceFinding Judged(string quantity, double value, string unit, RuleLimits? limits, params double[] shares)
    {
        double worst = shares.Sum();
        double root = Math.Sqrt(shares.Sum(share => share * share));
        return new ToleranceFinding
        {
            Quantity = quantity,
            Value = value,
            Unit = unit,
            WorstCase = worst,
            RootSumSquare = root,
            WorstCaseVerdict = Both(limits, value, worst),
            RootSumSquareVerdict = Both(limits, value, root),
        };
    }

    // The worse of the two ends: a spread is within a rule only as a whole.
    private static RuleVerdict Both(RuleLimits? limits, double value, double spread)
    {
        if (limits is not { } rule)
        {
            return RuleVerdict.NotKnown;
        }

        RuleVerdict low = rule.Judge(value - spread);
        RuleVerdict high = rule.Judge(value + spread);
        return low is RuleVerdict.Within or RuleVerdict.WithinFromMemory ? high : low;
    }
}
