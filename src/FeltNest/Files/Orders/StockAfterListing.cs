using FeltNest.Cost.Offers;
using FeltNest.Files.Csv;
using FeltNest.Files.Rolls;

namespace FeltNest.Files.Orders;

/// <summary>Columns of <c>stock-after.csv</c> and <c>stock-now.csv</c>: those of a stock list.</summary>
internal static class StockAfterListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("stock-after.csv")
        .Text(StockListing.Roll, l => l.Entry.Roll.Name)
        .Text(StockListing.Felt, l => l.Entry.Roll.Felt)
        .Text(StockListing.Lot, l => l.Entry.Roll.Lot)
        .Number(StockListing.WidthMm, l => Fine(l.Entry.Roll.WidthMm))
        .Number(StockListing.LengthM, l => Fine(l.Entry.Roll.LengthM))
        .Money(StockListing.Price, l => l.Entry.Price.Amount)
        .Text(StockListing.PriceUnit, l => PriceUnits.WordOf(l.Entry.Price.Unit))
        .Text(StockListing.Currency, l => l.Entry.Price.Currency)
        .Text(StockListing.Available, l => l.Entry.Available ? StockListing.There : StockListing.Away)
        .Number(StockListing.MassPerAreaGsm, l => l.Entry.MassPerAreaGsm)
        .Number(StockListing.FaultPercent, l => l.Entry.FaultPercent)
        .Text(StockListing.Received, l => l.Entry.Roll.Received is { } day ? OrderPlanWriter.Day(day) : null)
        .Text(StockListing.NapToward, l => l.Entry.Roll.Nap is { } nap ? NapWord.Of(nap) : null)
        .Text(StockListing.Measured, l => l.Measured);

    // A micrometre of length or width.
    private static double Fine(double value) => Math.Round(value, 6);

    /// <summary>A roll.</summary>
    /// <param name="Entry">Its line.</param>
    /// <param name="Measured">Path of its measured file as seen from the list, or null.</param>
    internal readonly record struct Line(StockEntry Entry, string? Measured);
}
