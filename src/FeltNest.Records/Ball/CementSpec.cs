namespace FeltNest.Ball;

/// <summary>The adhesive layer between core and felt.</summary>
/// <param name="ThicknessMm">Thickness when dry, mm; may be 0.</param>
/// <param name="MassPerAreaGsm">Dry mass per area of core, g/m2; may be 0.</param>
public sealed record CementSpec(double ThicknessMm, double MassPerAreaGsm);
