using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using FeltNest.Files.Json;
using FeltNest.Yield;
using static FeltNest.Files.Usage.UsageDocument;

namespace FeltNest.Files.Usage;

/// <summary>Writes the difference between felt used and standard as JSON (schema feltnest/usage/1) and as CSV.</summary>
internal static class UsageWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(UsageVariance variance)
    {
        using JsonOutput json = new(UsageDocument.Document);
        json.Number(UsageDocument.Balls, variance.Balls)
            .Text(UsageDocument.Unit, PriceUnits.WordOf(variance.Unit))
            .Text(UsageDocument.Currency, variance.Currency)
            .Object(
                UsageDocument.Standard, item => Felt(item, variance.Standard).Number(StandardFields.Cost, (double?)variance.StandardCost))
            .Object(UsageDocument.Actual, item => Felt(item, variance.Actual).Number(StandardFields.Cost, (double?)variance.ActualCost))
            .Object(UsageDocument.Difference, item => item
                .Number(DifferenceFields.Quantity, variance.MoreQuantity)
                .Number(DifferenceFields.Percent, variance.MorePercent)
                .Number(DifferenceFields.Money, (double?)variance.MoreMoney))
            .Objects(UsageDocument.Parts, variance.Parts, (item, part) => item
                .Text(PartFields.Cause, EnumWord.Of(part.Cause))
                .Number(PartFields.Quantity, part.Quantity)
                .Number(PartFields.PercentOfStandard, part.Percent)
                .Number(PartFields.Money, (double?)part.Money)
                .Number(PartFields.StandardLossPercent, part.Standard)
                .Number(PartFields.ActualLossPercent, part.Actual))
            .Texts(UsageDocument.NotRecorded, variance.NotRecorded.Select(cause => EnumWord.Of(cause)))
            .Objects(UsageDocument.Rolls, variance.Rolls, (item, roll) => item
                .Text(RollFields.Roll, roll.Actual.Roll)
                .Number(RollFields.Metres, roll.Actual.Metres)
                .Number(RollFields.GoodPanels, roll.Actual.GoodPanels)
                .Number(RollFields.Balls, roll.Balls)
                .Number(RollFields.WidthMm, roll.Actual.WidthMm)
                .Number(RollFields.RowsPercent, roll.RowsPercent)
                .Number(RollFields.EndsM, roll.Actual.EndsM)
                .Number(RollFields.FaultPanels, roll.Actual.FaultPanels)
                .Number(RollFields.RejectedPanels, roll.Actual.RejectedPanels)
                .Number(RollFields.UnpairedPanels, roll.Actual.UnpairedPanels)
                .Number(RollFields.MetresPerThousandBalls, Finite(roll.PerThousandBalls.Metres))
                .Number(RollFields.MorePercent, Finite(roll.MorePercent))
                .Texts(RollFields.Signed, roll.Actual.SignedBy));
        return json.Finish();
    }

    /// <summary>The CSV file's bytes: a line a cause, and the whole last.</summary>
    public static byte[] Csv(UsageVariance variance) =>
        UsageListing.Columns.Csv([.. variance.Parts.Select(part => Line(variance, part)), Whole(variance)]);

    private static UsageListing.Line Line(UsageVariance variance, UsagePart part) => new()
    {
        Cause = EnumWord.Of(part.Cause),
        Quantity = part.Quantity,
        Unit = PriceUnits.WordOf(variance.Unit),
        PercentOfStandard = part.Percent,
        Money = part.Money,
        Currency = variance.Currency,
        StandardLossPercent = part.Standard,
        ActualLossPercent = part.Actual,
    };

    private static UsageListing.Line Whole(UsageVariance variance) => new()
    {
        Cause = "whole",
        Quantity = variance.MoreQuantity,
        Unit = PriceUnits.WordOf(variance.Unit),
        PercentOfStandard = variance.MorePercent,
        Money = variance.MoreMoney,
        Currency = variance.Currency,
    };

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    private static JsonOutput Felt(JsonOutput item, FeltUsage felt) => item
        .Number(StandardFields.Metres, felt.Metres)
        .Number(StandardFields.SquareMetres, felt.SquareMetres)
        .Number(StandardFields.Kilograms, felt.Kilograms);
}
