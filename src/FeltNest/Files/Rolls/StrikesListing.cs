using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using FeltNest.Rolls.Plan;
using static FeltNest.Files.Rolls.RollPlanDocument;

namespace FeltNest.Files.Rolls;

/// <summary>Columns of <c>roll.csv</c>: a line a strike.</summary>
internal static class StrikesListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("roll.csv")
        .Whole(new WholeField("strike", "place in the order of cutting"), l => l.Number)
        .Number(StrikeFields.XMm, l => Fine(l.Strike.XMm))
        .Number(
            new NumberField("advanceMm", "from the strike before; of the first, from where the usable roll starts"), l => Fine(l.AdvanceMm))
        .Number(StrikeFields.ShiftYMm, l => Fine(l.Strike.ShiftYMm))
        .Whole(StrikeFields.GoodPanels, l => l.Strike.GoodPanels)
        .Whole(StrikeFields.LostPanels, l => l.Strike.Lost.Count)
        .Whole(new WholeField("lostAtRollEnd", LostPanelsFields.RollEnd.Meaning), l => l.Lost(LossCause.RollEnd))
        .Whole(new WholeField("lostAtJoint", LostPanelsFields.Joint.Meaning), l => l.Lost(LossCause.Joint))
        .Whole(new WholeField("lostOutsideWidth", LostPanelsFields.Width.Meaning), l => l.Lost(LossCause.Width))
        .Whole(new WholeField("lostAtFault", LostPanelsFields.Fault.Meaning), l => l.Lost(LossCause.Fault));

    // A hundredth of a micrometre is more than any press is set to, and hides the rounding of sums.
    private static double Fine(double value) => Math.Round(value, 5);

    /// <summary>A strike with its number and the advance to it.</summary>
    internal readonly record struct Line
    {
        public required int Number { get; init; }

        public required double AdvanceMm { get; init; }

        public required PlannedStrike Strike { get; init; }

        public int Lost(LossCause cause) => Strike.Lost.Count(panel => panel.Cause == cause);
    }
}
