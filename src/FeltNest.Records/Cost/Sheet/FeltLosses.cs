namespace FeltNest.Cost.Sheet;

/// <summary>What is lost beside the lay itself. Shares are normal losses: what goes wrong once belongs to a variance.</summary>
public sealed record FeltLosses
{
    /// <summary>Length of a roll, m; null counts no roll ends and no remnants.</summary>
    public required double? RollLengthM { get; init; }

    /// <summary>Length lost at each end of a roll, mm.</summary>
    public required double EndLossMm { get; init; }

    /// <summary>Panels lost to faults of the cloth, per cent of all panels cut.</summary>
    public required double FaultPercent { get; init; }

    /// <summary>Panels rejected after cutting, per cent of the rest.</summary>
    public required double RejectPercent { get; init; }

    /// <summary>Good panels that find no partner of their kind and roll, per cent of the good ones.</summary>
    public required double UnpairedPercent { get; init; }

    /// <summary>Most panels of one layer that a strike cuts: the die cuts as many whole repeats as that allows, or a repeat in several
    /// strikes; null for one repeat a strike.</summary>
    public required int? MostPanelsPerStrike { get; init; }

    /// <summary>No losses but those of the lay.</summary>
    public static FeltLosses None { get; } = new()
    {
        RollLengthM = null,
        EndLossMm = 0,
        FaultPercent = 0,
        RejectPercent = 0,
        UnpairedPercent = 0,
        MostPanelsPerStrike = null,
    };
}
