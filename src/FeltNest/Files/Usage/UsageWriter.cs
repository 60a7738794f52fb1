using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using FeltNest.Files.Csv;
using FeltNest.Files.Json;
using FeltNest.Yield;
using static FeltNest.Files.Usage.UsageDocument;

namespace FeltNest.Files.Usage;

/// <summary>Writes the difference between felt used and standard as JSON (schema feltnest/usage/1) and as CSV.</summary>
internal static class UsageWriter
{
    private static readonly string[] Names =
    [
        "cause", "quantity", "unit", "percentOfStandard", "money", "currency", "standardLossPercent", "actualLossPercent",
    ];

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
    public static byte[] Csv(UsageVariance variance)
    {
        string unit = PriceUnits.WordOf(variance.Unit);
        string currency = variance.Currency ?? string.Empty;
        CsvText text = new CsvText().Line(Names);
        foreach (UsagePart part in variance.Parts)
        {
            text.Line(
                EnumWord.Of(part.Cause), CsvText.Number(part.Quantity), unit, CsvText.Number(part.Percent), CsvText.Money(part.Money),
                currency, CsvText.Number(part.Standard),
                CsvText.Number(part.Actual));
        }

        return text
            .Line(
                "whole", CsvText.Number(variance.MoreQuantity), unit, CsvText.Number(variance.MorePercent),
                CsvText.Money(variance.MoreMoney), currency, string.Empty, string.Empty)
            .Finish();
    }

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    private static JsonOutput Felt(JsonOutput item, FeltUsage felt) => item
        .Number(StandardFields.Metres, felt.Metres)
        .Number(StandardFields.SquareMetres, felt.SquareMetres)
        .Number(StandardFields.Kilograms, felt.Kilograms);
}
