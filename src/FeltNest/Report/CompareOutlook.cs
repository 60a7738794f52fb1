using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Findings;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a comparison says of all figures that may be off together, and of what money could be spent on.</summary>
internal static class CompareOutlook
{
    private const int MostShares = 8;

    /// <summary>Adds both to a table.</summary>
    public static void Add(IFindings table, Comparison comparison)
    {
        if (comparison.Outlook is { } outlook)
        {
            Bands(table, comparison, outlook);
            Shares(table, comparison, outlook);
        }

        Years(table, comparison);
    }

    private static void Bands(IFindings table, Comparison comparison, CostOutlook outlook)
    {
        table.Heading($"All stated ranges together, thousand good balls, {comparison.Best.Sheet!.Currency}");
        FindingTable bands = new(
            "  name                  1 in 20    half   19 in 20   worst  cheapest in",
            ["name", "1 in 20", "half", "19 in 20", "worst", "cheapest in, %"]);
        foreach (RowOutlook row in outlook.Rows.OrderByDescending(row => row.CheapestPercent).Take(CompareReport.MostRows))
        {
            bands.Add(
                Invariant(
                    $"  {Short(row.Name, 20),-20}{row.P5,9:0.00}{row.P50,9:0.00}{row.P95,10:0.00}{row.Most,9:0.00}"
                        + $"{row.CheapestPercent,9:0.0} %"),
                row.Name, Invariant($"{row.P5:0.00}"), Invariant($"{row.P50:0.00}"), Invariant($"{row.P95:0.00}"),
                Invariant($"{row.Most:0.00}"), Invariant($"{row.CheapestPercent:0.0}"));
        }

        table.Table(bands);
        table.Note(Invariant(
            $"Of {outlook.Samples} sets of figures drawn over their ranges, 1 in 20 costs less than the first column, 19 in 20 less "
                + $"than the "
                + $"third. Worst: every figure at its dear end. The layouts stay as they are taken."));
    }

    private static void Shares(IFindings table, Comparison comparison, CostOutlook outlook)
    {
        table.Heading($"Which figure to measure next: share of the spread of {comparison.Best.Case.Name}");
        foreach (SpreadShare share in outlook.Shares.Take(MostShares))
        {
            table.Line(share.Figure, Invariant($"{share.Percent:0.0} %"));
        }

        if (comparison.Question.Costs?.Correlations.Count > 0)
        {
            table.Note("Figures that go together share their part: the shares may add to more than 100 %.");
        }
    }

    private static void Years(IFindings table, Comparison comparison)
    {
        if (comparison.Years.Count == 0)
        {
            return;
        }

        double thousands = comparison.Question.Costs!.AnnualBalls!.Value / 1000;
        string interest = comparison.Question.Costs.InterestPercent is { } percent
            ? Invariant($"{comparison.Question.Costs.HorizonYears:0.##} years at {percent:0.##} %")
            : "no interest stated";
        string kept = comparison.Rows[0].Kept is null ? string.Empty : " with the kept die";
        table.Heading(Invariant($"What money could be spent on: {thousands:0.###} thousand balls a year, {interest}"));
        FindingTable choices = new(
            "  against what is cut today             outlay   a year    months     value",
            ["against what is cut today", "outlay", "a year", "months", "value"]);
        foreach (YearChoice choice in comparison.Years)
        {
            string months = choice.PaybackMonths is { } pays ? Invariant($"{pays:0.0}") : "never";
            string value = choice.NetPresentValue is { } worth ? Invariant($"{worth:0}") : "-";
            choices.Add(
                Invariant($"  {Short(choice.What, 34),-34}{choice.Outlay,10:0}{choice.SavedPerYear,9:0}{months,10}{value,10}"),
                choice.What, Invariant($"{choice.Outlay:0}"), Invariant($"{choice.SavedPerYear:0}"), months, value);
        }

        table.Table(choices);
        table.Note(
            $"Today: {comparison.Rows[0].Case.Name}, the first in the list{kept}. Outlay: the die. A year: saved, wear of dies left "
                + $"out. Months: "
                + "until the outlay is saved. Value: present value of the savings less the outlay.");
    }

    private static string Short(string text, int most) => text.Length <= most ? text : text[..(most - 2)] + "..";
}
