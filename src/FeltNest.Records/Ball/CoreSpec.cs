namespace FeltNest.Ball;

/// <summary>The rubber core.</summary>
public sealed record CoreSpec
{
    /// <summary>Outside diameter, mm, 20 to 200: below 20 the felt is thicker than it can bend, above 200 it is no ball of this
    /// kind.</summary>
    public required double OuterDiameterMm { get; init; }

    /// <summary>Mass, g.</summary>
    public required double MassG { get; init; }
}
