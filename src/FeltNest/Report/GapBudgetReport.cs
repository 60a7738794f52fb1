using FeltNest.Ball;
using FeltNest.Ball.Tolerance;
using FeltNest.Panel.Budget;

namespace FeltNest.Report;

/// <summary>The table a budget of the seam gap prints.</summary>
internal static class GapBudgetReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(BallSpec ball, GapBudget budget)
    {
        TextTable table = new();
        table.Heading($"{ball.Name}: budget of the seam gap")
            .Line("tolerances read as", EnumWord.Of(budget.ReadAs), ReadingWords(budget.ReadAs))
            .Line("balls counted", FormattableString.Invariant($"{budget.Balls}"), "drawn with a fixed seed");
        string range = budget.Adhesive is { } adhesive
            ? FormattableString.Invariant($"{adhesive.LeastMm:0.##} to {adhesive.MostMm:0.##} mm")
            : "not stated";
        table.Line("adhesive bridges", range, "seam.adhesiveLeastMm, seam.adhesiveMostMm");
        State(table, "At fitting, as cut, edges free", budget, budget.AtFitting);
        if (budget.Shrinks)
        {
            State(table, "After cure, edges free", budget, budget.AfterCure);
        }
        else
        {
            table.Note("After cure the same: the ball file states no shrinkage.");
        }

        if (budget.NotStated.Count > 0)
        {
            table.Note($"Not in the budget, as the ball file does not state them: {string.Join(", ", budget.NotStated)}.");
        }

        return table.Note("Felt, die and angle are taken to be off alike on both panels of a ball; each panel is placed for itself.")
            .Note("Bending, wrinkling and contact are not modelled: prove it on balls.")
            .ToString();
    }

    /// <summary>What a reading of tolerances means.</summary>
    public static string ReadingWords(ToleranceReading reading) => reading switch
    {
        ToleranceReading.Uniform => "every value within the plus-minus is as likely as any other",
        _ => "normal, the plus-minus is two standard deviations",
    };

    private static void State(TextTable table, string heading, GapBudget budget, GapState state)
    {
        table.Heading(heading);
        Range(table, "with nothing off", state.NominalLeastMm, state.NominalMostMm, budget);
        Range(table, "worst case", state.WorstLeastMm, state.WorstMostMm, budget);
        Range(table, "root sum square", state.RootLeastMm, state.RootMostMm, budget);
        Spread(table, "least gap of a ball", state.Least);
        Spread(table, "greatest gap of a ball", state.Most);
        table.Row(Cells("buy down in this order", "plus-minus", "moves mm", "variance %", "halved wins %"));
        foreach (GapShare share in state.Shares)
        {
            GapSource source = budget.Sources[share.Source];
            table.Row(Cells(
                $"{share.Rank} {source.Words}",
                FormattableString.Invariant($"{source.PlusMinus:0.####} {source.Unit}").TrimEnd(),
                FormattableString.Invariant($"{share.GreatestMm:0.000}"),
                FormattableString.Invariant($"{share.VariancePercent:0.0}"),
                share.GainPercent is { } gain ? FormattableString.Invariant($"{gain:0.0}") : "-"));
        }

        foreach (string sentence in GapWords.Of(budget, state))
        {
            table.Note(sentence);
        }
    }

    private static void Range(TextTable table, string name, double least, double most, GapBudget budget) => table.Line(
        name, FormattableString.Invariant($"{least:0.00} to {most:0.00} mm"),
        $"anywhere round the seam: {GapWords.Verdict(budget.Adhesive, least, most)}");

    private static void Spread(TextTable table, string name, GapSpread spread) => table.Line(
        name, FormattableString.Invariant($"{spread.MeanMm:0.00} mm"),
        FormattableString.Invariant($"mean; 90 in 100 balls {spread.Low5Mm:0.00} to {spread.High5Mm:0.00} mm"));

    private static string Cells(string name, string off, string moves, string variance, string gain) =>
        $"{name,-31}{off,13}{moves,10}{variance,12}{gain,14}";
}
