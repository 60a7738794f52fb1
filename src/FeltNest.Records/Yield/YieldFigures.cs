namespace FeltNest.Yield;

/// <summary>What a layout yields. Bases: full roll width, one repeat, before roll ends and faults.</summary>
/// <param name="PanelsPerMetre">Panels per running metre.</param>
/// <param name="BallsPerMetre">Pairs of one pairing class per running metre.</param>
/// <param name="UtilisationPercent">Panel area in per cent of the cloth.</param>
/// <param name="WastePercent">The rest.</param>
/// <param name="PerThousandBalls">Felt per thousand balls.</param>
/// <param name="Account">Where every per cent goes.</param>
public sealed record YieldFigures(
    double PanelsPerMetre, double BallsPerMetre, double UtilisationPercent, double WastePercent, FeltUsage PerThousandBalls,
    WasteAccount Account);
