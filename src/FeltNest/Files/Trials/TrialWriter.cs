using FeltNest.Ball;
using FeltNest.Files.Json;
using FeltNest.Files.Outlines;
using FeltNest.Panel;
using FeltNest.Panel.Trial;
using static FeltNest.Files.Trials.TrialDocument;

namespace FeltNest.Files.Trials;

/// <summary>Writes what a trial wrap shows (schema feltnest/trial/1), and the corrected panel as an outline (feltnest/outline/1).</summary>
internal static class TrialWriter
{
    // Long because it is one list of fields in the order of the file.
    /// <summary>The file's bytes.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="readings">Name of the readings.</param>
    /// <param name="trial">What was found.</param>
    public static byte[] Write(BallSpec ball, string readings, TrialResult trial)
    {
        TrialFinding found = trial.Finding;
        using JsonOutput json = new(TrialDocument.Document);
        json.Text(TrialDocument.Ball, ball.Name)
            .Text(TrialDocument.Readings, readings)
            .Number(TrialDocument.AimMm, found.AimMm)
            .Texts(TrialDocument.Diagnosis, TrialWords.Of(found))
            .Number(TrialDocument.NoiseMm, found.NoiseMm)
            .Number(TrialDocument.Freedom, found.Freedom)
            .Object(TrialDocument.Panel, item => Test(item, found.Panel))
            .Object(TrialDocument.Placing, item => Test(item, found.Placing))
            .Object(TrialDocument.Unlike, item => Test(item, found.Unlike))
            .ObjectOrNull(TrialDocument.BallsDiffer, found.BallsDiffer, Test)
            .Objects(TrialDocument.Parts, found.Parts, (item, part) => Amount(item, part.Amount)
                .Number(PartFields.Order, part.Wave.Order)
                .Flag(PartFields.Sine, part.Wave.IsSine))
            .Number(TrialDocument.Waists, found.Waists)
            .ObjectOrNull(TrialDocument.Seam, found.Seam, (item, seam) => Amount(item, seam))
            .Objects(TrialDocument.Balls, found.Balls, (item, placing) => item
                .Text(BallFields.Ball, placing.Ball)
                .Number(BallFields.Readings, placing.Readings)
                .Object(BallFields.Along, fields => Amount(fields, placing.Along))
                .Object(BallFields.Across, fields => Amount(fields, placing.Across))
                .Object(BallFields.Turn, fields => Amount(fields, placing.Turn))
                .Object(BallFields.Unlike, fields => Amount(fields, placing.Unlike))
                .Number(BallFields.LeftRmsMm, placing.LeftRmsMm))
            .Objects(TrialDocument.Places, found.Places, (item, place) => item
                .Number(PlaceFields.Number, place.Number)
                .Number(PlaceFields.S, place.S)
                .Number(PlaceFields.Readings, place.Readings)
                .Number(PlaceFields.ReadMm, place.ReadMm)
                .Number(PlaceFields.FittedMm, place.Fitted.Mm)
                .Number(PlaceFields.FittedIntervalMm, place.Fitted.IntervalMm)
                .Number(PlaceFields.CorrectionMm, place.Correction.Mm)
                .Number(PlaceFields.CorrectionIntervalMm, place.Correction.IntervalMm)
                .Number(PlaceFields.LeftMm, found.LeftMm(place)))
            .Object(TrialDocument.Cut, fields => Measure(fields, trial.Cut))
            .ObjectOrNull(TrialDocument.Corrected, trial.Corrected, Measure);
        return json.Finish();
    }

    /// <summary>The corrected panel as an outline to lay and to order a die of.</summary>
    public static byte[] Outline(string name, FlatPanel panel)
    {
        using JsonOutput json = new(OutlineDocument.Document);
        json.Text(OutlineDocument.Name, name).Arcs(OutlineDocument.Arcs, panel.Arcs.Vertices);
        return json.Finish();
    }

    private static void Test(JsonOutput json, TrialTest test) => json
        .Number(TestFields.Ratio, test.Ratio)
        .Number(TestFields.Above, test.Above)
        .Number(TestFields.Below, test.Below)
        .Number(TestFields.Chance, test.Chance)
        .Flag(TestFields.Found, test.Found);

    private static JsonOutput Amount(JsonOutput json, TrialAmount amount) => json
        .Number(AmountFields.Mm, amount.Mm)
        .Number(AmountFields.SpreadMm, amount.SpreadMm)
        .Number(AmountFields.IntervalMm, amount.IntervalMm);

    private static void Measure(JsonOutput json, FlatPanel panel) => json
        .Number(MeasureFields.LengthMm, panel.LengthMm)
        .Number(MeasureFields.WidthMm, panel.WidthMm)
        .Number(MeasureFields.WaistMm, panel.WaistMm)
        .Number(MeasureFields.AreaMm2, panel.AreaMm2);
}
