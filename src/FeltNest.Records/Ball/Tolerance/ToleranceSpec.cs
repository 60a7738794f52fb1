namespace FeltNest.Ball.Tolerance;

/// <summary>How far the parts of a ball may lie off their stated values, each plus and minus; 0 where nothing is known.</summary>
/// <param name="CoreDiameterMm">Core diameter, mm.</param>
/// <param name="CoreMassG">Core mass, g.</param>
/// <param name="CementThicknessMm">Cement thickness, mm.</param>
/// <param name="CementMassPerAreaGsm">Cement mass per area, g/m2.</param>
/// <param name="FeltFinishedThicknessMm">Felt thickness on the finished ball, mm.</param>
/// <param name="FeltMassPerAreaGsm">Felt mass per area, g/m2.</param>
public sealed record ToleranceSpec(
    double CoreDiameterMm, double CoreMassG, double CementThicknessMm, double CementMassPerAreaGsm, double FeltFinishedThicknessMm,
    double FeltMassPerAreaGsm);
