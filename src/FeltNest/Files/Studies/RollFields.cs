using FeltNest.Files.Json;
using FeltNest.Layout;
using FeltNest.Yield;

namespace FeltNest.Files.Studies;

/// <summary>Fields that all studies write alike: the roll asked about, and what it yields.</summary>
internal static class RollFields
{
    /// <summary>The roll and the rules of laying.</summary>
    public static void Roll(JsonOutput fields, LayoutRequest roll) => Rules(
        fields.Number("widthMm", roll.RollWidthMm).Number("edgeMm", roll.Trims.LowerMm).Number("upperEdgeMm", roll.Trims.UpperMm), roll);

    /// <summary>The rules of laying alone, for several rolls.</summary>
    public static void Rules(JsonOutput fields, LayoutRequest roll) => fields
        .Number("gapMm", roll.GapMm)
        .Text("rows", EnumWord.Of(roll.Rules.Rows))
        .NumberOr("warpAngle", roll.Rules.WarpAngleDeg, "free")
        .Number("warpToleranceDeg", roll.Rules.WarpToleranceDeg)
        .Flag("oneWay", roll.Rules.OneWay)
        .Number("effort", roll.Effort)
        .Number("seed", roll.Seed);

    /// <summary>What a layout yields.</summary>
    public static void Yield(JsonOutput fields, YieldFigures yields) => fields
        .Number("panelsPerMetre", yields.PanelsPerMetre)
        .Number("ballsPerMetre", yields.BallsPerMetre)
        .Number("wastePercent", yields.WastePercent)
        .Object("perThousandBalls", felt => felt
            .Number("metres", yields.PerThousandBalls.Metres)
            .Number("squareMetres", yields.PerThousandBalls.SquareMetres)
            .Number("kilograms", yields.PerThousandBalls.Kilograms));
}
