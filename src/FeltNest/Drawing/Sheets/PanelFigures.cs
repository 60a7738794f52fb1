using System.Globalization;
using FeltNest.Ball;
using FeltNest.Ball.Rules;
using FeltNest.Ball.Tolerance;
using FeltNest.Panel;
using FeltNest.Panel.Budget;
using FeltNest.Panel.Thickness;

namespace FeltNest.Drawing.Sheets;

/// <summary>The key figures of a panel sheet, in two columns.</summary>
internal static class PanelFigures
{
    /// <summary>Left: the panel and its strain. Right: the ball.</summary>
    public static IReadOnlyList<(string Name, string Value)>[] Columns(
        BallSpec ball, FlatPanel panel, MassBudget mass, GapBudget? budget) =>
    [
        [.. PanelLines(ball, panel), .. HeldLines(panel), .. budget is null ? [] : GapFigures.Lines(budget)],
        [.. BallLines(ball, panel, mass), .. RuleLines(ball, panel, mass), .. GivenLines(ball), .. ThicknessLines(ball, panel)],
    ];

    private static IEnumerable<(string, string)> PanelLines(BallSpec ball, FlatPanel panel) =>
    [
        ("Panel", string.Empty),
        ("area of the cut panel", F(panel.AreaMm2 / 100, "0.00", "cm\u00B2")),
        ("edge length", F(panel.PerimeterMm, "0.00", "mm")),
        ("outline", $"{panel.Arcs.Vertices.Count} arcs"),
        ("Strain of the neutral layer", string.Empty),
        ($"greatest stretch, felt takes {F(ball.Felt.MaxStretchPercent, "0.#", "%")}", Stretch(ball, panel)),
        Compression(ball, panel),
        ("compression along the edge", F(panel.Strain.EdgeMaxCompressionPercent, "0.0", "%")),
        ("length difference of mating edges", F(panel.Strain.EdgeMismatchPercent, "0.000", "%")),
        ("elastic energy", F(panel.Strain.EnergyNmm, "0.00", "N mm")),
    ];

    private static (string, string) Compression(BallSpec ball, FlatPanel panel)
    {
        string limit = ball.Felt.MaxCompressionPercent is { } most ? $", felt takes {F(most, "0.#", "%")}" : string.Empty;
        string verdict = ball.Felt.TakesCompression(panel.Strain.MaxCompressionPercent) ? string.Empty : ": ABOVE THE LIMIT";
        return ($"greatest compression{limit}", F(panel.Strain.MaxCompressionPercent, "0.0", "%") + verdict);
    }

    private static IEnumerable<(string, string)> ThicknessLines(BallSpec ball, FlatPanel panel)
    {
        ThroughThickness through = ThroughThickness.Of(ball, panel);
        yield return ("Through the felt's thickness", string.Empty);
        foreach ((FeltLayer layer, LayerExtremes most) in through.Layers.Zip(through.Extremes))
        {
            yield return (
                string.Create(
                    CultureInfo.InvariantCulture, $"{LayerWords.Of(layer.Name)}, neutral layer {layer.FromNeutralMm:+0.0;-0.0;+0.0} mm"),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{-most.MaxCompressionPercent:+0.0;-0.0;0.0} to {most.MaxStretchPercent:+0.0;-0.0;0.0} %"));
        }

        yield return ("bending energy", F(through.BendingNmm, "0.00", "N mm"));
        yield return ("tack for bending alone", F(1000 * through.BendingNPerMm, "0.0", "J/m\u00B2"));
        yield return ("tack for the edge, at most", F(1000 * through.EdgeTackNPerMm, "0.0", "J/m\u00B2"));
    }

    // What the edges leave between them, and what holds the panel.
    private static IEnumerable<(string, string)> HeldLines(FlatPanel panel)
    {
        if (panel.Fit is { } fit)
        {
            yield return ("gap and overlap as cut", Gap(fit.AsCut));
            yield return ("gap and overlap after cure", Gap(fit.AfterCure));
        }

        if (panel.EdgeLimit is { IsActive: true } limit)
        {
            yield return ("held at the edge limit", F(limit.SharePercent, "0", "% of the seam"));
        }

        if (panel.Solve.ChordTorqueNmm != 0)
        {
            yield return ("torque on the chord", F(panel.Solve.ChordTorqueNmm, "0.00", "N mm"));
        }
    }

    private static string Gap(FitGap gap) => gap.LargestGapMm is null
        ? "not met"
        : string.Create(CultureInfo.InvariantCulture, $"{gap.LargestGapMm:0.00}, {gap.LargestOverlapMm:0.00} mm");

    private static IEnumerable<(string, string)> BallLines(BallSpec ball, FlatPanel panel, MassBudget mass) =>
    [
        ($"Ball ({EnumWord.Of(ball.RuleType)})", string.Empty),
        ($"felt: {ball.Felt.Name}", EnumWord.Of(ball.Felt.Construction)),
        ("fitted sphere, radius", F(panel.Sphere.RadiusMm, "0.000", "mm")),
        ("seam length", F(panel.Sphere.SeamLengthMm, "0.00", "mm")),
        ("felt, cement, core", string.Create(
            CultureInfo.InvariantCulture, $"{mass.FeltG:0.0}, {mass.CementG:0.0}, {mass.CoreG:0.0} g")),
    ];

    private static List<(string, string)> RuleLines(BallSpec ball, FlatPanel panel, MassBudget mass)
    {
        List<(string, string)> lines = [("Against the rules", string.Empty)];
        IReadOnlyList<ToleranceFinding> spreads = ToleranceCheck.Of(ball, mass, panel.AreaMm2);
        foreach (RuleFinding finding in RuleCheck.Of(ball, mass).Where(f => f.Value is not null))
        {
            // What the parts may be off decides; a figure at its nominal value alone is called so.
            string nominal = spreads.Count > 0 ? ", nominal" : string.Empty;
            lines.Add(($"{finding.Quantity} {F(finding.Value!.Value, "0.0", finding.Unit)}{nominal}", Words(finding.Verdict)));
            lines.AddRange(spreads.Where(spread => spread.Quantity == finding.Quantity).SelectMany(Spread));
        }

        lines.Add(("edition", "check the current rule book"));
        return lines;
    }

    private static IEnumerable<(string, string)> GivenLines(BallSpec ball)
    {
        IEnumerable<(string, string)> given = ball.Given.Select(given => given.Split('=', 2)).Select(parts => (parts[0], parts[1]));
        return ball.Given.Count > 0 ? given.Prepend(("Given before the ball's file", string.Empty)) : [];
    }

    private static string Stretch(BallSpec ball, FlatPanel panel) =>
        F(panel.Strain.MaxStretchPercent, "0.0", "%")
            + (panel.Strain.MaxStretchPercent > ball.Felt.MaxStretchPercent ? ": ABOVE THE LIMIT" : string.Empty);

    private static IEnumerable<(string, string)> Spread(ToleranceFinding spread)
    {
        yield return ($"  \u00B1 {F(spread.WorstCase, "0.00", spread.Unit)}, worst case", Words(spread.WorstCaseVerdict));
        yield return ($"  \u00B1 {F(spread.RootSumSquare, "0.00", spread.Unit)}, root sum square", Words(spread.RootSumSquareVerdict));
    }

    private static string Words(RuleVerdict verdict) => verdict switch
    {
        RuleVerdict.Within => "within",
        RuleVerdict.WithinFromMemory => "within (from memory)",
        RuleVerdict.Outside => "outside",
        RuleVerdict.OutsideFromMemory => "outside (from memory)",
        _ => "not known",
    };

    private static string F(double value, string format, string unit) => value.ToString(format, CultureInfo.InvariantCulture) + " " + unit;
}
