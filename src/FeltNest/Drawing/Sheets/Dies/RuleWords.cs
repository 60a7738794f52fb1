using FeltNest.Die;
using FeltNest.Die.Bend;
using FeltNest.Die.Order;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>What the rule sheets say of lengths, bends and springback.</summary>
internal static class RuleWords
{
    /// <summary>Cautions of whoever cuts, bends and sets rule.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "Cautions: local codes, the makers of rule, bender and cutter, and qualified people come first; no risk assessment.",
        "Rule has an edge from the coil on: gloves, edge covered, eyes protected. Coiled rule springs open: hold it before the tie is cut.",
        "Fingers clear of bender and shear; lock out before a jam is cleared. Make a trial ring of card and rule before the rest is cut.",
    ];

    /// <summary>Name of a piece: letter of its part and its number.</summary>
    public static string Name(DieDesign design, RuleStrip strip) => Invariant($"{design.Letter(strip.Part)}{strip.Number}");

    /// <summary>Where a bend keeps its length.</summary>
    public static string Neutral(DieRule rule) => rule.NeutralShare is { } share
        ? Invariant($"angle x (inside radius + {share:0.###} x thickness), the shop's own share")
        : "angle x (inside radius + K x thickness): K 0.33 below 2 x thickness, 0.50 above (Groover)";

    /// <summary>What is known of springback.</summary>
    public static string Known(Springback? springback) => springback is null
        ? "UNKNOWN: no test bends were given"
        : Invariant(
            $"{springback.Tests.Count} test bends, Y/E {springback.YieldOverModulus:0.00000}, scatter {springback.ScatterDeg:0.00} "
                + $"degrees");

    /// <summary>The ends of a piece.</summary>
    public static string Ends(RuleStrip strip) => (strip.StartMitreDeg, strip.EndMitreDeg) is (null, null)
        ? "square, butted at the joint"
        : $"{End(strip.StartMitreDeg)}; {End(strip.EndMitreDeg)}";

    private static string End(double? mitreDeg) => mitreDeg switch
    {
        null => "square",
        >= 0 => Invariant($"mitre {mitreDeg:0.0}, long on the waste's side"),
        _ => Invariant($"mitre {-mitreDeg:0.0}, long on the panel's side"),
    };
}
