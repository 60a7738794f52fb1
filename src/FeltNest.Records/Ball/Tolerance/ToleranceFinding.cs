using FeltNest.Ball.Rules;

namespace FeltNest.Ball.Tolerance;

/// <summary>One quantity of a ball with its spread against the rules.</summary>
/// <param name="Quantity">What is judged.</param>
/// <param name="Value">Value without tolerances.</param>
/// <param name="Unit">Unit of all numbers.</param>
/// <param name="WorstCase">Plus-minus when every part is off the same way by all of its tolerance.</param>
/// <param name="RootSumSquare">Plus-minus when the parts are off independently of each other.</param>
/// <param name="WorstCaseVerdict">Both ends of the worst case against the rule.</param>
/// <param name="RootSumSquareVerdict">Both ends of the root sum square against the rule.</param>
public sealed record ToleranceFinding(
    string Quantity, double Value, string Unit, double WorstCase, double RootSumSquare, RuleVerdict WorstCaseVerdict,
    RuleVerdict RootSumSquareVerdict);
