using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using static FeltNest.Files.Usage.UsageDocument;

namespace FeltNest.Files.Usage;

/// <summary>Columns of <c>usage.csv</c>: a line a cause, and the whole last.</summary>
internal static class UsageListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("usage.csv")
        .Text(new WordField("cause", [.. PartFields.Cause.Words, "whole"], PartFields.Cause.Meaning), l => l.Cause)
        .Number(PartFields.Quantity, l => l.Quantity)
        .Text(new TextField("unit", "of the quantity"), l => l.Unit)
        .Number(PartFields.PercentOfStandard, l => l.PercentOfStandard)
        .Money(PartFields.Money, l => l.Money)
        .Text(new CurrencyField("currency", "of the money") { OrNull = true }, l => l.Currency)
        .Number(PartFields.StandardLossPercent, l => l.StandardLossPercent)
        .Number(PartFields.ActualLossPercent, l => l.ActualLossPercent);

    /// <summary>A cause, or the whole.</summary>
    internal sealed record Line
    {
        public required string Cause { get; init; }

        public required double Quantity { get; init; }

        public required string Unit { get; init; }

        public required double PercentOfStandard { get; init; }

        public required decimal? Money { get; init; }

        public required string? Currency { get; init; }

        public double? StandardLossPercent { get; init; }

        public double? ActualLossPercent { get; init; }
    }
}
