namespace FeltNest.Panel;

/// <summary>How a flat panel was computed: its certificate.</summary>
/// <param name="Degree">Polynomial degree of the flat map.</param>
/// <param name="Unknowns">Unknowns solved for.</param>
/// <param name="Iterations">Newton steps; 0 for a linear or an explicit flattening.</param>
/// <param name="Residual">Greatest violation left of the conditions solved, at unit radius and unit stiffness.</param>
/// <param name="ChordTorqueNmm">Torque with which the chord between the tips is held at its angle to the warp, N mm, spread over the panel:
/// the slope of the energy against that angle in radians. 0 where symmetry holds it.</param>
public sealed record PanelSolve(int Degree, int Unknowns, int Iterations, double Residual, double ChordTorqueNmm);
