namespace FeltNest.Yield;

/// <summary>What a layout yields. Bases: full roll width, one repeat, before roll ends and faults.</summary>
public sealed record YieldFigures
{
    /// <summary>Panels per running metre.</summary>
    public required double PanelsPerMetre { get; init; }

    /// <summary>Pairs of one pairing class per running metre.</summary>
    public required double BallsPerMetre { get; init; }

    /// <summary>Panel area in per cent of the cloth.</summary>
    public required double UtilisationPercent { get; init; }

    /// <summary>The rest.</summary>
    public required double WastePercent { get; init; }

    /// <summary>Felt per thousand balls.</summary>
    public required FeltUsage PerThousandBalls { get; init; }

    /// <summary>Where every per cent goes.</summary>
    public required WasteAccount Account { get; init; }
}
