using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Rolls.Check;

namespace FeltNest.Files.Rolls;

/// <summary>Reads a roll plan (schema feltnest/roll-plan/1) for checking.</summary>
public static class RollPlanReader
{
    /// <summary>The plan of a JSON object already read from a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    internal static RollPlanInput Read(string path, JsonElement root)
    {
        JsonInput.SchemaOf(root, path, SchemaName.RollPlan);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "goodPanels", "backToBackGoodPanels", "balls", "provedOnGridMm", "shiftStepMm", "guidePlayMm", "fromMm", "clearAdvanceMm", "leastOffLineMm", "lostPanels", "fourPoint",
            "warp", "strikes", "pattern", "roll", "layout");
        JsonFields pattern = top.Object("pattern", "repeats", "feedMm", "lengthMm", "panels"), lost = top.Object("lostPanels", "rollEnd", "joint", "width", "fault");
        LayoutInput layout = LayoutReader.Read($"{path}: layout", Inner(top, "layout"));
        int parts = layout.Layout.Parts.Count;
        StatedPlan plan = new(
            pattern.Whole("repeats"), pattern.Within("feedMm", 0.1, 100_000),
            [.. pattern.Objects("panels", "panel", "xMm", "yMm", "angleDeg").Select(item => new PlacedPanel(
                item.Whole("panel") is var part && part >= 0 && part < parts ? part : throw item.Fault("panel", $"{part} is outside 0 to {parts - 1}: the places in the list of panels"),
                item.Within("xMm", -LayoutReader.FarthestAlongMm, LayoutReader.FarthestAlongMm), item.Within("yMm", -JsonShapes.FarthestMm, JsonShapes.FarthestMm), item.Within("angleDeg", -360, 360)))],
            top.Number("guidePlayMm"), top.Number("fromMm"),
            [.. top.Objects("strikes", "xMm", "shiftYMm", "goodPanels", "lostPanels").Select(item =>
                new StatedStrike(item.Number("xMm"), item.Number("shiftYMm"), item.Whole("goodPanels"), item.Whole("lostPanels")))],
            top.Whole("goodPanels"), top.Whole("backToBackGoodPanels"),
            lost.Whole("rollEnd") + lost.Whole("joint") + lost.Whole("width") + lost.Whole("fault"));
        return new RollPlanInput(layout, RollReader.Read($"{path}: roll", Inner(top, "roll")), plan);
    }

    private static JsonElement Inner(JsonFields top, string name)
    {
        JsonElement value = top.Required(name);
        return value.ValueKind == JsonValueKind.Object ? value : throw top.Fault(name, $"is {JsonFields.KindName(value)} where an object {{ ... }} is wanted");
    }
}
