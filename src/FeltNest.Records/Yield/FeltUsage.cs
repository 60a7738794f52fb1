namespace FeltNest.Yield;

/// <summary>Felt per thousand balls, or infinite where the layout holds no pair.</summary>
public sealed record FeltUsage
{
    /// <summary>Running metres.</summary>
    public required double Metres { get; init; }

    /// <summary>Square metres of full roll width.</summary>
    public required double SquareMetres { get; init; }

    /// <summary>Kilograms, or null when the felt's mass is not known.</summary>
    public required double? Kilograms { get; init; }
}
