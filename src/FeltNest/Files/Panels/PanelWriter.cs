using FeltNest.Ball;
using FeltNest.Ball.Rules;
using FeltNest.Ball.Tolerance;
using FeltNest.Files.Json;
using FeltNest.Panel;

namespace FeltNest.Files.Panels;

/// <summary>Writes a flat panel (schema feltnest/panel/1).</summary>
public static class PanelWriter
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Write(BallSpec ball, FlatPanel panel)
    {
        using JsonOutput json = new();
        json.Text("schema", SchemaName.Panel)
            .Text("name", ball.Name)
            .Text("ball", ball.Name)
            .Texts("given", ball.Given)
            .Text("curve", EnumWord.Of(ball.Seam.Curve))
            .Text("flattening", EnumWord.Of(ball.Panel.Flattening))
            .Text("edge", EnumWord.Of(ball.Panel.Edge))
            .NumberOr("warpAngleDeg", ball.Panel.WarpAngleDeg, "any")
            .Number("massPerAreaGsm", ball.Felt.MassPerAreaGsm)
            .Number("areaMm2", panel.AreaMm2)
            .Number("perimeterMm", panel.PerimeterMm)
            .Number("lengthMm", panel.LengthMm)
            .Number("widthMm", panel.WidthMm)
            .Number("waistMm", panel.WaistMm)
            .Number("arcDeviationMm", panel.ArcDeviationMm)
            .Object("sphere", sphere => sphere
                .Number("radiusMm", panel.Sphere.RadiusMm)
                .Number("seamLengthMm", panel.Sphere.SeamLengthMm)
                .Number("panelAreaMm2", panel.Sphere.PanelAreaMm2)
                .Number("waistMm", panel.Sphere.WaistMm)
                .Number("lengthMm", panel.Sphere.LengthMm)
                .Number("widthMm", panel.Sphere.WidthMm)
                .Number("leastRadiusMm", panel.Sphere.LeastRadiusMm))
            .Object("strain", strain => strain
                .Number("maxStretchPercent", panel.Strain.MaxStretchPercent)
                .Number("maxCompressionPercent", panel.Strain.MaxCompressionPercent)
                .Number("edgeMaxCompressionPercent", panel.Strain.EdgeMaxCompressionPercent)
                .Number("edgeMismatchPercent", panel.Strain.EdgeMismatchPercent)
                .Number("energyNmm", panel.Strain.EnergyNmm))
            .ObjectOrNull("fit", panel.Fit, (fields, fit) => fields
                .Number("largestGapMm", fit.LargestGapMm)
                .Number("largestOverlapMm", fit.LargestOverlapMm)
                .Number("energyNmm", fit.EnergyNmm))
            .Object("solve", solve => solve
                .Number("degree", panel.Solve.Degree)
                .Number("unknowns", panel.Solve.Unknowns)
                .Number("iterations", panel.Solve.Iterations)
                .Number("residual", panel.Solve.Residual)
                .Number("chordTorqueNmm", panel.Solve.ChordTorqueNmm))
            .ObjectOrNull("edgeLimit", panel.EdgeLimit, (json, limit) => json
                .Number("limitPercent", limit.LimitPercent)
                .Flag("active", limit.IsActive)
                .Number("sharePercent", limit.SharePercent)
                .Rows("where", limit.Where, piece => [piece.FromS, piece.ToS])
                .Number("edgeAreaMm2", limit.EdgeAreaMm2)
                .Number("energyNmm", limit.EnergyNmm)
                .Number("unlimitedCompressionPercent", limit.UnlimitedCompressionPercent)
                .Number("unlimitedAreaMm2", limit.UnlimitedAreaMm2)
                .Number("unlimitedEnergyNmm", limit.UnlimitedEnergyNmm))
            .Objects("allowances", panel.Allowances, (item, step) => item
                .Number("step", step.Step)
                .Text("name", step.Name)
                .Text("value", step.Value)
                .Number("lengthEffectMm", step.LengthEffectMm)
                .Number("widthEffectMm", step.WidthEffectMm)
                .Number("areaEffectMm2", step.AreaEffectMm2))
            .Object("ballCheck", check => WriteBallCheck(check, ball, MassBudget.Of(ball, panel.AreaMm2), panel.AreaMm2))
            .Outline("outline", panel.Outline)
            .Arcs("arcs", panel.Arcs.Vertices)
            .Rows("edgeMap", panel.EdgeMap, p => [p.U, p.V, p.S]);
        return json.Finish();
    }

    private static void WriteBallCheck(JsonOutput json, BallSpec ball, MassBudget mass, double panelAreaMm2) => json
        .Text("ruleType", EnumWord.Of(ball.RuleType))
        .Text("edition", RuleTable.Edition)
        .Text("source", RuleTable.Row(ball.RuleType)?.Source)
        .Number("finishedDiameterMm", ball.FinishedDiameterMm)
        .Number("coreG", mass.CoreG)
        .Number("cementG", mass.CementG)
        .Number("feltG", mass.FeltG)
        .Number("totalG", mass.TotalG)
        .Objects("findings", RuleCheck.Of(ball, mass), (item, finding) => item
            .Text("quantity", finding.Quantity)
            .Number("value", finding.Value)
            .Text("unit", finding.Unit)
            .Number("low", finding.Limits?.Low)
            .Number("high", finding.Limits?.High)
            .Text("verdict", EnumWord.Of(finding.Verdict)))
        .Objects("tolerances", ToleranceCheck.Of(ball, mass, panelAreaMm2), (item, spread) => item
            .Text("quantity", spread.Quantity)
            .Number("value", spread.Value)
            .Text("unit", spread.Unit)
            .Number("worstCase", spread.WorstCase)
            .Number("rootSumSquare", spread.RootSumSquare)
            .Text("worstCaseVerdict", EnumWord.Of(spread.WorstCaseVerdict))
            .Text("rootSumSquareVerdict", EnumWord.Of(spread.RootSumSquareVerdict)));
}
