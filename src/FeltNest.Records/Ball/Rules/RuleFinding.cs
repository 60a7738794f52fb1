namespace FeltNest.Ball.Rules;

/// <summary>One quantity of a ball against the rules.</summary>
/// <param name="Quantity">What is judged.</param>
/// <param name="Value">Computed value, or null where the program computes none.</param>
/// <param name="Unit">Unit of value and limits.</param>
/// <param name="Limits">Limits of the row, or null where no rule is asked for.</param>
/// <param name="Verdict">What was found.</param>
internal sealed record RuleFinding(string Quantity, double? Value, string Unit, RuleLimits? Limits, RuleVerdict Verdict);
