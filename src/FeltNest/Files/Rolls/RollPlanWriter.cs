using System.Globalization;
using System.Text;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Yield;

namespace FeltNest.Files.Rolls;

/// <summary>Writes the strikes planned for a roll as JSON (schema feltnest/roll-plan/1), with layout and roll in it so that it can be
/// checked from the file alone, and as CSV.</summary>
public static class RollPlanWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(RollPlan plan)
    {
        RollRequest request = plan.Request;
        FourPointScore score = FourPointScore.Of(request.Roll, request.Layout.Trims.TotalMm);
        using JsonOutput json = new();
        json.Text("schema", SchemaName.RollPlan)
            .Number("goodPanels", plan.GoodPanels)
            .Number("backToBackGoodPanels", plan.BackToBackGoodPanels)
            .Number("balls", plan.Balls)
            .Number("provedOnGridMm", plan.Grid.StepMm)
            .Number("shiftStepMm", plan.Grid.SideStepMm)
            .Number("guidePlayMm", request.GuidePlayMm)
            .Number("fromMm", request.FromMm)
            .Number("clearAdvanceMm", plan.ClearAdvanceMm)
            .Number("leastOffLineMm", plan.LeastOffLineMm)
            .Object("lostPanels", lost =>
            {
                foreach (LossCause cause in Enum.GetValues<LossCause>())
                {
                    lost.Number(FieldOf(cause), plan.LostPanels(cause));
                }
            })
            .Object("fourPoint", points => points
                .Number("points", score.Points)
                .Number("per100SquareYards", score.Per100SquareYards)
                .Number("per100SquareMetres", score.Per100SquareMetres))
            .Objects("warp", WarpReport.Of(plan.Pattern, request.Layout, request.Roll.SkewDeg), (item, warp) => item
                .Number("panel", warp.Part)
                .Number("laidAngleDeg", warp.LaidAngleDeg)
                .Number("warpAngleDeg", warp.WarpAngleDeg)
                .Number("offDesignDeg", warp.OffDesignDeg))
            .Objects("strikes", plan.Strikes, (item, strike) => item
                .Number("xMm", strike.XMm)
                .Number("shiftYMm", strike.ShiftYMm)
                .Number("goodPanels", strike.GoodPanels)
                .Number("lostPanels", strike.Lost.Count))
            .Object("pattern", pattern => pattern
                .Number("repeats", plan.Pattern.Repeats)
                .Number("feedMm", plan.Pattern.FeedMm)
                .Number("lengthMm", plan.Pattern.LengthMm)
                .Objects("panels", plan.Pattern.Panels, (item, panel) => item
                    .Number("panel", panel.Placed.Part)
                    .Number("xMm", panel.Placed.XMm)
                    .Number("yMm", panel.Placed.YMm)
                    .Number("angleDeg", panel.Placed.AngleDeg)))
            .Embedded("roll", RollWriter.Write(request.Roll))
            .Embedded("layout", LayoutWriter.Write(request.Layout, YieldAccount.Of(request.Layout)));
        return json.Finish();
    }

    /// <summary>The CSV file's bytes: a line of names, then one line a strike with the advance from the one before it.</summary>
    public static byte[] Csv(RollPlan plan)
    {
        StringBuilder text = new(
            "strike,xMm,advanceMm,shiftYMm,goodPanels,lostPanels,lostAtRollEnd,lostAtJoint,lostOutsideWidth,lostAtFault\n");
        double last = plan.Request.FromMm;
        for (int i = 0; i < plan.Strikes.Count; i++)
        {
            PlannedStrike strike = plan.Strikes[i];
            text.Append(
                CultureInfo.InvariantCulture,
                $"{i + 1},{Digits(strike.XMm)},{Digits(strike.XMm - last)},{Digits(strike.ShiftYMm)},{strike.GoodPanels},"
                    + $"{strike.Lost.Count}");
            foreach (LossCause cause in Enum.GetValues<LossCause>())
            {
                text.Append(CultureInfo.InvariantCulture, $",{strike.Lost.Count(l => l.Cause == cause)}");
            }

            text.Append('\n');
            last = strike.XMm;
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>Name of the field that counts panels lost for a cause.</summary>
    internal static string FieldOf(LossCause cause) => cause switch
    {
        LossCause.RollEnd => "rollEnd",
        LossCause.Joint => "joint",
        LossCause.Width => "width",
        _ => "fault",
    };

    // A hundredth of a micrometre is more than any press is set to, and hides the rounding of sums.
    private static string Digits(double value) => (Math.Round(value, 5) + 0.0).ToString("R", CultureInfo.InvariantCulture);
}
