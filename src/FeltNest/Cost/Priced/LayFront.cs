using FeltNest.Cost.Compare;
using FeltNest.Cost.Sheet;
using FeltNest.Layout;

namespace FeltNest.Cost.Priced;

/// <summary>The ways to cut one felt, and which of them costs least: fewer rows may cost a little felt and save strikes, as a die cuts
/// whole repeats.</summary>
/// <remarks>A way is a layout with a number of repeats that a strike cuts. Allowed are all whose felt, over a whole roll, is at most
/// <see cref="MostMoreFelt"/> above the least.</remarks>
internal sealed class LayFront
{
    /// <summary>How much more felt than the least a way may take, as a share.</summary>
    public const double MostMoreFelt = 0.02;

    private readonly (RollLayout Layout, LayPlan Plan)[] lays;

    /// <param name="layouts">Layouts of one width, the one with least felt first.</param>
    public LayFront(IReadOnlyList<RollLayout> layouts)
    {
        lays = [.. layouts.Select(layout => (layout, LayPlan.Of(layout)))];
    }

    /// <summary>The layout with least felt, cut with as many repeats a strike as are allowed.</summary>
    /// <inheritdoc cref="Best"/>
    public LayChoice LeastFelt(int? mostPanels, Func<LayPlan, int?, (FeltAccount Account, CostSheet? Sheet)> priced)
    {
        (FeltAccount account, CostSheet? sheet) = priced(lays[0].Plan, mostPanels);
        return new LayChoice { Layout = lays[0].Layout, MostPanels = mostPanels, Account = account, Sheet = sheet };
    }

    /// <summary>The way that costs least; where costs are equal the one with less felt, then the earlier. Without a price the layout with
    /// least felt, cut with as many repeats a strike as are allowed.</summary>
    /// <param name="mostPanels">Most panels of one layer a strike may cut, or null for one repeat.</param>
    /// <param name="plies">Plies of a strike, or null for those of the layout.</param>
    /// <param name="priced">Account and sheet of a plan with so many panels a strike at most.</param>
    /// <exception cref="NoAnswerException">The roll is too short for one strike of any way.</exception>
    public LayChoice Best(int? mostPanels, int? plies, Func<LayPlan, int?, (FeltAccount Account, CostSheet? Sheet)> priced) =>
        Ways(mostPanels, plies, priced).MinBy(way => (way.Sheet?.Total ?? 0, way.SquareMetres))!;

    /// <summary>The ways of which none is better in felt, strikes and cavities together, least felt first; one where no price is
    /// known.</summary>
    /// <inheritdoc cref="Best"/>
    public IReadOnlyList<LayChoice> Worth(int? mostPanels, Func<LayPlan, int?, (FeltAccount Account, CostSheet? Sheet)> priced)
    {
        List<LayChoice> ways = Ways(mostPanels, null, priced);
        return
        [
            .. ways.Where(way => !ways.Exists(other => other != way && IsNoWorse(other, way) && !IsNoWorse(way, other)))
                .OrderBy(way => way.SquareMetres)
                .ThenBy(way => way.Account.StrikesPerThousandBalls),
        ];
    }

    /// <summary>All ways that are allowed.</summary>
    /// <inheritdoc cref="Best"/>
    public List<LayChoice> Ways(int? mostPanels, int? plies, Func<LayPlan, int?, (FeltAccount Account, CostSheet? Sheet)> priced)
    {
        List<LayChoice> ways = [];
        NoAnswerException? none = null;
        foreach ((RollLayout layout, LayPlan plan) in lays)
        {
            LayPlan cut = plan with { Plies = plies ?? plan.Plies };
            foreach (int? most in PanelsPerStrike(cut, mostPanels))
            {
                try
                {
                    (FeltAccount account, CostSheet? sheet) = priced(cut, most);
                    ways.Add(new LayChoice { Layout = layout, MostPanels = most, Account = account, Sheet = sheet });
                }
                catch (NoAnswerException tooShort)
                {
                    none ??= tooShort;
                }

                if (ways.Count > 0 && ways[^1].Sheet is null)
                {
                    // Nothing can be weighed against felt.
                    return ways;
                }
            }
        }

        double least = ways.Count == 0 ? throw none! : ways.Min(way => way.SquareMetres);
        ways.RemoveAll(way => way.SquareMetres > least * (1 + MostMoreFelt));
        return ways;
    }

    // Most first. Bands have dies of their own, and a repeat cut in several strikes has its die already: there is nothing to choose.
    private static IEnumerable<int?> PanelsPerStrike(LayPlan plan, int? most)
    {
        CutBand band = plan.Bands[0];
        if (plan.Bands.Count > 1 || band.StrikesPerRepeat > 1 || most is not { } panels || panels < 2 * band.Panels)
        {
            return [most];
        }

        return Enumerable.Range(1, panels / band.Panels).Reverse().Select(repeats => (int?)(repeats * band.Panels));
    }

    private static bool IsNoWorse(LayChoice one, LayChoice other) =>
        one.SquareMetres <= other.SquareMetres
        && one.Account.StrikesPerThousandBalls <= other.Account.StrikesPerThousandBalls
        && one.Account.Cavities <= other.Account.Cavities;
}
