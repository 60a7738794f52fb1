using FeltNest.Cost.Offers;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Begun;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Files.Orders;

/// <summary>The lists of a shop when all of a plan is cut: what the next plan begins with.</summary>
/// <param name="plan">The plan.</param>
/// <param name="stock">The rolls before, those that are not available too.</param>
/// <param name="rack">The dies before.</param>
internal sealed class AfterLists(OrderPlan plan, IReadOnlyList<StockEntry> stock, IReadOnlyList<DieEntry> rack)
{
    // Lengths this near are equal, m.
    private const double Slack = 1e-9;

    /// <summary>The rolls: those not begun as they were, those begun at what is left of them, those bought. A roll that is used up is left
    /// out; where an order that is short is held to its felt, lot or name it stays as one that is not available.</summary>
    public IReadOnlyList<StockEntry> Stock() =>
        [.. stock.Select(After).OfType<StockEntry>(), .. plan.Purchases.SelectMany(Bought)];

    /// <summary>The dies.</summary>
    public IReadOnlyList<DieEntry> Dies() =>
    [
        .. rack.Select(entry => entry with
        {
            Die = RestOf.Die(
                entry.Die, plan.Cuts.Where(c => c.Die.Name == entry.Die.Name).Sum(c => (long)c.Strikes), plan.Question.Rules.Start),
        }),
    ];

    /// <summary>The orders that are short, with the balls they are short of.</summary>
    public IReadOnlyList<CoverOrder> Orders() =>
    [
        .. plan.Results.Where(r => r.ShortBalls > 0)
            .Select(r => RestOf.Order(r.Order, r.ShortBalls, plan.Cuts.FirstOrDefault(c => c.Order.Name == r.Order.Name)?.Roll)),
    ];

    private StockEntry? After(StockEntry entry)
    {
        OrderCut[] cuts = [.. plan.Cuts.Where(c => c.Roll.Offer is null && c.Roll.Name == entry.Roll.Name)];
        if (cuts.Length == 0)
        {
            return entry;
        }

        StockRoll planned = cuts[0].Roll;
        StockRoll rest = RestOf.Roll(entry.Roll, planned, cuts.Max(c => c.ToM));
        double shortest = Math.Max(plan.Question.Rules.LeastRemnantM, ShopRanges.RollLength.Low);
        if (rest.LengthM >= shortest - Slack)
        {
            return entry with { Roll = rest, MeasuredFile = rest.Measured is null ? null : entry.MeasuredFile };
        }

        return Orders().Any(order => Wants(order, rest))
            ? entry with
            {
                Roll = rest with { LengthM = Math.Max(rest.LengthM, ShopRanges.RollLength.Low), Measured = null },
                Available = false,
                MeasuredFile = null,
            }
            : null;
    }

    private static bool Wants(CoverOrder order, StockRoll roll) =>
        order.Felt == roll.Felt || order.Pins is { } pins && (pins.Lots.Contains(roll.Lot) || pins.Rolls.Contains(roll.Name));

    // One line a roll, by the offer, the day it was ordered and a number of its own.
    private IEnumerable<StockEntry> Bought(RollPurchase bought)
    {
        OrderRules rules = plan.Question.Rules;
        string name = $"{bought.Offer.Roll.Name} {OrderPlanWriter.Day(rules.Start)}";
        int number = 0;
        for (int k = 1; k <= bought.Rolls; k++)
        {
            StockRoll copy = bought.Offer.Copy(k);
            OrderCut[] cuts = [.. plan.Cuts.Where(c => c.Roll.Name == copy.Name && c.Roll.Offer == copy.Offer)];
            StockRoll rest = cuts.Length == 0 ? copy : RestOf.Roll(copy, copy, cuts.Max(c => c.ToM));
            do
            {
                number++;
            }
            while (stock.Any(entry => entry.Roll.Name == $"{name} #{number}"));

            if (cuts.Length == 0 || rest.LengthM >= Math.Max(rules.LeastRemnantM, ShopRanges.RollLength.Low) - Slack)
            {
                yield return new StockEntry
                {
                    Roll = rest with { Name = $"{name} #{number}", Offer = null, Received = rest.Received ?? rules.Start },
                    Available = true,
                    Price = new FeltPrice(rest.PricePerMetre, PriceUnit.Metre, rules.Currency),
                    FaultPercent = rest.FaultPercent,
                };
            }
        }
    }
}
