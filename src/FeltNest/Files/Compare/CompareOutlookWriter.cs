using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Json;
using static FeltNest.Files.Compare.CompareFindingFields;

namespace FeltNest.Files.Compare;

/// <summary>Writes what a comparison says of figures that may be off, and of a year.</summary>
internal static class CompareOutlookWriter
{
    /// <summary>All figures that may be off, taken together.</summary>
    public static void Outlook(JsonOutput json, CostOutlook outlook) => json
        .Number(OutlookFields.Samples, outlook.Samples)
        .Objects(OutlookFields.Rows, outlook.Rows, (item, row) => item
            .Text(RowOutlookFields.Name, row.Name)
            .Number(RowOutlookFields.P5, row.P5)
            .Number(RowOutlookFields.P50, row.P50)
            .Number(RowOutlookFields.P95, row.P95)
            .Number(RowOutlookFields.Mean, row.Mean)
            .Number(RowOutlookFields.Deviation, row.Deviation)
            .Number(RowOutlookFields.Least, row.Least)
            .Number(RowOutlookFields.Most, row.Most)
            .Number(RowOutlookFields.CheapestPercent, row.CheapestPercent))
        .Objects(OutlookFields.Shares, outlook.Shares, (item, share) => item
            .Text(SpreadShareFields.Figure, share.Figure)
            .Number(SpreadShareFields.Percent, share.Percent));

    /// <summary>What savings are reckoned with.</summary>
    public static void Terms(JsonOutput json, CostInputs costs) => json
        .Number(YearTermFields.AnnualBalls, costs.AnnualBalls)
        .Number(YearTermFields.InterestPercent, (double?)costs.InterestPercent)
        .Number(YearTermFields.HorizonYears, costs.HorizonYears);

    /// <summary>Something to spend money on.</summary>
    public static void Year(JsonOutput json, YearChoice choice) => json
        .Text(YearFields.What, choice.What)
        .Number(YearFields.Outlay, Money(choice.Outlay))
        .Number(YearFields.SavedPerThousandBalls, Money(choice.SavedPerThousandBalls))
        .Number(YearFields.SavedPerYear, Money(choice.SavedPerYear))
        .Number(YearFields.PaybackMonths, choice.PaybackMonths)
        .Number(YearFields.NetPresentValue, Money(choice.NetPresentValue));

    private static double? Money(decimal? value) => value is { } money ? (double)Math.Round(money, 6) : null;
}
