using System.Globalization;
using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Rolls.Check;
using FeltNest.Rolls.Plan;

namespace FeltNest.Files.Rolls;

/// <summary>Reads a roll plan (schema feltnest/roll-plan/1) for checking.</summary>
public static class RollPlanReader
{
    // Panels of one strike: more than any die has cavities.
    private const int MostPanels = 10_000;

    /// <summary>The plan of a JSON object already read from a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    internal static RollPlanInput Read(string path, JsonElement root)
    {
        JsonInput.SchemaOf(root, path, SchemaName.RollPlan);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "goodPanels", "backToBackGoodPanels", "balls", "provedOnGridMm", "shiftStepMm", "guidePlayMm", "fromMm",
            "clearAdvanceMm", "leastOffLineMm", "lostPanels", "fourPoint",
            "warp", "strikes", "pattern", "roll", "layout");
        JsonFields pattern = top.Object("pattern", "repeats", "feedMm", "lengthMm", "panels");
        JsonFields lost = top.Object("lostPanels", "rollEnd", "joint", "width", "fault");
        LayoutInput layout = LayoutReader.Read($"{path}: layout", Inner(top, "layout"));
        int parts = layout.Layout.Parts.Count;
        PlacedPanel[] panels =
            [.. pattern.ObjectsUpTo(MostPanels, "panels", "panel", "xMm", "yMm", "angleDeg").Select(item => new PlacedPanel(
                item.Whole("panel") is var part && part >= 0 && part < parts
                    ? part
                    : throw item.Fault("panel", $"{part} is outside 0 to {parts - 1}: the places in the list of panels"),
                item.Within("xMm", -LayoutReader.FarthestAlongMm, LayoutReader.FarthestAlongMm),
                item.Within("yMm", -JsonShapes.FarthestMm, JsonShapes.FarthestMm), item.Within("angleDeg", -360, 360)))];
        if (panels.Length == 0)
        {
            throw pattern.Fault("panels", "is empty: a strike cuts at least one panel");
        }

        StatedPlan plan = new(
            pattern.Whole("repeats"), pattern.Within("feedMm", 0.1, 100_000), panels,
            top.Within("guidePlayMm", 0, StrikePlanner.MostPlayMm), top.Within("fromMm", 0, RollReader.MostLengthMm),
            [.. top.ObjectsUpTo(StrikeGrid.MostStrikes, "strikes", "xMm", "shiftYMm", "goodPanels", "lostPanels").Select(item =>
                new StatedStrike(
                    item.Within("xMm", -RollReader.MostLengthMm, RollReader.MostLengthMm),
                    item.Within("shiftYMm", -StrikePlanner.MostPlayMm, StrikePlanner.MostPlayMm), item.Count("goodPanels"),
                    item.Count("lostPanels")))],
            top.Count("goodPanels"), top.Count("backToBackGoodPanels"),
            (long)lost.Count("rollEnd") + lost.Count("joint") + lost.Count("width") + lost.Count("fault"));
        FeltRoll roll = RollReader.Read($"{path}: roll", Inner(top, "roll"));
        return roll.LengthMm / plan.FeedMm <= StrikeGrid.MostStrikes
            ? new RollPlanInput(layout, roll, plan)
            : throw pattern.Fault(
                "feedMm",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{plan.FeedMm:R} puts more than {StrikeGrid.MostStrikes} strikes on a roll of {roll.LengthMm:0.###} mm: that many "
                        + $"are allowed"));
    }

    private static JsonElement Inner(JsonFields top, string name)
    {
        JsonElement value = top.Required(name);
        return value.ValueKind == JsonValueKind.Object
            ? value
            : throw top.Fault(name, $"is {JsonFields.KindName(value)} where an object {{ ... }} is wanted");
    }
}
