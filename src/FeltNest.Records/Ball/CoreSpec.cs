namespace FeltNest.Ball;

/// <summary>The rubber core.</summary>
/// <param name="OuterDiameterMm">Outside diameter, mm, 20 to 200: below 20 the felt is thicker than it can bend, above 200 it is no ball of
/// this kind.</param>
/// <param name="MassG">Mass, g.</param>
public sealed record CoreSpec(double OuterDiameterMm, double MassG);
