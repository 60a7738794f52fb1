namespace FeltNest.Panel.Proven;

/// <summary>One value a measured outline was asked for.</summary>
/// <param name="Name">In words.</param>
/// <param name="Field">Field of the ball file it belongs to.</param>
/// <param name="Value">Value found, in the field's unit.</param>
/// <param name="Unit">Unit; empty for a plain ratio.</param>
/// <param name="Spread">How far it can be moved either way, the others following, before the outline changes by
/// <see cref="ProvenFit.TellableMm"/> (rms): outlines that near cannot be told apart.</param>
/// <param name="AtBound">The end of its range at which it stands, in words; null where it stands inside.</param>
public sealed record ProvenValue(string Name, string Field, double Value, string Unit, double Spread, string? AtBound);
