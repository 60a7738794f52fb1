namespace FeltNest.Ball.Rules;

/// <summary>One row of the rule table.</summary>
/// <param name="Type">Ball type.</param>
/// <param name="MassG">Mass, g.</param>
/// <param name="DiameterMm">Diameter of the finished ball, mm.</param>
/// <param name="ReboundCm">Rebound from 254 cm, cm.</param>
/// <param name="Source">Where the row was read.</param>
public sealed record RuleRow(RuleType Type, RuleLimits MassG, RuleLimits DiameterMm, RuleLimits ReboundCm, string Source);
