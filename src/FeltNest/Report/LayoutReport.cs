using System.Globalization;
using FeltNest.Layout;
using FeltNest.Layout.Quality;
using FeltNest.Yield;

namespace FeltNest.Report;

/// <summary>The table a layout prints.</summary>
internal static class LayoutReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(RollLayout layout, YieldFigures yields)
    {
        TextTable table = new();
        Roll(table, layout);
        foreach (LayoutBand band in layout.Bands)
        {
            Band(table, layout, band);
        }

        Plies(table, layout);
        Parts(table, layout);
        Yield(table, layout, yields);
        Account(table, yields);
        Losses(table, layout.Search);
        table.Heading("How it was found");
        SearchLines(table, layout.Search);
        Alternatives(table, layout);
        return table.ToString();
    }

    private static void Roll(TextTable table, RollLayout layout)
    {
        string trims = layout.Trims.AreEqual
            ? $"edge trim {Number(layout.Trims.LowerMm)} mm each side"
            : $"edge trims {Number(layout.Trims.LowerMm)} mm lower, {Number(layout.Trims.UpperMm)} mm upper";
        table.Heading($"{layout.Parts[0].Name}: layout over {Number(layout.RollWidthMm)} mm")
            .Line("usable width", layout.UsableWidthMm, "0.##", "mm", trims)
            .Line(
                "gap", layout.GapMm, "0.###", "mm",
                FormattableString.Invariant($"least found by the check: {layout.Search.LeastGapMm:0.0000} mm"))
            .Line("warp angle", Angle(layout.Rules), RuleWords(layout.Rules));
    }

    private static void Band(TextTable table, RollLayout layout, LayoutBand band)
    {
        string place = layout.Bands.Count > 1 ? FormattableString.Invariant($", {band.YFromMm:0.#} to {band.YToMm:0.#} mm") : string.Empty;
        string panels = band.Repeat.Panels.Count == 1 ? "1 panel" : $"{band.Repeat.Panels.Count} panels";
        table.Line($"repeat{place}", band.Repeat.LengthMm, "0.000", "mm", $"{panels} at {Tilts(band.Repeat)}");
        if (band.Repeat.Strike is { } strike)
        {
            table.Line(
                "  one strike", $"{strike.Panels} panels",
                FormattableString.Invariant(
                    $"{strike.LengthMm:0.#} x {strike.WidthMm:0.#} mm, {strike.Places.Count} strikes a repeat"));
        }
    }

    private static void Plies(TextTable table, RollLayout layout)
    {
        if (layout.Rules.Plies.Count <= 1)
        {
            return;
        }

        int kinds = PartKinds.Of(layout);
        string faces = layout.Rules.Plies.FaceToFace ? "face to face" : "all nap side up";
        string apart = kinds == 1 ? "any two make a ball" : $"{kinds} kinds that make no pair with each other, keep them apart";
        table.Line("plies", $"{layout.Rules.Plies.Count}", $"{faces}: {apart}");
    }

    private static void Parts(TextTable table, RollLayout layout)
    {
        if (layout.Parts.Count <= 1)
        {
            return;
        }

        foreach ((LayoutPart part, int n) in layout.Parts.Select((part, n) => (part, n)))
        {
            double perMetre = 1000 * layout.Bands.Sum(b => b.Repeat.Panels.Count(p => p.Part == n) / b.Repeat.LengthMm);
            table.Line(
                $"part {n + 1}", FormattableString.Invariant($"{perMetre:0.000} panels per metre"),
                FormattableString.Invariant($"{part.Name}: {100 * perMetre / layout.PanelsPerMetre:0.00} % of the panels"));
        }
    }

    private static void Yield(TextTable table, RollLayout layout, YieldFigures yields)
    {
        FeltUsage felt = yields.PerThousandBalls;
        table.Heading("Yield (full roll width, one repeat, before roll ends and faults)")
            .Line("panels per metre", yields.PanelsPerMetre, "0.000", string.Empty, "the trade says cuts per metre")
            .Line("balls per metre", yields.BallsPerMetre, "0.000", string.Empty, "pairs of one pairing group")
            .Line(
                layout.Parts.Count > 1 ? "felt per thousand balls of both" : "felt per thousand balls", felt.Metres, "0.00", "m",
                "before losses")
            .Line(string.Empty, felt.SquareMetres, "0.00", "m2")
            .Line(
                string.Empty,
                felt.Kilograms is { } kilograms ? kilograms.ToString("0.00", CultureInfo.InvariantCulture) + " kg" : "not known",
                felt.Kilograms is null ? "mass per area of the felt not given" : string.Empty);
    }

    private static void Account(TextTable table, YieldFigures yields)
    {
        WasteAccount account = yields.Account;
        table.Heading("Where the felt goes (per cent of the full roll width)")
            .Line("good panels", account.GoodPanelsPercent, "0.00", "%", "utilisation")
            .Line("web between panels", account.BetweenPanelsPercent, "0.00", "%")
            .Line("unused edge", account.UnusedEdgePercent, "0.00", "%")
            .Line("edge trim", account.EdgeTrimPercent, "0.00", "%")
            .Line("waste", yields.WastePercent, "0.00", "%", "the last three together");
    }

    private static void Losses(TextTable table, SearchRecord search)
    {
        if (search.Loss is { } loss)
        {
            table.Heading("Where the waste comes from (per cent of the full roll width)")
                .Line("shape", loss.ShapePercent, "0.00", "%", "best without edges, no gap")
                .Line("gap", loss.GapPercent, "0.00", "%", "what the gap takes in the plane")
                .Line("trims and stripes", loss.TrimPercent, "0.00", "%")
                .Line("straight edges", loss.EdgesPercent, "0.00", "%", "half row height - step, both sides")
                .Line("row fit", loss.RowFitPercent, "0.00", "%", "the rest: whole rows in this width");
        }
    }

    private static void SearchLines(TextTable table, SearchRecord search)
    {
        table.Note($"{search.Method} (effort {search.Effort}, seed {search.Seed}).");
        if (search.CutShort)
        {
            table.Note("Cut short: the best so far, not promised to repeat.");
        }

        if (search.ProvedOnGrid is { } grid)
        {
            table.Note(
                $"Parallel rows: every row count at every tilt was tried, {Number(grid.AngleStepDeg)} degrees apart, on tables sampled "
                    + $"every {Number(grid.PitchStepMm)} mm.");
        }

        table.Note(FormattableString.Invariant(
            $"Best without edges at this gap: {search.PlaneUtilisationPercent:0.00} % utilisation (a reference, not a bound)."));
        if (search.UpperBoundPercent > 0)
        {
            table.Note(string.Create(
                CultureInfo.InvariantCulture,
                $"No layout at all can use more than {search.UpperBoundPercent:0.00} %: parts grown by half the gap do not overlap, "
                    + $"times (width + gap)/width."));
        }
    }

    // What other ways and freer rules would give.
    private static void Alternatives(TextTable table, RollLayout layout)
    {
        SearchRecord search = layout.Search;
        foreach (MethodReach reach in search.Methods.Where(m => m.Method != search.Method).Take(3))
        {
            string dies = reach.Bands > 1 ? $", {reach.Bands} dies" : string.Empty;
            table.Note(FormattableString.Invariant(
                $"Also tried: {reach.Method}: {reach.PanelsPerMetre:0.000} panels per metre{dies}."));
        }

        if (layout.Bands.Count > 1 && search.Methods.FirstOrDefault(m => m.Bands == 1) is { } one)
        {
            table.Note(string.Create(
                CultureInfo.InvariantCulture,
                $"The best with one die: {one.PanelsPerMetre:0.000} panels per metre ({one.Method}); {layout.Bands.Count} dies give "
                    + $"{100 * ((layout.PanelsPerMetre / one.PanelsPerMetre) - 1):0.00} % more."));
        }

        foreach (RuleCost cost in search.RuleCosts)
        {
            table.Note(string.Create(
                CultureInfo.InvariantCulture,
                $"Without the rule \"{cost.Rule}\": {cost.PanelsPerMetreWithout:0.000} panels per metre, "
                    + $"{100 * ((cost.PanelsPerMetreWithout / layout.PanelsPerMetre) - 1):0.00} % more ({cost.Words})."));
        }

        if (search.FreerRowsPanelsPerMetre is { } freer)
        {
            table.Note(FormattableString.Invariant($"Rows of any angle would give {freer:0.000} panels per metre."));
        }
    }

    private static string Angle(LayoutRules rules) => rules.WarpAngleDeg is { } angle ? $"{Number(angle)} deg" : "free";

    private static string RuleWords(LayoutRules rules) =>
        $"rows {EnumWord.Of(rules.Rows)}"
            + $"{(rules.WarpToleranceDeg > 0 ? $", within {Number(rules.WarpToleranceDeg)} degrees" : string.Empty)}"
            + $"{(rules.OneWay ? ", one way" : string.Empty)}";

    // Tilts of a repeat without the half-turns, in degrees, each once.
    private static string Tilts(LayoutRepeat repeat) => string.Join(", ", repeat.Panels
        .Select(p => Math.Round(PanelTilt.Shown(p.AngleDeg), 2) + 0.0)
        .Distinct()
        .Order()
        .Select(angle => angle.ToString("0.00", CultureInfo.InvariantCulture))) + " degrees";

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
