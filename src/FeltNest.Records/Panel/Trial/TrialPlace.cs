namespace FeltNest.Panel.Trial;

/// <summary>One numbered place of the seam, over all balls.</summary>
internal sealed record TrialPlace
{
    /// <summary>Its number, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Its seam parameter on panel A, radians.</summary>
    public required double S { get; init; }

    /// <summary>Readings of it.</summary>
    public required int Readings { get; init; }

    /// <summary>Mean of the readings, mm; null where none was made.</summary>
    public required double? ReadMm { get; init; }

    /// <summary>Gap that the panel alone gives there, placed true.</summary>
    public required TrialAmount Fitted { get; init; }

    /// <summary>How far the edge of panel A is moved there, mm outwards.</summary>
    public required TrialAmount Correction { get; init; }
}
