namespace FeltNest.Ball.Rules;

/// <summary>One row of the rule table.</summary>
internal sealed record RuleRow
{
    /// <summary>Ball type.</summary>
    public required RuleType Type { get; init; }

    /// <summary>Mass, g.</summary>
    public required RuleLimits MassG { get; init; }

    /// <summary>Diameter of the finished ball, mm.</summary>
    public required RuleLimits DiameterMm { get; init; }

    /// <summary>Rebound from 254 cm, cm.</summary>
    public required RuleLimits ReboundCm { get; init; }

    /// <summary>Where the row was read.</summary>
    public required string Source { get; init; }
}
