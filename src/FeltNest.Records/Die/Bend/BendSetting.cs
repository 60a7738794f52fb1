namespace FeltNest.Die.Bend;

/// <summary>What a bend is formed to, before it springs back.</summary>
/// <param name="TurnDeg">Angle, degrees, signed as the bend.</param>
/// <param name="InsideRadiusMm">Radius of the inner face, mm.</param>
/// <param name="Tested">Whether the shop's test bends reach that radius.</param>
public sealed record BendSetting(double TurnDeg, double InsideRadiusMm, bool Tested);
