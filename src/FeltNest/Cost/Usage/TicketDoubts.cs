using FeltNest.Cost.Sheet;
using FeltNest.Layout;
using static FeltNest.InvariantText;

namespace FeltNest.Cost.Usage;

/// <summary>Figures of a filled-in ticket that can hardly be: a digit too many, a unit slipped, another roll's number.</summary>
/// <param name="layout">The layout that was cut.</param>
internal sealed class TicketDoubts(RollLayout layout)
{
    // Widths within these shares of the layout's are cut by it now and then; no roll is longer, m; strikes that overlap a little more than
    // planned give a few panels more.
    private const double LeastWidth = 0.8;
    private const double MostWidth = 1.25;
    private const double LongestM = 1000;
    private const double MostPanels = 1.1;

    private readonly LayPlan plan = LayPlan.Of(layout);

    /// <summary>The column that is asked about and the question, or null for none.</summary>
    public (string Column, string Question)? Of(ActualRoll roll)
    {
        double width = roll.WidthMm ?? layout.RollWidthMm;
        if (width < LeastWidth * layout.RollWidthMm || width > MostWidth * layout.RollWidthMm)
        {
            return ("widthMm", Invariant(
                $"roll {roll.Roll}: {width:0.###} mm can hardly be: the layout is for {layout.RollWidthMm:0.#} mm; if it is meant, say "
                    + $"so"));
        }

        if (roll.Metres > LongestM)
        {
            return ("metres", Invariant($"roll {roll.Roll}: {roll.Metres:0.###} m can hardly be of one roll; if it is meant, say so"));
        }

        double most = plan.PanelsPerMetre * roll.Metres * Math.Max(1, width / layout.RollWidthMm);
        double cut = (double)roll.GoodPanels + (roll.FaultPanels ?? 0) + (roll.RejectedPanels ?? 0);
        return cut <= MostPanels * most
            ? null
            : ("goodPanels", Invariant(
                $"roll {roll.Roll}: {cut:0} panels from {roll.Metres:0.###} m can hardly be: the layout gives {most:0} there; ")
                    + "if it is meant, say so");
    }
}
