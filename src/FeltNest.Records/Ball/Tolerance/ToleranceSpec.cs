namespace FeltNest.Ball.Tolerance;

/// <summary>How far the parts of a ball may lie off their stated values, each plus and minus; 0 where nothing is known.</summary>
public sealed record ToleranceSpec
{
    /// <summary>Core diameter, mm.</summary>
    public required double CoreDiameterMm { get; init; }

    /// <summary>Core mass, g.</summary>
    public required double CoreMassG { get; init; }

    /// <summary>Cement thickness, mm.</summary>
    public required double CementThicknessMm { get; init; }

    /// <summary>Cement mass per area, g/m2.</summary>
    public required double CementMassPerAreaGsm { get; init; }

    /// <summary>Felt thickness on the finished ball, mm.</summary>
    public required double FeltFinishedThicknessMm { get; init; }

    /// <summary>Felt mass per area, g/m2.</summary>
    public required double FeltMassPerAreaGsm { get; init; }
}
