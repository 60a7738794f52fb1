using FeltNest.Layout;
using FeltNest.Rolls.Plan.Chain;

namespace FeltNest.Rolls.Plan;

/// <summary>Lays a panel out again for a roll as wide as it was measured, and plans its strikes: what the layout at hand leaves
/// behind.</summary>
internal static class LayoutForRoll
{
    // A roll this near to the width of its layout fits it, mm: tapes and felt under pull differ by as much.
    private const double FitsMm = 0.5;

    // A short search: the answer is whether a layout of its own would pay, not the layout.
    private const int Effort = 1;

    // Less is told as 0.0 % and pays no die.
    private const double LeastGainPercent = 0.05;

    /// <summary>What a layout for the least width to be cut would give, or null: where the roll fits its layout or loses nothing by its
    /// width, where the layout has several parts or bands, where the search is stopped, and where next to nothing is gained.</summary>
    public static BetterLayout? Of(RollPlan plan, CancellationToken stop)
    {
        RollRequest request = plan.Request;
        RollLayout layout = request.Layout;
        double width = RollRoom.NarrowestMm(request);
        bool loses = width < layout.RollWidthMm - FitsMm && plan.LostPanels(LossCause.Width) > 0;
        bool leaves = width > layout.RollWidthMm + FitsMm;
        if (layout.Parts.Count > 1 || layout.Bands.Count > 1 || !(loses || leaves) || stop.IsCancellationRequested)
        {
            return null;
        }

        if (Planned(request, width, stop) is not { } better || stop.IsCancellationRequested)
        {
            return null;
        }

        double gain = 100.0 * (better.GoodPanels - plan.GoodPanels) / plan.GoodPanels;
        return gain < LeastGainPercent
            ? null
            : new BetterLayout { WidthMm = width, GoodPanels = better.GoodPanels, GainPercent = gain };
    }

    // Another layout may be too long for a strike, or for the roll: then it is none.
    private static RollPlan? Planned(RollRequest request, double widthMm, CancellationToken stop)
    {
        RollLayout layout = request.Layout;
        try
        {
            return StrikePlanner.Run(request with
            {
                Layout = LayoutSearch.Of(
                    new LayoutRequest
                    {
                        Part = layout.Parts[0],
                        RollWidthMm = widthMm,
                        Trims = layout.Trims,
                        GapMm = layout.GapMm,
                        Rules = layout.Rules,
                        Effort = Effort,
                        Seed = layout.Search.Seed,
                    },
                    stop),
            });
        }
        catch (NoAnswerException)
        {
            return null;
        }
        catch (InputException)
        {
            return null;
        }
    }
}
