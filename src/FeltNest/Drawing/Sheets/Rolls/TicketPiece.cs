using FeltNest.Rolls;
using FeltNest.Rolls.Plan;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The length of roll that a ticket is about, and what lies in it.</summary>
internal sealed class TicketPiece
{
    /// <summary>The piece of a plan: of an order the felt that is its own, else all that the strikes take.</summary>
    public TicketPiece(RollPlan plan, TicketOrder? order)
    {
        FeltRoll roll = plan.Request.Roll;
        double lastMm = plan.Strikes.Count == 0 ? plan.Request.FromMm : plan.Strikes[^1].XMm + plan.Pattern.LengthMm;
        FromMm = plan.Request.FromMm;
        ToMm = order is null ? Math.Min(roll.LengthMm, lastMm) : 1000 * order.Cut.ToM;
        double endMm = order is null ? roll.LengthMm : 1000 * order.Cut.Roll.EndM;
        BeforeMm = endMm - FromMm;
        AfterMm = Math.Max(0, endMm - ToMm);
        Things =
        [
            .. roll.Splices.Where(s => s.ToMm >= FromMm && s.FromMm <= ToMm).Select(Thing)
                .Concat(roll.Faults.Where(f => f.XMm + f.LengthMm >= FromMm && f.XMm <= ToMm).Select(Thing)).OrderBy(t => t.XMm),
        ];
        Losses = LossesOf(plan.Strikes);
    }

    /// <summary>Where it begins on the roll, mm.</summary>
    public double FromMm { get; }

    /// <summary>Where it ends, mm.</summary>
    public double ToMm { get; }

    /// <summary>What is left of the roll before it is cut, mm.</summary>
    public double BeforeMm { get; }

    /// <summary>What is left of the roll after it, mm.</summary>
    public double AfterMm { get; }

    /// <summary>Faults and splices in it, in order along the roll.</summary>
    public IReadOnlyList<(string Name, double XMm, string Across, string Size)> Things { get; }

    /// <summary>Strikes that lose panels: those that follow each other with as many lost for the same causes are one.</summary>
    public IReadOnlyList<Loss> Losses { get; }

    /// <summary>Strikes that lose panels one after the other.</summary>
    internal readonly record struct Loss
    {
        /// <summary>Number of the first, from 1.</summary>
        public required int First { get; init; }

        /// <summary>Number of the last.</summary>
        public required int Last { get; init; }

        /// <summary>Where the first begins on the roll, mm.</summary>
        public required double XMm { get; init; }

        /// <summary>Panels lost in each.</summary>
        public required int Each { get; init; }

        /// <summary>Why, in order.</summary>
        public required LossCauses Causes { get; init; }
    }

    /// <summary>Which causes there are.</summary>
    [Flags]
    internal enum LossCauses
    {
        /// <summary>Past the end of the roll.</summary>
        RollEnd = 1,

        /// <summary>At a splice.</summary>
        Splice = 2,

        /// <summary>Outside the usable width.</summary>
        Width = 4,

        /// <summary>At a fault.</summary>
        Fault = 8,
    }

    private static List<Loss> LossesOf(IReadOnlyList<PlannedStrike> strikes)
    {
        List<Loss> losses = [];
        for (int i = 0; i < strikes.Count; i++)
        {
            PlannedStrike strike = strikes[i];
            LossCauses causes = strike.Lost.Aggregate(default(LossCauses), (all, lost) => all | Of(lost.Cause));
            if (losses.Count > 0 && losses[^1] is var last && last.Last == i && (last.Each, last.Causes) == (strike.Lost.Count, causes))
            {
                losses[^1] = last with { Last = i + 1 };
            }
            else if (strike.Lost.Count > 0)
            {
                losses.Add(new Loss { First = i + 1, Last = i + 1, XMm = strike.XMm, Each = strike.Lost.Count, Causes = causes });
            }
        }

        return losses;
    }

    private static LossCauses Of(LossCause cause) => cause switch
    {
        LossCause.RollEnd => LossCauses.RollEnd,
        LossCause.Joint => LossCauses.Splice,
        LossCause.Width => LossCauses.Width,
        _ => LossCauses.Fault,
    };

    private static (string Name, double XMm, string Across, string Size) Thing(RollSplice splice) => (
        "splice", splice.XMm, "all",
        splice.ClearMm > 0 ? FormattableString.Invariant($"clear {splice.ClearMm:0.#}") : string.Empty);

    private static (string Name, double XMm, string Across, string Size) Thing(RollFault fault) => (
        "fault", fault.MiddleX, FormattableString.Invariant($"{fault.MiddleY:0}"),
        FormattableString.Invariant($"{fault.LengthMm:0.#} x {fault.WidthMm:0.#}"));
}
