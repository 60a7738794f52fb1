using FeltNest.Cost.Compare;
using FeltNest.Cost.Sheet;
using FeltNest.Drawing.Charts;

namespace FeltNest.Drawing.Sheets;

/// <summary>From the least felt possible to the felt bought, and from its price to what it costs in the room, for the best row.</summary>
internal static class CompareFelt
{
    /// <summary>Felt, m2 for a thousand good balls.</summary>
    public static StepBars Felt(CompareRow row)
    {
        double Share(double percent) => row.Account.PerThousandBalls.SquareMetres * percent / 100;
        FeltShares shares = row.Account.Shares;
        double net = row.Account.NetSquareMetres;
        double web = Share(shares.BetweenPanels);
        double edge = Share(shares.UnusedEdge);
        double trim = Share(shares.EdgeTrim);
        double gross = row.Account.PerThousandBalls.SquareMetres;

        // No layout uses more of the roll than the bound, so this much beside the panels is left by every one.
        double bound = row.Layout.Search.UpperBoundPercent;
        double always = bound > 0 ? Math.Min(net * ((100 / bound) - 1), web + edge + trim) : 0;
        List<(string, double, bool)> steps = [("felt in good panels", net, true)];
        if (always > 0)
        {
            steps.Add(("left by every layout", always, false));
            steps.Add(("least possible felt", net + always, true));
            steps.Add(("web and edges of this layout", web + edge + trim - always, false));
        }
        else
        {
            steps.AddRange([("web between panels", web, false), ("unused edge", edge, false), ("edge trim", trim, false)]);
        }

        steps.AddRange([
            ("roll ends", Share(shares.RollEnds), false), ("short remnants", Share(shares.Remnant), false),
            ("faults", Share(shares.Faults), false), ("rejects, no partner", Share(shares.Rejects + shares.Unpaired), false),
            ("gross felt", gross, true),
        ]);
        steps.AddRange(Beyond(row, gross));
        return new StepBars($"{row.Case.Name}: from least possible felt to felt bought, m\u00B2", steps);
    }

    /// <summary>Money for the felt of a thousand good balls: lines 20 to 25, then line 10.</summary>
    public static StepBars Money(CompareRow row, CostSheet sheet)
    {
        CostLine[] parts = [.. sheet.FeltParts];
        return new StepBars(
            $"{row.Case.Name}: the felt landed, {sheet.Currency}",
            [
                (parts[0].Name, (double)sheet.AmountOf(20), true),
                .. parts.Skip(1).Select(part => (part.Name, (double)sheet.AmountOf(part.Number), false)),
                ("landed and coated", (double)sheet.AmountOf(10), true),
            ]);
    }

    // Width that is invoiced beyond the planned one, and whole rolls beyond need.
    private static IEnumerable<(string, double, bool)> Beyond(CompareRow row, double gross)
    {
        double invoiced = row.Case.Offer is { } offer ? offer.InvoicedWidthMm ?? offer.WidthMm : row.Case.WidthMm;
        double wide = gross * invoiced / row.Case.WidthMm;
        double surplus = row.Sheet?.Purchase is { } bought ? wide * bought.SurplusM / bought.NeededM : 0;
        if (wide == gross && surplus == 0)
        {
            return [];
        }

        return [("width beyond that planned", wide - gross, false), ("beyond need", surplus, false), ("felt bought", wide + surplus, true)];
    }
}
