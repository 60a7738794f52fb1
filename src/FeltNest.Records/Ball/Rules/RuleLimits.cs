namespace FeltNest.Ball.Rules;

/// <summary>Limits of one measured quantity in one row of the rule table.</summary>
/// <param name="Low">Least value the rule allows.</param>
/// <param name="High">Greatest value.</param>
/// <param name="Mark">How well the two are known.</param>
public readonly record struct RuleLimits(double Low, double High, RuleMark Mark)
{
    /// <summary>What a value is found to be against these limits.</summary>
    public RuleVerdict Judge(double value) => (value >= Low && value <= High, Mark) switch
    {
        (true, RuleMark.Quoted) => RuleVerdict.Within,
        (true, _) => RuleVerdict.WithinFromMemory,
        (false, RuleMark.Quoted) => RuleVerdict.Outside,
        _ => RuleVerdict.OutsideFromMemory,
    };
}
