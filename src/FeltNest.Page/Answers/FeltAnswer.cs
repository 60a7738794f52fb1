using FeltNest.Yield;

namespace FeltNest.Page.Answers;

/// <summary>Felt for a thousand balls: of the lay alone, and bought with all losses. Null where there is none, or no pair.</summary>
internal sealed record FeltAnswer
{
    public required double? LayMetres { get; init; }

    public required double? LaySquareMetres { get; init; }

    public required double? LayKilograms { get; init; }

    public required double? Metres { get; init; }

    public required double? SquareMetres { get; init; }

    public required double? Kilograms { get; init; }

    /// <summary>The answer for both.</summary>
    public static FeltAnswer Of(FeltUsage lay, FeltUsage? bought) => new()
    {
        LayMetres = Finite(lay.Metres),
        LaySquareMetres = Finite(lay.SquareMetres),
        LayKilograms = Finite(lay.Kilograms),
        Metres = Finite(bought?.Metres),
        SquareMetres = Finite(bought?.SquareMetres),
        Kilograms = Finite(bought?.Kilograms),
    };

    private static double? Finite(double? value) => value is { } number && double.IsFinite(number) ? number : null;
}
