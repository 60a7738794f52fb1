namespace FeltNest.Ball.Tolerance;

/// <summary>How far the parts of a ball may lie off their stated values, each plus and minus. What is null was not stated: the budget of
/// the seam gap leaves it out and says so, diameter and mass count it as 0.</summary>
public sealed record ToleranceSpec
{
    /// <summary>Core diameter, mm.</summary>
    public double? CoreDiameterMm { get; init; }

    /// <summary>Core mass, g; 0 where nothing is known.</summary>
    public required double CoreMassG { get; init; }

    /// <summary>Cement thickness, mm.</summary>
    public double? CementThicknessMm { get; init; }

    /// <summary>Cement mass per area, g/m2; 0 where nothing is known.</summary>
    public required double CementMassPerAreaGsm { get; init; }

    /// <summary>Felt thickness on the finished ball, mm; 0 where nothing is known.</summary>
    public required double FeltFinishedThicknessMm { get; init; }

    /// <summary>Felt mass per area, g/m2; 0 where nothing is known.</summary>
    public required double FeltMassPerAreaGsm { get; init; }

    /// <summary>Felt thickness as cut, mm.</summary>
    public double? FeltThicknessMm { get; init; }

    /// <summary>Place of the neutral layer, share of the thickness.</summary>
    public double? NeutralLayer { get; init; }

    /// <summary>Modulus along the warp, N/mm.</summary>
    public double? WarpModulusNPerMm { get; init; }

    /// <summary>Modulus along the weft, N/mm.</summary>
    public double? WeftModulusNPerMm { get; init; }

    /// <summary>Shear modulus, N/mm.</summary>
    public double? ShearModulusNPerMm { get; init; }

    /// <summary>Poisson's ratio.</summary>
    public double? Poisson { get; init; }

    /// <summary>Shrinkage in the cure along the warp, points of per cent.</summary>
    public double? CureShrinkWarpPercent { get; init; }

    /// <summary>Shrinkage in the cure along the weft, points of per cent.</summary>
    public double? CureShrinkWeftPercent { get; init; }

    /// <summary>Stretch on application along the warp, points of per cent.</summary>
    public double? ApplicationStretchWarpPercent { get; init; }

    /// <summary>Stretch on application along the weft, points of per cent.</summary>
    public double? ApplicationStretchWeftPercent { get; init; }

    /// <summary>Angle of the cut panel to the warp, degrees.</summary>
    public double? WarpAngleDeg { get; init; }

    /// <summary>How far the die cuts outside its drawing, mm all round.</summary>
    public double? DieOffsetMm { get; init; }

    /// <summary>Placing of each panel along its long axis, mm on the sphere.</summary>
    public double? PlacingAlongMm { get; init; }

    /// <summary>Placing of each panel across its long axis, mm on the sphere.</summary>
    public double? PlacingAcrossMm { get; init; }

    /// <summary>Turn of each panel about its pole, degrees.</summary>
    public double? PlacingTurnDeg { get; init; }

    /// <summary>How the tolerances of the seam gap are read.</summary>
    public ToleranceReading ReadAs { get; init; } = ToleranceReading.Uniform;
}
