using System.Globalization;
using System.Text.Json;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Rolls.Check;
using FeltNest.Rolls.Plan;
using static FeltNest.Files.Rolls.RollPlanDocument;

namespace FeltNest.Files.Rolls;

/// <summary>Reads a roll plan (schema feltnest/roll-plan/1) for checking.</summary>
internal static class RollPlanReader
{
    /// <summary>The plan of a JSON object already read from a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    internal static RollPlanInput Read(string path, JsonElement root)
    {
        JsonFields top = JsonFields.Top(path, root, RollPlanDocument.Document);
        JsonFields pattern = top.Object(Pattern);
        JsonFields lost = top.Object(LostPanels);
        LayoutInput layout = LayoutReader.Read($"{path}: layout", top.Inner(RollPlanDocument.Layout));
        int parts = layout.Layout.Parts.Count;
        PlacedPanel[] panels = [.. pattern.Objects(PatternFields.Panels).Select(item => PlacedFields.Read(item, parts))];
        if (panels.Length == 0)
        {
            throw pattern.Fault(PatternFields.Panels, "is empty: a strike cuts at least one panel");
        }

        StatedPlan plan = new()
        {
            Repeats = pattern.Whole(PatternFields.Repeats),
            FeedMm = pattern.Number(PatternFields.FeedMm),
            Panels = panels,
            GuidePlayMm = top.Number(GuidePlayMm),
            FromMm = top.Number(FromMm),
            PastEnd = top.Flag(PastEnd),
            Parts = [.. top.OptionalObjects(RollPlanDocument.Parts).Select(item => Part(item, parts))],
            Balls = top.OptionalWhole(RollPlanDocument.Balls),
            Better = BetterOf(top),
            Strikes = [.. top.Objects(Strikes).Select(Strike)],
            GoodPanels = top.Whole(GoodPanels),
            BackToBackGoodPanels = top.Whole(BackToBackGoodPanels),
            LostPanels = LostPanelsFields.Set.All.OfType<WholeField>().Sum(cause => (long)lost.Whole(cause)),
        };
        FeltRoll roll = RollReader.Read($"{path}: roll", top.Inner(Roll));
        return roll.LengthMm / plan.FeedMm <= StrikeGrid.MostStrikes
            ? new RollPlanInput(layout, roll, plan)
            : throw pattern.Fault(
                PatternFields.FeedMm,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{plan.FeedMm:R} puts more than {StrikeGrid.MostStrikes} strikes on a roll of {roll.LengthMm:0.###} mm: that many "
                        + $"are allowed"));
    }

    private static (int GoodPanels, double GainPercent)? BetterOf(JsonFields top) => top.OptionalObject(Better) is { } better
        ? (better.Whole(BetterFields.GoodPanels), better.Number(BetterFields.GainPercent))
        : null;

    private static StatedPart Part(JsonFields item, int parts) => new()
    {
        Part = item.Whole(PartFields.Panel, 0, parts - 1, "a panel of the layout"),
        GoodPanels = item.Whole(PartFields.GoodPanels),
        Balls = item.Whole(PartFields.Balls),
    };

    private static StatedStrike Strike(JsonFields item) => new()
    {
        XMm = item.Number(StrikeFields.XMm),
        ShiftYMm = item.Number(StrikeFields.ShiftYMm),
        GoodPanels = item.Whole(StrikeFields.GoodPanels),
        LostPanels = item.Whole(StrikeFields.LostPanels),
    };
}
