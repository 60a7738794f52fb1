using FeltNest.Cost.Compare;

namespace FeltNest.Page.Answers;

/// <summary>An offer beside the others.</summary>
internal sealed record OfferAnswer
{
    public required string Name { get; init; }

    public required int Rank { get; init; }

    public required double WidthMm { get; init; }

    public required double PanelsPerMetre { get; init; }

    public required double WastePercent { get; init; }

    public required double Metres { get; init; }

    public required double SquareMetres { get; init; }

    public required double? Kilograms { get; init; }

    public required decimal? Cost { get; init; }

    public required string? Currency { get; init; }

    /// <summary>The answer of a row.</summary>
    public static OfferAnswer Of(CompareRow row) => new()
    {
        Name = row.Case.Name,
        Rank = row.Rank,
        WidthMm = row.Case.WidthMm,
        PanelsPerMetre = row.Yield.PanelsPerMetre,
        WastePercent = row.Yield.WastePercent,
        Metres = row.Account.PerThousandBalls.Metres,
        SquareMetres = row.Account.PerThousandBalls.SquareMetres,
        Kilograms = row.Account.PerThousandBalls.Kilograms,
        Cost = row.Total,
        Currency = row.Sheet?.Currency,
    };
}
