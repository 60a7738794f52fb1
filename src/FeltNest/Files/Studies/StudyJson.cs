using FeltNest.Files.Json;
using FeltNest.Layout;
using FeltNest.Yield;
using static FeltNest.Files.Studies.StudyFields;

namespace FeltNest.Files.Studies;

/// <summary>Fields that all studies write alike: the roll asked about, and what it yields.</summary>
internal static class StudyJson
{
    /// <summary>The roll and the rules of laying.</summary>
    public static void Roll(JsonOutput fields, LayoutRequest roll) => Rules(
        fields
            .Number(RollFields.WidthMm, roll.RollWidthMm)
            .Number(RollFields.EdgeMm, roll.Trims.LowerMm)
            .Number(RollFields.UpperEdgeMm, roll.Trims.UpperMm), roll);

    /// <summary>The rules of laying alone, for several rolls.</summary>
    public static void Rules(JsonOutput fields, LayoutRequest roll) => fields
        .Number(LayFields.GapMm, roll.GapMm)
        .Text(LayFields.Rows, EnumWord.Of(roll.Rules.Rows))
        .NumberOr(LayFields.WarpAngle, roll.Rules.WarpAngleDeg)
        .Number(LayFields.WarpToleranceDeg, roll.Rules.WarpToleranceDeg)
        .Flag(LayFields.OneWay, roll.Rules.OneWay)
        .Number(LayFields.Effort, roll.Effort)
        .Number(LayFields.Seed, roll.Seed);

    /// <summary>What a layout yields.</summary>
    public static void Yield(JsonOutput fields, YieldFigures yields) => fields
        .Number(YieldFields.PanelsPerMetre, yields.PanelsPerMetre)
        .Number(YieldFields.BallsPerMetre, yields.BallsPerMetre)
        .Number(YieldFields.WastePercent, yields.WastePercent)
        .Object(YieldFields.PerThousandBalls, felt => felt
            .Number(PerThousandBallsFields.Metres, yields.PerThousandBalls.Metres)
            .Number(PerThousandBallsFields.SquareMetres, yields.PerThousandBalls.SquareMetres)
            .Number(PerThousandBallsFields.Kilograms, yields.PerThousandBalls.Kilograms));
}
