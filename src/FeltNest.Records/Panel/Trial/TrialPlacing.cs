namespace FeltNest.Panel.Trial;

/// <summary>What one ball shows that no identical centred panels can: how the first panel lies against the second.</summary>
internal sealed record TrialPlacing
{
    /// <summary>Name of the ball.</summary>
    public required string Ball { get; init; }

    /// <summary>Readings of it.</summary>
    public required int Readings { get; init; }

    /// <summary>How far panel A lies along its own length, towards place 5, against panel B.</summary>
    public required TrialAmount Along { get; init; }

    /// <summary>How far it lies across, towards place 9.</summary>
    public required TrialAmount Across { get; init; }

    /// <summary>How far it is turned about its pole, counter-clockwise seen from outside: the move at its tips.</summary>
    public required TrialAmount Turn { get; init; }

    /// <summary>Wave of the gap that is widest on the waists of panel A and least on its tips: unlike panels, or felt pulled harder one
    /// way.</summary>
    public required TrialAmount Unlike { get; init; }

    /// <summary>What is left of the readings of this ball, rms.</summary>
    public required double LeftRmsMm { get; init; }
}
