using FeltNest.Cost.Compare;

namespace FeltNest.Page.Answers;

/// <summary>An offer beside the others.</summary>
internal sealed record OfferAnswer(
    string Name, int Rank, double WidthMm, double PanelsPerMetre, double WastePercent, double Metres, double SquareMetres,
    double? Kilograms, decimal? Cost, string? Currency)
{
    /// <summary>The answer of a row.</summary>
    public static OfferAnswer Of(CompareRow row) => new(
        row.Case.Name, row.Rank, row.Case.WidthMm, row.Yield.PanelsPerMetre, row.Yield.WastePercent, row.Account.PerThousandBalls.Metres,
        row.Account.PerThousandBalls.SquareMetres,
        row.Account.PerThousandBalls.Kilograms, row.Total, row.Sheet?.Currency);
}
