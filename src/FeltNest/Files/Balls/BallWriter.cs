using FeltNest.Ball;
using FeltNest.Ball.Tolerance;
using FeltNest.Files.Felts;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using static FeltNest.Files.Balls.BallDocument;

namespace FeltNest.Files.Balls;

/// <summary>Writes a ball specification (schema feltnest/ball/1) that reads back as the same ball.</summary>
internal static class BallWriter
{
    /// <summary>The file's bytes.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="origin">Where its seam is from, written as an assumption.</param>
    public static byte[] Write(BallSpec ball, string origin)
    {
        using JsonOutput json = new(BallDocument.Document);
        json.Text(Name, ball.Name)
            .Text(BallDocument.RuleType, EnumWord.Of(ball.RuleType))
            .Object(Core, core => core
                .Number(CoreFields.OuterDiameterMm, ball.Core.OuterDiameterMm)
                .Number(CoreFields.MassG, ball.Core.MassG))
            .Object(Cement, cement => cement
                .Number(CementFields.ThicknessMm, ball.Cement.ThicknessMm)
                .Number(CementFields.MassPerAreaGsm, ball.Cement.MassPerAreaGsm))
            .Object(BallDocument.Felt, felt => FeltOf(felt, ball.Felt))
            .Object(BallDocument.Seam, seam => SeamOf(seam, ball.Seam))
            .Object(BallDocument.Panel, panel => panel
                .Text(PanelFields.Flattening, EnumWord.Of(ball.Panel.Flattening))
                .Text(PanelFields.Edge, EnumWord.Of(ball.Panel.Edge))
                .NumberOr(PanelFields.WarpAngleDeg, ball.Panel.WarpAngleDeg)
                .Number(PanelFields.DieOffsetMm, ball.Panel.DieOffsetMm));
        if (ball.Tolerances is { } off)
        {
            json.Object(Tolerances, tolerances => Off(tolerances, off));
        }

        return json.Assumption("seam.offsets", origin).Finish();
    }

    private static void FeltOf(JsonOutput json, FeltSpec felt)
    {
        json.Text(FeltFields.Name, felt.Name)
            .Text(FeltFields.Construction, EnumWord.Of(felt.Construction))
            .Number(FeltFields.ThicknessMm, felt.ThicknessMm)
            .Number(FeltFields.FinishedThicknessMm, felt.FinishedThicknessMm)
            .Number(FeltFields.MassPerAreaGsm, felt.MassPerAreaGsm)
            .Number(FeltFields.WarpModulusNPerMm, felt.WarpModulusNPerMm)
            .Number(FeltFields.WeftModulusNPerMm, felt.WeftModulusNPerMm)
            .Number(FeltFields.ShearModulusNPerMm, felt.ShearModulusNPerMm)
            .Number(FeltFields.Poisson, felt.Poisson)
            .Number(FeltFields.NeutralLayer, felt.NeutralLayer)
            .Number(FeltFields.MaxStretchPercent, felt.MaxStretchPercent)
            .Number(FeltFields.MaxEdgeCompressionPercent, felt.MaxEdgeCompressionPercent)
            .Number(FeltFields.CureShrinkWarpPercent, felt.CureShrinkWarpPercent)
            .Number(FeltFields.CureShrinkWeftPercent, felt.CureShrinkWeftPercent)
            .Number(FeltFields.ApplicationStretchWarpPercent, felt.ApplicationStretchWarpPercent)
            .Number(FeltFields.ApplicationStretchWeftPercent, felt.ApplicationStretchWeftPercent);
        if (felt.MaxCompressionPercent is { } most)
        {
            json.Number(FeltFields.MaxCompressionPercent, most);
        }

        if (felt.Lot is { } lot)
        {
            json.Object(FeltFields.Lot, fields => LotFields.Write(fields, lot));
        }
    }

    private static void SeamOf(JsonOutput json, SeamSpec seam)
    {
        json.Text(SeamFields.Curve, EnumWord.Of(seam.Curve));
        if (seam.Points is { } points)
        {
            json.Rows(SeamFields.Points, points, p => [p.X, p.Y, p.Z]);
        }
        else
        {
            json.Number(SeamFields.WaistMm, seam.WaistMm);
        }

        if (seam.Offsets is { } offsets)
        {
            json.Rows(SeamFields.Offsets, offsets, wave => [wave.Order, wave.AmountMm]);
        }

        json.Number(SeamFields.SeamGapMm, seam.SeamGapMm);
        if (seam.Adhesive is { } adhesive)
        {
            json.Number(SeamFields.AdhesiveLeastMm, adhesive.LeastMm).Number(SeamFields.AdhesiveMostMm, adhesive.MostMm);
        }
    }

    private static void Off(JsonOutput json, ToleranceSpec off)
    {
        json.Number(TolerancesFields.CoreMassG, off.CoreMassG)
            .Number(TolerancesFields.CementMassPerAreaGsm, off.CementMassPerAreaGsm)
            .Number(TolerancesFields.FeltFinishedThicknessMm, off.FeltFinishedThicknessMm)
            .Number(TolerancesFields.FeltMassPerAreaGsm, off.FeltMassPerAreaGsm)
            .Text(TolerancesFields.ReadAs, EnumWord.Of(off.ReadAs));
        (NumberField Field, double? Value)[] gap =
        [
            (TolerancesFields.CoreDiameterMm, off.CoreDiameterMm),
            (TolerancesFields.CementThicknessMm, off.CementThicknessMm),
            (TolerancesFields.FeltThicknessMm, off.FeltThicknessMm),
            (TolerancesFields.NeutralLayer, off.NeutralLayer),
            (TolerancesFields.WarpModulusNPerMm, off.WarpModulusNPerMm),
            (TolerancesFields.WeftModulusNPerMm, off.WeftModulusNPerMm),
            (TolerancesFields.ShearModulusNPerMm, off.ShearModulusNPerMm),
            (TolerancesFields.Poisson, off.Poisson),
            (TolerancesFields.CureShrinkWarpPercent, off.CureShrinkWarpPercent),
            (TolerancesFields.CureShrinkWeftPercent, off.CureShrinkWeftPercent),
            (TolerancesFields.ApplicationStretchWarpPercent, off.ApplicationStretchWarpPercent),
            (TolerancesFields.ApplicationStretchWeftPercent, off.ApplicationStretchWeftPercent),
            (TolerancesFields.WarpAngleDeg, off.WarpAngleDeg),
            (TolerancesFields.DieOffsetMm, off.DieOffsetMm),
            (TolerancesFields.PlacingAlongMm, off.PlacingAlongMm),
            (TolerancesFields.PlacingAcrossMm, off.PlacingAcrossMm),
            (TolerancesFields.PlacingTurnDeg, off.PlacingTurnDeg),
        ];
        foreach ((NumberField field, double? value) in gap.Where(one => one.Value is not null))
        {
            json.Number(field, value);
        }
    }
}
