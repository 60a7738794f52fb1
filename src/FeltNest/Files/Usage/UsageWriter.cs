using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using FeltNest.Files.Csv;
using FeltNest.Files.Json;
using FeltNest.Yield;

namespace FeltNest.Files.Usage;

/// <summary>Writes the difference between felt used and standard as JSON (schema feltnest/usage/1) and as CSV.</summary>
public static class UsageWriter
{
    private static readonly string[] Names =
    [
        "cause", "quantity", "unit", "percentOfStandard", "money", "currency", "standardLossPercent", "actualLossPercent",
    ];

    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(UsageVariance variance)
    {
        using JsonOutput json = new();
        json.Text("schema", SchemaName.Usage)
            .Number("balls", variance.Balls)
            .Text("unit", PriceUnits.WordOf(variance.Unit))
            .Text("currency", variance.Currency)
            .Object("standard", item => Felt(item, variance.Standard).Number("cost", (double?)variance.StandardCost))
            .Object("actual", item => Felt(item, variance.Actual).Number("cost", (double?)variance.ActualCost))
            .Object("difference", item => item
                .Number("quantity", variance.MoreQuantity)
                .Number("percent", variance.MorePercent)
                .Number("money", (double?)variance.MoreMoney))
            .Objects("parts", variance.Parts, (item, part) => item
                .Text("cause", EnumWord.Of(part.Cause))
                .Number("quantity", part.Quantity)
                .Number("percentOfStandard", part.Percent)
                .Number("money", (double?)part.Money)
                .Number("standardLossPercent", part.Standard)
                .Number("actualLossPercent", part.Actual))
            .Texts("notRecorded", variance.NotRecorded.Select(cause => EnumWord.Of(cause)))
            .Objects("rolls", variance.Rolls, (item, roll) => item
                .Text("roll", roll.Actual.Roll)
                .Number("metres", roll.Actual.Metres)
                .Number("goodPanels", roll.Actual.GoodPanels)
                .Number("balls", roll.Balls)
                .Number("widthMm", roll.Actual.WidthMm)
                .Number("rowsPercent", roll.RowsPercent)
                .Number("endsM", roll.Actual.EndsM)
                .Number("faultPanels", roll.Actual.FaultPanels)
                .Number("rejectedPanels", roll.Actual.RejectedPanels)
                .Number("unpairedPanels", roll.Actual.UnpairedPanels)
                .Number("metresPerThousandBalls", Finite(roll.PerThousandBalls.Metres))
                .Number("morePercent", Finite(roll.MorePercent))
                .Texts("signed", roll.Actual.SignedBy));
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
        .Number("metres", felt.Metres)
        .Number("squareMetres", felt.SquareMetres)
        .Number("kilograms", felt.Kilograms);
}
