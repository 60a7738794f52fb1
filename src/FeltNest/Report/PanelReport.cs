using System.Globalization;
using FeltNest.Ball;
using FeltNest.Ball.Rules;
using FeltNest.Ball.Tolerance;
using FeltNest.Panel;
using FeltNest.Panel.Thickness;

namespace FeltNest.Report;

/// <summary>The table a panel prints.</summary>
internal static class PanelReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="assumed">Fields of the ball file that are assumed rather than sourced.</param>
    public static string Text(BallSpec ball, FlatPanel panel, IReadOnlyList<string> assumed)
    {
        TextTable table = new();
        FlatLines(table, ball, panel);
        LotLines(table, ball, panel);
        SphereLines(table, ball, panel);
        StrainLines(table, ball, panel);
        HeldLines(table, panel);
        ThicknessLines(table, ball, panel);
        table.Heading("Allowances, in the order applied");
        foreach (PanelAllowance step in panel.Allowances)
        {
            table.Line(
                $"{step.Step} {step.Name}", step.Value,
                FormattableString.Invariant($"length {step.LengthEffectMm:+0.00;-0.00;0} mm, width {step.WidthEffectMm:+0.00;-0.00;0} mm"));
        }

        BallLines(table, ball, MassBudget.Of(ball, panel.AreaMm2), panel.AreaMm2);
        if (assumed.Count > 0)
        {
            table.Note(string.Empty).Note($"Assumed in the ball file, not sourced: {string.Join(", ", assumed)}.");
        }

        return table.ToString();
    }

    private static void FlatLines(TextTable table, BallSpec ball, FlatPanel panel)
    {
        string edge = ball.Panel.Flattening == FlatteningMethod.Elastic ? $", edge {EnumWord.Of(ball.Panel.Edge)}" : string.Empty;
        table.Heading($"{ball.Name}: flat panel ({EnumWord.Of(ball.Panel.Flattening)}{edge})")
            .Line("length", panel.LengthMm, "0.00", "mm", "as cut, all allowances in")
            .Line("greatest width", panel.WidthMm, "0.00", "mm")
            .Line("waist", panel.WaistMm, "0.00", "mm")
            .Line("area", panel.AreaMm2 / 100, "0.00", "cm2", "one panel; two the same cover the ball")
            .Line("edge length", panel.PerimeterMm, "0.00", "mm")
            .Line(
                "outline", $"{panel.Arcs.Vertices.Count} arcs",
                FormattableString.Invariant($"within {panel.ArcDeviationMm:0.0000} mm of the computed curve"));
    }

    // Which lot the figures of the felt are of, and how far the panel strains it beyond what was measured.
    private static void LotLines(TextTable table, BallSpec ball, FlatPanel panel)
    {
        if (ball.Felt.Lot is not { } lot)
        {
            return;
        }

        string bends = lot.CurveBends ? "; its curve bends there, and the panel takes the straight law" : string.Empty;
        table.Heading("Felt, as measured")
            .Line("lot", lot.Name, $"{ball.Felt.Name}, measured until {lot.Date}")
            .Line(
                "straight moduli", FormattableString.Invariant($"{lot.FromPercent:0.##} to {lot.ToPercent:0.##} %"),
                $"of strain in tension, used for all strains of the panel{bends}")
            .Line(
                "the panel's strains",
                FormattableString.Invariant($"{-panel.Strain.MaxCompressionPercent:0.0} to {panel.Strain.MaxStretchPercent:+0.0;0.0} %"),
                "on the neutral layer");
    }

    private static void SphereLines(TextTable table, BallSpec ball, FlatPanel panel) =>
        table.Heading("Fitted sphere")
            .Line("radius", panel.Sphere.RadiusMm, "0.000", "mm", "core, cement and the felt's neutral layer")
            .Line("seam", panel.Sphere.SeamLengthMm, "0.00", "mm", $"{EnumWord.Of(ball.Seam.Curve)}, zero seam gap")
            .Line(
                "waist, length, width",
                FormattableString.Invariant($"{panel.Sphere.WaistMm:0.0}, {panel.Sphere.LengthMm:0.0}, {panel.Sphere.WidthMm:0.0} mm"),
                "arcs on the sphere")
            .Line("least seam radius", panel.Sphere.LeastRadiusMm, "0.00", "mm", "geodesic");

    private static void StrainLines(TextTable table, BallSpec ball, FlatPanel panel)
    {
        table.Heading("Strain of the felt when it is put on")
            .Line(
                "greatest stretch", panel.Strain.MaxStretchPercent, "0.00", "%",
                FormattableString.Invariant($"neutral layer; limit in the ball file {ball.Felt.MaxStretchPercent:0.##} %"))
            .Line("greatest compression", panel.Strain.MaxCompressionPercent, "0.00", "%", "neutral layer, anywhere")
            .Line(
                "compression along the edge", panel.Strain.EdgeMaxCompressionPercent, "0.00", "%",
                FormattableString.Invariant($"limit in the ball file {ball.Felt.MaxEdgeCompressionPercent:0.##} %"))
            .Line(
                "edge length difference of a pair", panel.Strain.EdgeMismatchPercent, "0.000", "%",
                "how unlike two edges are that meet on the ball")
            .Line("elastic energy", panel.Strain.EnergyNmm, "0.00", "N mm", "one panel")
            .Line(
                "solved to", panel.Solve.Residual.ToString("0.0e+0", CultureInfo.InvariantCulture),
                $"degree {panel.Solve.Degree}, {panel.Solve.Unknowns} unknowns, {panel.Solve.Iterations} Newton steps");
        if (panel.Fit is { } fit)
        {
            table.Line(
                "gap as cut, at fitting", fit.AsCut.LargestGapMm, "0.00", "mm",
                "greatest gap between the two panels before the edges are pulled together: what the fitter feels")
                .Line("overlap as cut, at fitting", fit.AsCut.LargestOverlapMm, "0.00", "mm")
                .Line(
                    "gap after cure", fit.AfterCure.LargestGapMm, "0.00", "mm",
                    FormattableString.Invariant($"of it {fit.LargestGapMm:0.00} mm over and above the gap for the adhesive"))
                .Line("overlap after cure", fit.AfterCure.LargestOverlapMm, "0.00", "mm");
        }
    }

    private static void ThicknessLines(TextTable table, BallSpec ball, FlatPanel panel)
    {
        ThroughThickness through = ThroughThickness.Of(ball, panel);
        table.Heading("Through the felt's thickness");
        foreach ((FeltLayer layer, LayerExtremes most) in through.Layers.Zip(through.Extremes))
        {
            table.Line(
                LayerWords.Of(layer.Name),
                FormattableString.Invariant(
                    $"{-most.MaxCompressionPercent:+0.00;-0.00;0.00} to {most.MaxStretchPercent:+0.00;-0.00;0.00} %"),
                LayerWords.Place(layer));
        }

        table.Line("bending energy", through.BendingNmm, "0.00", "N mm", "one panel, bent to the sphere; not in the elastic energy")
            .Line(
                "tack for bending alone", 1000 * through.BendingNPerMm, "0.0", "J/m2", "felt that would lie on the ball without strain")
            .Line(
                "tack for the edge, at most", 1000 * through.EdgeTackNPerMm, "0.0", "J/m2",
                FormattableString.Invariant(
                    $"with the strain of the edge, greatest at s = {double.RadiansToDegrees(through.EdgeStrainS):0} degrees"));
        if (through.PuckerLimitPercent is not { } limit)
        {
            table.Line("pucker limit", "none", "the ball file gives no limit of compression");
            return;
        }

        string whose = through.HasOwnPuckerLimit ? "of the whole panel" : "of the edge: felt.maxCompressionPercent is not given";
        table.Line("pucker limit", limit, "0.##", "%", $"neutral layer, {whose}")
            .Line("  compressed more", through.PuckerSharePercent, "0.0", "%", "of the panel's area");
    }

    // What holds the panel against what the felt would do alone: the angle of its chord, and its edge.
    private static void HeldLines(TextTable table, FlatPanel panel)
    {
        if (panel.Solve.ChordTorqueNmm != 0)
        {
            table.Line(
                "torque on the chord", panel.Solve.ChordTorqueNmm, "0.00", "N mm",
                "holds the chord between the tips at its angle to the warp; left alone the felt would turn it");
        }

        if (panel.EdgeLimit is not { } limit)
        {
            return;
        }

        if (!limit.IsActive)
        {
            table.Line(
                "edge limit", "not reached",
                FormattableString.Invariant(
                    $"the edge takes up {limit.UnlimitedCompressionPercent:0.00} %, the limit is {limit.LimitPercent:0.##} %"));
            return;
        }

        table.Line(
            "edge limit acts on", limit.SharePercent, "0", "%",
            FormattableString.Invariant($"of the seam; without it the edge would take up {limit.UnlimitedCompressionPercent:0.00} %"))
            .Line(
                "  costs in panel area", (limit.EdgeAreaMm2 - limit.UnlimitedAreaMm2) / 100, "+0.00;-0.00;0.00", "cm2",
                "against the same panel without the limit, before allowances")
            .Line(
                "  costs in energy", limit.EnergyNmm - limit.UnlimitedEnergyNmm, "+0.00;-0.00;0.00", "N mm",
                "against the same panel without the limit");
    }

    private static void BallLines(TextTable table, BallSpec ball, MassBudget mass, double panelAreaMm2)
    {
        table.Heading($"Finished ball against the rules ({EnumWord.Of(ball.RuleType)})")
            .Line("felt, both panels", mass.FeltG, "0.0", "g")
            .Line("cement", mass.CementG, "0.0", "g", "film on the core; edge adhesive not counted")
            .Line("core", mass.CoreG, "0.0", "g");
        foreach (RuleFinding finding in RuleCheck.Of(ball, mass))
        {
            if (finding.Value is { } value)
            {
                table.Line(finding.Quantity, value, "0.0", finding.Unit, VerdictWords.WithLimits(finding));
            }
            else
            {
                table.Line(finding.Quantity, "-", VerdictWords.WithLimits(finding));
            }
        }

        foreach (ToleranceFinding spread in ToleranceCheck.Of(ball, mass, panelAreaMm2))
        {
            table.Line(
                $"{spread.Quantity}, worst", FormattableString.Invariant($"+/- {spread.WorstCase:0.00} {spread.Unit}"),
                Spread(spread, spread.WorstCase, spread.WorstCaseVerdict))
                .Line(
                    "  root sum square", FormattableString.Invariant($"+/- {spread.RootSumSquare:0.00} {spread.Unit}"),
                    Spread(spread, spread.RootSumSquare, spread.RootSumSquareVerdict));
        }

        if (RuleTable.Row(ball.RuleType) is { } row)
        {
            table.Note($"Row: {row.Source}.");
        }

        table.Note($"Edition: {RuleTable.Edition}.");
    }

    private static string Spread(ToleranceFinding spread, double off, RuleVerdict verdict) =>
        FormattableString.Invariant($"{spread.Value - off:0.0} to {spread.Value + off:0.0} {spread.Unit}: {VerdictWords.Of(verdict)}");
}
