namespace FeltNest.Layout;

/// <summary>The grid on which no better row layout exists.</summary>
/// <param name="AngleStepDeg">Step of the tilts, degrees.</param>
/// <param name="PitchStepMm">Step of the pitches, mm.</param>
public sealed record GridProof(double AngleStepDeg, double PitchStepMm);
