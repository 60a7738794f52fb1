using FeltNest.Yield;

namespace FeltNest.Page.Answers;

/// <summary>Felt for a thousand balls: of the lay alone, and bought with all losses. Null where there is none, or no pair.</summary>
internal sealed record FeltAnswer(
    double? LayMetres, double? LaySquareMetres, double? LayKilograms, double? Metres, double? SquareMetres, double? Kilograms)
{
    /// <summary>The answer for both.</summary>
    public static FeltAnswer Of(FeltUsage lay, FeltUsage? bought) => new(
        Finite(lay.Metres), Finite(lay.SquareMetres), Finite(lay.Kilograms), Finite(bought?.Metres), Finite(bought?.SquareMetres),
        Finite(bought?.Kilograms));

    private static double? Finite(double? value) => value is { } number && double.IsFinite(number) ? number : null;
}
