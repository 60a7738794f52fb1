namespace FeltNest.Ball;

/// <summary>The adhesive layer between core and felt.</summary>
public sealed record CementSpec
{
    /// <summary>Thickness when dry, mm; may be 0.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Dry mass per area of core, g/m2; may be 0.</summary>
    public required double MassPerAreaGsm { get; init; }
}
