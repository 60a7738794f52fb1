using FeltNest.Files.Csv;

namespace FeltNest.Files.Orders;

/// <summary>Columns of <c>dies-after.csv</c> and <c>dies-now.csv</c>: those of a list of dies.</summary>
internal static class DiesAfterListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("dies-after.csv")
        .Text(DiesListing.Die, l => l.Die)
        .Text(DiesListing.Ball, l => l.Ball)
        .Text(DiesListing.Layout, l => l.Layout)
        .Whole(DiesListing.StrikesLeft, l => l.StrikesLeft)
        .Whole(DiesListing.Repeats, l => l.Repeats)
        .Whole(DiesListing.Band, l => l.Band)
        .Number(DiesListing.MostWidthMm, l => l.MostWidthMm)
        .Money(DiesListing.MakePrice, l => l.MakePrice)
        .Whole(DiesListing.LifeStrikes, l => l.LifeStrikes > 0 ? l.LifeStrikes : null)
        .Whole(DiesListing.ReRules, l => l.ReRules)
        .Money(DiesListing.ReRulePrice, l => l.ReRules > 0 ? l.ReRulePrice : null)
        .Text(DiesListing.From, l => l.From)
        .Whole(DiesListing.MakeDays, l => l.MakeDays);

    /// <summary>A die.</summary>
    internal sealed record Line
    {
        public required string Die { get; init; }

        public required string Ball { get; init; }

        /// <summary>Path of its layout as seen from the list.</summary>
        public required string Layout { get; init; }

        public required int StrikesLeft { get; init; }

        public required int? Repeats { get; init; }

        public required int? Band { get; init; }

        public required double MostWidthMm { get; init; }

        public required decimal? MakePrice { get; init; }

        public required int LifeStrikes { get; init; }

        public required int ReRules { get; init; }

        public required decimal ReRulePrice { get; init; }

        /// <summary>Day from which on it is there, or null.</summary>
        public required string? From { get; init; }

        public required int MakeDays { get; init; }

        /// <summary>The line of a die.</summary>
        /// <param name="entry">The die.</param>
        /// <param name="layout">Path of its layout as seen from the list.</param>
        public static Line Of(DieEntry entry, string layout) => new()
        {
            Die = entry.Die.Name,
            Ball = entry.Die.Ball,
            Layout = layout,
            StrikesLeft = entry.Die.StrikesLeft,
            Repeats = entry.Die.Drawn?.Repeats,
            Band = entry.Band,
            MostWidthMm = entry.Die.MostWidthMm,
            MakePrice = entry.Die.MakePrice,
            LifeStrikes = entry.Die.LifeStrikes,
            ReRules = entry.Die.MostReRules,
            ReRulePrice = entry.Die.ReRulePrice,
            From = entry.Die.From is { } day ? OrderPlanWriter.Day(day) : null,
            MakeDays = entry.Die.MakeDays,
        };
    }
}
