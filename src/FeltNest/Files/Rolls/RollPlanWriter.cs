using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Yield;
using static FeltNest.Files.Rolls.RollPlanDocument;

namespace FeltNest.Files.Rolls;

/// <summary>Writes the strikes planned for a roll as JSON (schema feltnest/roll-plan/1), with layout and roll in it so that it can be
/// checked from the file alone, and as CSV.</summary>
internal static class RollPlanWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(RollPlan plan)
    {
        RollRequest request = plan.Request;
        FourPointScore score = FourPointScore.Of(request.Roll, request.Layout.Trims.TotalMm);
        using JsonOutput json = new(RollPlanDocument.Document);
        json.Number(RollPlanDocument.GoodPanels, plan.GoodPanels)
            .Number(RollPlanDocument.BackToBackGoodPanels, plan.BackToBackGoodPanels)
            .Number(RollPlanDocument.Balls, plan.Balls)
            .Objects(RollPlanDocument.Parts, plan.Yields, (item, part) => Part(item, part, request.Layout.Parts[part.Part]))
            .Number(RollPlanDocument.ProvedOnGridMm, plan.Grid.StepMm)
            .Number(RollPlanDocument.ShiftStepMm, plan.Grid.SideStepMm)
            .Number(RollPlanDocument.GuidePlayMm, request.GuidePlayMm)
            .Number(RollPlanDocument.FromMm, request.FromMm)
            .Flag(RollPlanDocument.PastEnd, request.PastEnd)
            .Number(RollPlanDocument.ClearAdvanceMm, plan.ClearAdvanceMm)
            .Number(RollPlanDocument.LeastOffLineMm, plan.LeastOffLineMm)
            .ObjectOrNull(RollPlanDocument.Better, plan.Better, (item, better) => item
                .Number(BetterFields.WidthMm, better.WidthMm)
                .Number(BetterFields.GoodPanels, better.GoodPanels)
                .Number(BetterFields.GainPercent, better.GainPercent))
            .Object(RollPlanDocument.LostPanels, lost => Lost(lost, plan))
            .Object(RollPlanDocument.FourPoint, points => points
                .Number(FourPointFields.Points, score.Points)
                .Number(FourPointFields.Per100SquareYards, score.Per100SquareYards)
                .Number(FourPointFields.Per100SquareMetres, score.Per100SquareMetres))
            .Objects(RollPlanDocument.Warp, WarpReport.Of(plan.Pattern, request.Layout, request.Roll.SkewDeg), (item, warp) => item
                .Number(WarpFields.Panel, warp.Part)
                .Number(WarpFields.LaidAngleDeg, warp.LaidAngleDeg)
                .Number(WarpFields.WarpAngleDeg, warp.WarpAngleDeg)
                .Number(WarpFields.OffDesignDeg, warp.OffDesignDeg));
        Strikes(json, plan);
        json.Embedded(RollPlanDocument.Roll, RollWriter.Write(request.Roll))
            .Embedded(RollPlanDocument.Layout, LayoutWriter.Write(request.Layout, YieldAccount.Of(request.Layout)));
        return json.Finish();
    }

    private static void Lost(JsonOutput lost, RollPlan plan)
    {
        foreach (LossCause cause in Enum.GetValues<LossCause>())
        {
            lost.Number(FieldOf(cause), plan.LostPanels(cause));
        }
    }

    private static void Part(JsonOutput item, PartYield yield, LayoutPart part) => item
        .Number(PartFields.Panel, yield.Part)
        .Text(PartFields.Name, part.Ball ?? part.Name)
        .Number(PartFields.GoodPanels, yield.GoodPanels)
        .Number(PartFields.Balls, yield.Balls);

    private static void Strikes(JsonOutput json, RollPlan plan) => json
        .Objects(RollPlanDocument.Strikes, plan.Strikes, (item, strike) => item
            .Number(StrikeFields.XMm, strike.XMm)
            .Number(StrikeFields.ShiftYMm, strike.ShiftYMm)
            .Number(StrikeFields.GoodPanels, strike.GoodPanels)
            .Number(StrikeFields.LostPanels, strike.Lost.Count))
        .Object(RollPlanDocument.Pattern, pattern => pattern
            .Number(PatternFields.Repeats, plan.Pattern.Repeats)
            .Number(PatternFields.FeedMm, plan.Pattern.FeedMm)
            .Number(PatternFields.LengthMm, plan.Pattern.LengthMm)
            .Objects(PatternFields.Panels, plan.Pattern.Panels, (item, panel) => item
                .Number(PlacedFields.Panel, panel.Placed.Part)
                .Number(PlacedFields.XMm, panel.Placed.XMm)
                .Number(PlacedFields.YMm, panel.Placed.YMm)
                .Number(PlacedFields.AngleDeg, panel.Placed.AngleDeg)));

    /// <summary>The CSV file's bytes: a line of names, then one line a strike with the advance from the one before it.</summary>
    public static byte[] Csv(RollPlan plan) => StrikesListing.Columns.Csv(plan.Strikes.Select((strike, i) => new StrikesListing.Line
    {
        Number = i + 1,
        AdvanceMm = strike.XMm - (i == 0 ? plan.Request.FromMm : plan.Strikes[i - 1].XMm),
        Strike = strike,
    }));

    /// <summary>The field that counts panels lost for a cause.</summary>
    private static WholeField FieldOf(LossCause cause) => cause switch
    {
        LossCause.RollEnd => LostPanelsFields.RollEnd,
        LossCause.Joint => LostPanelsFields.Joint,
        LossCause.Width => LostPanelsFields.Width,
        _ => LostPanelsFields.Fault,
    };
}
