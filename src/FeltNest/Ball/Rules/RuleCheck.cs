namespace FeltNest.Ball.Rules;

/// <summary>Judges a ball against its row of the rule table.</summary>
internal static class RuleCheck
{
    /// <summary>Findings for finished diameter, mass and rebound; all not known where no rule is asked for. Rebound is not computed, so it
    /// is never judged.</summary>
    public static IReadOnlyList<RuleFinding> Of(BallSpec ball, MassBudget mass)
    {
        RuleRow? row = RuleTable.Row(ball.RuleType);
        return
        [
            Judged("finished diameter", ball.FinishedDiameterMm, "mm", row?.DiameterMm),
            Judged("mass", mass.TotalG, "g", row?.MassG),
            new RuleFinding("rebound from 254 cm", null, "cm", row?.ReboundCm, RuleVerdict.NotKnown),
        ];
    }

    private static RuleFinding Judged(string quantity, double value, string unit, RuleLimits? limits) =>
        new(quantity, value, unit, limits, limits?.Judge(value) ?? RuleVerdict.NotKnown);
}
