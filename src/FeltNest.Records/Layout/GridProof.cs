namespace FeltNest.Layout;

/// <summary>The grid on which no better row layout exists.</summary>
public sealed record GridProof
{
    /// <summary>Step of the tilts, degrees.</summary>
    public required double AngleStepDeg { get; init; }

    /// <summary>Step of the pitches, mm.</summary>
    public required double PitchStepMm { get; init; }
}
