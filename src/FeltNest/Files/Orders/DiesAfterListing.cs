using FeltNest.Files.Csv;
using FeltNest.Rolls.Orders;

namespace FeltNest.Files.Orders;

/// <summary>Columns of <c>dies-after.csv</c> and <c>dies-now.csv</c>: those of a list of dies.</summary>
internal static class DiesAfterListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("dies-after.csv")
        .Text(DiesListing.Die, l => l.Die.Name)
        .Text(DiesListing.Ball, l => l.Die.Ball)
        .Text(DiesListing.Layout, l => l.Layout)
        .Whole(DiesListing.StrikesLeft, l => l.Die.StrikesLeft)
        .Whole(DiesListing.Repeats, l => l.Die.Drawn?.Repeats)
        .Whole(DiesListing.Band, l => l.Band)
        .Number(DiesListing.MostWidthMm, l => l.Die.MostWidthMm)
        .Money(DiesListing.MakePrice, l => l.Die.MakePrice)
        .Whole(DiesListing.LifeStrikes, l => l.Die.LifeStrikes > 0 ? l.Die.LifeStrikes : null)
        .Whole(DiesListing.ReRules, l => l.Die.MostReRules)
        .Money(DiesListing.ReRulePrice, l => l.Die.MostReRules > 0 ? l.Die.ReRulePrice : null)
        .Text(DiesListing.From, l => l.Die.From is { } day ? OrderPlanWriter.Day(day) : null)
        .Whole(DiesListing.MakeDays, l => l.Die.MakeDays);

    /// <summary>A die.</summary>
    /// <param name="Die">The die.</param>
    /// <param name="Layout">Path of its layout as seen from the list.</param>
    /// <param name="Band">Band of it, or null.</param>
    internal readonly record struct Line(CutDie Die, string Layout, int? Band);
}
