namespace FeltNest.Yield;

/// <summary>Panels that can pair to one ball: the same part at the same angle to the warp (mod 180 degrees; one-way lays mod 360).</summary>
/// <param name="Part">Index into the layout's parts.</param>
/// <param name="AngleDeg">The angle, degrees.</param>
public readonly record struct PairingClass(int Part, double AngleDeg);
