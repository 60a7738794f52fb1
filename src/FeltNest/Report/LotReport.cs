using System.Globalization;
using FeltNest.Panel.Lot;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>The table that a die against a new lot of felt prints.</summary>
internal static class LotReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(string outline, LotResult lot)
    {
        TextTable table = new();
        table.Heading($"{outline} on {lot.Before.Name}: {LotWords.NameOf(lot.Before)} against {LotWords.NameOf(lot.After)}");
        foreach (string words in LotWords.Of(lot))
        {
            table.Note(words);
        }

        table.Heading("What the new lot brings").Row($"{"figure",-34}{"before",10}{"new",10}{"mean gap, mm",14}");
        foreach (LotChange change in lot.Changes)
        {
            string moved = change.MeanGapMm is { } gap ? Invariant($"+- {Math.Abs(gap):0.000}") : "-";
            table.Row(
                $"{change.Field,-34}{Invariant($"{change.Before:0.###}"),10}{Invariant($"{change.After:0.###}"),10}{moved,14}");
        }

        table.Note("Mean gap: what the spread of the new figure leaves open of the mean gap after the cure.");
        State(table, "Gap at fitting, edge free, mm", lot.AtFitting);
        State(table, "Gap after cure, edge free, mm", lot.AfterCure);
        return table
            .Note("The ball gets all figures that the felt file holds; the others stay as the ball has them. Bending, wrinkling and "
                + "contact "
                + "are not modelled: wrap a trial ball.")
            .ToString();
    }

    private static void State(TextTable table, string heading, LotState state)
    {
        table.Heading(heading).Row($"{"",-20}{"before",10}{"new",10}{"change",10}");
        Line("mean", gap => gap.MeanMm);
        Line("at the waists", gap => gap.WaistMm);
        Line("at the tips", gap => gap.TipMm);
        Line("least", gap => gap.LeastMm);
        Line("greatest", gap => gap.GreatestMm);
        Line("outside glue, %", gap => gap.OutsidePercent, "0.0");

        void Line(string name, Func<LotGap, double?> of, string format = "0.00")
        {
            double? before = of(state.Before);
            double? after = of(state.After);
            string change = $"+{format};-{format};{format}";
            table.Row($"{name,-20}{Number(before, format),10}{Number(after, format),10}{Number(after - before, change),10}");
        }
    }

    private static string Number(double? value, string format) =>
        value is { } number ? number.ToString(format, CultureInfo.InvariantCulture) : "not met";
}
