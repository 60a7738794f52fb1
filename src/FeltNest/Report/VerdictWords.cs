using System.Globalization;
using FeltNest.Ball.Rules;

namespace FeltNest.Report;

/// <summary>Findings against the rule table in words.</summary>
internal static class VerdictWords
{
    /// <summary>The verdict in words; never a bare pass or fail on limits from memory.</summary>
    public static string Of(RuleVerdict verdict) => verdict switch
    {
        RuleVerdict.Within => "within",
        RuleVerdict.WithinFromMemory => "within (from memory: check the current rule book)",
        RuleVerdict.Outside => "outside",
        RuleVerdict.OutsideFromMemory => "outside (from memory: check the current rule book)",
        _ => "not known",
    };

    /// <summary>The verdict with its limits.</summary>
    public static string WithLimits(RuleFinding finding) => finding.Limits is { } limits
        ? string.Create(CultureInfo.InvariantCulture, $"{Of(finding.Verdict)}; rule {limits.Low:0.0#} to {limits.High:0.0#} {finding.Unit}")
        : $"{Of(finding.Verdict)}; no rule asked for";
}
