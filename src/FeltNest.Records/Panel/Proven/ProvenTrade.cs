namespace FeltNest.Panel.Proven;

/// <summary>Values changed together: how much the outline changes by it.</summary>
/// <param name="SingularValue">Change of the outline, mm rms, for one step along this direction, with steps of 0.1 (neutral layer), 1 mm
/// (waist) and 1 % (edge limit).</param>
/// <param name="Changes">Change of each value, in its own unit and in the order of the values, that together change the outline by
/// <see cref="ProvenFit.TellableMm"/>.</param>
internal sealed record ProvenTrade(double SingularValue, IReadOnlyList<double> Changes);
