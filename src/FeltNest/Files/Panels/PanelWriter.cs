using FeltNest.Ball;
using FeltNest.Ball.Rules;
using FeltNest.Ball.Tolerance;
using FeltNest.Files.Felts;
using FeltNest.Files.Json;
using FeltNest.Panel;
using FeltNest.Panel.Thickness;
using static FeltNest.Files.Panels.PanelDocument;

namespace FeltNest.Files.Panels;

/// <summary>Writes a flat panel (schema feltnest/panel/1).</summary>
internal static class PanelWriter
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Write(BallSpec ball, FlatPanel panel)
    {
        using JsonOutput json = new(PanelDocument.Document);
        json.Text(PanelDocument.Name, ball.Name)
            .Text(PanelDocument.Ball, ball.Name)
            .Texts(PanelDocument.Given, ball.Given)
            .Text(PanelDocument.Curve, EnumWord.Of(ball.Seam.Curve))
            .Text(PanelDocument.Flattening, EnumWord.Of(ball.Panel.Flattening))
            .Text(PanelDocument.Edge, EnumWord.Of(ball.Panel.Edge))
            .NumberOr(PanelDocument.WarpAngleDeg, ball.Panel.WarpAngleDeg)
            .Number(PanelDocument.MassPerAreaGsm, ball.Felt.MassPerAreaGsm);
        if (ball.Felt.Lot is { } lot)
        {
            json.Object(PanelDocument.FeltLot, fields => LotFields.Write(fields, lot));
        }

        json.Number(PanelDocument.AreaMm2, panel.AreaMm2)
            .Number(PanelDocument.PerimeterMm, panel.PerimeterMm)
            .Number(PanelDocument.LengthMm, panel.LengthMm)
            .Number(PanelDocument.WidthMm, panel.WidthMm)
            .Number(PanelDocument.WaistMm, panel.WaistMm)
            .Number(PanelDocument.ArcDeviationMm, panel.ArcDeviationMm);
        Solved(json, panel);
        json.Object(PanelDocument.Thickness, fields => Thick(fields, ball, panel));
        json.Objects(PanelDocument.Allowances, panel.Allowances, (item, step) => item
                .Number(AllowanceFields.Step, step.Step)
                .Text(AllowanceFields.Name, step.Name)
                .Text(AllowanceFields.Value, step.Value)
                .Number(AllowanceFields.LengthEffectMm, step.LengthEffectMm)
                .Number(AllowanceFields.WidthEffectMm, step.WidthEffectMm)
                .Number(AllowanceFields.AreaEffectMm2, step.AreaEffectMm2))
            .Object(PanelDocument.BallCheck, check => WriteBallCheck(check, ball, MassBudget.Of(ball, panel.AreaMm2), panel.AreaMm2))
            .Outline(PanelDocument.Outline, panel.Outline)
            .Arcs(PanelDocument.Arcs, panel.Arcs.Vertices)
            .Rows(PanelDocument.EdgeMap, panel.EdgeMap, p => [p.U, p.V, p.S]);
        return json.Finish();
    }

    // The sphere, strain and edge, and how they were found.
    private static void Solved(JsonOutput json, FlatPanel panel) => json
        .Object(PanelDocument.Sphere, sphere => sphere
            .Number(SphereFields.RadiusMm, panel.Sphere.RadiusMm)
            .Number(SphereFields.SeamLengthMm, panel.Sphere.SeamLengthMm)
            .Number(SphereFields.PanelAreaMm2, panel.Sphere.PanelAreaMm2)
            .Number(SphereFields.WaistMm, panel.Sphere.WaistMm)
            .Number(SphereFields.LengthMm, panel.Sphere.LengthMm)
            .Number(SphereFields.WidthMm, panel.Sphere.WidthMm)
            .Number(SphereFields.LeastRadiusMm, panel.Sphere.LeastRadiusMm))
        .Object(PanelDocument.Strain, strain => strain
            .Number(StrainFields.MaxStretchPercent, panel.Strain.MaxStretchPercent)
            .Number(StrainFields.MaxCompressionPercent, panel.Strain.MaxCompressionPercent)
            .Number(StrainFields.EdgeMaxCompressionPercent, panel.Strain.EdgeMaxCompressionPercent)
            .Number(StrainFields.EdgeMismatchPercent, panel.Strain.EdgeMismatchPercent)
            .Number(StrainFields.EnergyNmm, panel.Strain.EnergyNmm))
        .ObjectOrNull(PanelDocument.Fit, panel.Fit, (fields, fit) => fields
            .Number(FitFields.LargestGapMm, fit.LargestGapMm)
            .Number(FitFields.LargestOverlapMm, fit.LargestOverlapMm)
            .Number(FitFields.EnergyNmm, fit.EnergyNmm)
            .Object(FitFields.AsCut, gap => Gap(gap, fit.AsCut))
            .Object(FitFields.AfterCure, gap => Gap(gap, fit.AfterCure)))
        .Object(PanelDocument.Solve, solve => solve
            .Number(SolveFields.Degree, panel.Solve.Degree)
            .Number(SolveFields.Unknowns, panel.Solve.Unknowns)
            .Number(SolveFields.Iterations, panel.Solve.Iterations)
            .Number(SolveFields.Residual, panel.Solve.Residual)
            .Number(SolveFields.ChordTorqueNmm, panel.Solve.ChordTorqueNmm))
        .ObjectOrNull(PanelDocument.EdgeLimit, panel.EdgeLimit, (json, limit) => json
            .Number(EdgeLimitFields.LimitPercent, limit.LimitPercent)
            .Flag(EdgeLimitFields.Active, limit.IsActive)
            .Number(EdgeLimitFields.SharePercent, limit.SharePercent)
            .Rows(EdgeLimitFields.Where, limit.Where, piece => [piece.FromS, piece.ToS])
            .Number(EdgeLimitFields.EdgeAreaMm2, limit.EdgeAreaMm2)
            .Number(EdgeLimitFields.EnergyNmm, limit.EnergyNmm)
            .Number(EdgeLimitFields.UnlimitedCompressionPercent, limit.UnlimitedCompressionPercent)
            .Number(EdgeLimitFields.UnlimitedAreaMm2, limit.UnlimitedAreaMm2)
            .Number(EdgeLimitFields.UnlimitedEnergyNmm, limit.UnlimitedEnergyNmm));

    private static void Thick(JsonOutput json, BallSpec ball, FlatPanel panel)
    {
        ThroughThickness through = ThroughThickness.Of(ball, panel);
        json.Number(ThicknessFields.ThicknessMm, ball.Felt.ThicknessMm)
            .Objects(ThicknessFields.Layers, through.Layers.Zip(through.Extremes), (item, layer) => item
                .Text(LayerFields.Layer, EnumWord.Of(layer.First.Name))
                .Number(LayerFields.FromNeutralMm, layer.First.FromNeutralMm)
                .Number(LayerFields.MaxStretchPercent, layer.Second.MaxStretchPercent)
                .Number(LayerFields.MaxCompressionPercent, layer.Second.MaxCompressionPercent))
            .Number(ThicknessFields.BendingNPerMm, through.BendingNPerMm)
            .Number(ThicknessFields.BendingNmm, through.BendingNmm)
            .Number(ThicknessFields.EdgeStrainNPerMm, through.EdgeStrainNPerMm)
            .Number(ThicknessFields.EdgeStrainS, through.EdgeStrainS)
            .Number(ThicknessFields.EdgeTackNPerMm, through.EdgeTackNPerMm)
            .Number(ThicknessFields.PuckerLimitPercent, through.PuckerLimitPercent)
            .Flag(ThicknessFields.PuckerLimitOfEdge, !through.HasOwnPuckerLimit)
            .Flag(ThicknessFields.PuckerLimitKept, ball.Felt.TakesCompression(panel.Strain.MaxCompressionPercent))
            .Number(ThicknessFields.PuckerSharePercent, through.PuckerSharePercent);
    }

    private static void Gap(JsonOutput fields, FitGap gap) => fields
        .Number(FitGapFields.LargestGapMm, gap.LargestGapMm)
        .Number(FitGapFields.LargestOverlapMm, gap.LargestOverlapMm);

    private static void WriteBallCheck(JsonOutput json, BallSpec ball, MassBudget mass, double panelAreaMm2) => json
        .Text(BallCheckFields.RuleType, EnumWord.Of(ball.RuleType))
        .Text(BallCheckFields.Edition, RuleTable.Edition)
        .Text(BallCheckFields.Source, RuleTable.Row(ball.RuleType)?.Source)
        .Number(BallCheckFields.FinishedDiameterMm, ball.FinishedDiameterMm)
        .Number(BallCheckFields.CoreG, mass.CoreG)
        .Number(BallCheckFields.CementG, mass.CementG)
        .Number(BallCheckFields.FeltG, mass.FeltG)
        .Number(BallCheckFields.TotalG, mass.TotalG)
        .Objects(BallCheckFields.Findings, RuleCheck.Of(ball, mass), (item, finding) => item
            .Text(FindingFields.Quantity, finding.Quantity)
            .Number(FindingFields.Value, finding.Value)
            .Text(FindingFields.Unit, finding.Unit)
            .Number(FindingFields.Low, finding.Limits?.Low)
            .Number(FindingFields.High, finding.Limits?.High)
            .Text(FindingFields.Verdict, EnumWord.Of(finding.Verdict)))
        .Objects(BallCheckFields.Tolerances, ToleranceCheck.Of(ball, mass, panelAreaMm2), (item, spread) => item
            .Text(ToleranceFields.Quantity, spread.Quantity)
            .Number(ToleranceFields.Value, spread.Value)
            .Text(ToleranceFields.Unit, spread.Unit)
            .Number(ToleranceFields.WorstCase, spread.WorstCase)
            .Number(ToleranceFields.RootSumSquare, spread.RootSumSquare)
            .Text(ToleranceFields.WorstCaseVerdict, EnumWord.Of(spread.WorstCaseVerdict))
            .Text(ToleranceFields.RootSumSquareVerdict, EnumWord.Of(spread.RootSumSquareVerdict)));
}
