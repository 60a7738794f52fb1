using FeltNest.Ball;
using FeltNest.Panel;
using FeltNest.Panel.Trial;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>The table that the readings of a trial wrap print.</summary>
internal static class TrialReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(BallSpec ball, string readings, TrialResult trial)
    {
        TrialFinding found = trial.Finding;
        TextTable table = new();
        table.Heading($"{readings}: trial wrap of {ball.Name}").Note(TrialWords.Rule);
        foreach (string words in TrialWords.Of(found))
        {
            table.Note(words);
        }

        table.Heading("Readings")
            .Line("balls", Invariant($"{found.Balls.Count}"))
            .Line("noise of a reading", found.NoiseMm, "0.000", "mm", Invariant($"{found.Freedom} freedoms"))
            .Line("drawing", TrialWords.Odds(found.Panel), "chance that noise gives as much")
            .Line("placing", TrialWords.Odds(found.Placing), "likewise")
            .Line("unlike panels or pull", TrialWords.Odds(found.Unlike), "likewise");
        Balls(table, found);
        Places(table, found);
        Panels(table, trial);
        return table
            .Note("Bending, wrinkling and contact are not modelled: wrap a ball of the corrected panel before a die is made.")
            .ToString();
    }

    private static void Balls(TextTable table, TrialFinding found)
    {
        table.Heading("What no panel can mend, mm, with its 95 % interval: panel A against B")
            .Row($"{"ball",-12}{"along",15}{"across",15}{"turn at tip",15}{"unlike",15}");
        foreach (TrialPlacing ball in found.Balls)
        {
            string name = ball.Ball.Length > 11 ? ball.Ball[..11] : ball.Ball;
            table.Row($"{name,-12}{Amount(ball.Along),15}{Amount(ball.Across),15}{Amount(ball.Turn),15}{Amount(ball.Unlike),15}");
        }
    }

    private static string Amount(TrialAmount amount) => Invariant($"{amount.Mm:+0.00;-0.00;0.00} +- {amount.IntervalMm:0.00}");

    private static void Places(TextTable table, TrialFinding found)
    {
        table.Heading("Gap round the seam, mm").Row($"{"place",-8}{"read",9}{"panels alone",17}{"edge moved",17}{"left",9}");
        foreach (TrialPlace place in found.Places)
        {
            table.Row(
                $"{place.Number,-8}{Number(place.ReadMm),9}{Amount(place.Fitted),17}{Amount(place.Correction),17}"
                    + $"{Number(found.LeftMm(place)),9}  {TrialPlaces.Words(place.Number)}".TrimEnd());
        }

        table.Note("Edge moved: of the panel whose seam parameter the place has, outwards above 0. Left: expected, placed as on these "
            + "balls; "
            + Invariant($"placed true {found.AimMm:0.00} mm is expected."));
    }

    private static string Number(double? value) => value is { } mm ? Invariant($"{mm:+0.00;-0.00;0.00}") : "-";

    private static void Panels(TextTable table, TrialResult trial)
    {
        table.Heading("Cut panel");
        if (trial.Corrected is not { } corrected)
        {
            table.Note("Nothing to mend: no corrected panel is written.");
            return;
        }

        Line("length", panel => panel.LengthMm);
        Line("greatest width", panel => panel.WidthMm);
        Line("waist", panel => panel.WaistMm);

        void Line(string name, Func<FlatPanel, double> figure) =>
            table.Line(name, figure(corrected), "0.00", "mm", Invariant($"was {figure(trial.Cut):0.00} mm"));
    }
}
