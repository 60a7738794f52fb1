using FeltNest.Ball.Rules;

namespace FeltNest.Ball.Tolerance;

/// <summary>One quantity of a ball with its spread against the rules.</summary>
internal sealed record ToleranceFinding
{
    /// <summary>What is judged.</summary>
    public required string Quantity { get; init; }

    /// <summary>Value without tolerances.</summary>
    public required double Value { get; init; }

    /// <summary>Unit of all numbers.</summary>
    public required string Unit { get; init; }

    /// <summary>Plus-minus when every part is off the same way by all of its tolerance.</summary>
    public required double WorstCase { get; init; }

    /// <summary>Plus-minus when the parts are off independently of each other.</summary>
    public required double RootSumSquare { get; init; }

    /// <summary>Both ends of the worst case against the rule.</summary>
    public required RuleVerdict WorstCaseVerdict { get; init; }

    /// <summary>Both ends of the root sum square against the rule.</summary>
    public required RuleVerdict RootSumSquareVerdict { get; init; }
}
