namespace FeltNest.Ball.Rules;

/// <summary>Limits of one measured quantity in one row of the rule table.</summary>
internal readonly record struct RuleLimits
{
    /// <summary>Least value the rule allows.</summary>
    public required double Low { get; init; }

    /// <summary>Greatest value.</summary>
    public required double High { get; init; }

    /// <summary>How well the two are known.</summary>
    public required RuleMark Mark { get; init; }

    /// <summary>What a value is found to be against these limits.</summary>
    public RuleVerdict Judge(double value) => (value >= Low && value <= High, Mark) switch
    {
        (true, RuleMark.Quoted) => RuleVerdict.Within,
        (true, _) => RuleVerdict.WithinFromMemory,
        (false, RuleMark.Quoted) => RuleVerdict.Outside,
        _ => RuleVerdict.OutsideFromMemory,
    };
}
