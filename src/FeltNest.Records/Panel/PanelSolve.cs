namespace FeltNest.Panel;

/// <summary>How a flat panel was computed: its certificate.</summary>
public sealed record PanelSolve
{
    /// <summary>Polynomial degree of the flat map.</summary>
    public required int Degree { get; init; }

    /// <summary>Unknowns solved for.</summary>
    public required int Unknowns { get; init; }

    /// <summary>Newton steps; 0 for a linear or an explicit flattening.</summary>
    public required int Iterations { get; init; }

    /// <summary>Greatest violation left of the conditions solved, at unit radius and unit stiffness.</summary>
    public required double Residual { get; init; }

    /// <summary>Torque with which the chord between the tips is held at its angle to the warp, N mm, spread over the panel: the slope
    /// of the energy against that angle in radians. 0 where symmetry holds it.</summary>
    public required double ChordTorqueNmm { get; init; }
}
