namespace FeltNest.Yield;

/// <summary>Felt per thousand balls, or infinite where the layout holds no pair.</summary>
/// <param name="Metres">Running metres.</param>
/// <param name="SquareMetres">Square metres of full roll width.</param>
/// <param name="Kilograms">Kilograms, or null when the felt's mass is not known.</param>
public sealed record FeltUsage(double Metres, double SquareMetres, double? Kilograms);
