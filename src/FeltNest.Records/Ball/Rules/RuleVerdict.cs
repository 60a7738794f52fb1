namespace FeltNest.Ball.Rules;

/// <summary>What a ball is found to be against one limit of the rules. A limit known from memory alone never gives a bare pass or a bare
/// fail.</summary>
internal enum RuleVerdict
{
    /// <summary>Within the limits.</summary>
    Within,

    /// <summary>Within limits that are only known from memory.</summary>
    WithinFromMemory,

    /// <summary>Outside the limits.</summary>
    Outside,

    /// <summary>Outside limits that are only known from memory.</summary>
    OutsideFromMemory,

    /// <summary>No rule is asked for, or this program does not compute the quantity.</summary>
    NotKnown,
}
