using FeltNest.Rolls.Orders.Model;

namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>All felt of a question: rolls that are alike counted together, by lots.</summary>
internal sealed class FeltKinds
{
    private readonly OrderRequest question;
    private readonly List<(string Felt, string Lot)> lots = [];
    private readonly List<FeltKind> kinds = [];

    /// <summary>Sorts the felt of a question.</summary>
    public FeltKinds(OrderRequest question)
    {
        this.question = question;
        foreach (List<StockRoll> alike in LikeRolls.Sorted(question))
        {
            Add(alike);
        }

        foreach (FeltPurchase offer in question.Offers)
        {
            int most = FeltRows.MostRolls(offer.Roll, question);
            if (most > 0)
            {
                Add([.. Enumerable.Range(1, most).Select(offer.Copy)]);
            }
        }
    }

    /// <summary>The kinds that some die cuts for some order.</summary>
    public IReadOnlyList<FeltKind> All => kinds;

    /// <summary>Felt and shade lot of each lot.</summary>
    public IReadOnlyList<(string Felt, string Lot)> Lots => lots;

    /// <summary>The kinds sorted into those of one lot, there on one day, that the same dies cut with the same shares for the
    /// same orders.</summary>
    public IReadOnlyList<FeltKind[]> CutAlike =>
    [
        .. kinds.GroupBy(k => (k.Lot, k.There, Dies: string.Join(' ', k.Dies.Select(d => $"{d.Die}:{d.Share:R}")), TakenBy(k.Roll)))
            .Select(g => g.ToArray()),
    ];

    /// <summary>Whether an order may be cut from a lot by its felt, and by what it is held to and kept from.</summary>
    public bool Reaches(CoverOrder order, int lot) => (order.Felt ?? lots[lot].Felt) == lots[lot].Felt
        && (order.Pins is null
            || kinds.Exists(k => k.Lot == lot && k.Dies.Any(d => question.Fits(order, k.Roll, question.Dies[d.Die]))));

    // Which of the orders held to rolls or kept from them may have a roll.
    private string TakenBy(StockRoll roll) =>
        string.Concat(question.Orders.Where(o => o.Pins is not null).Select(o => o.Pins!.TakesRoll(roll) ? '1' : '0'));

    private void Add(List<StockRoll> alike)
    {
        StockRoll roll = alike[0];
        double clear = question.ClearM(roll);
        (int Die, double Share)[] dies = Dies(roll);
        if (dies.Length == 0)
        {
            return;
        }

        int lot = lots.IndexOf((roll.Felt, roll.Lot));
        if (lot < 0)
        {
            lot = lots.Count;
            lots.Add((roll.Felt, roll.Lot));
        }

        OrderRules rules = question.Rules;
        double end = rules.EndLossMm / 1000;
        double price = (double)roll.PricePerMetre;
        double worth = price * rules.RemnantValuePercent / 100;
        kinds.Add(new FeltKind
        {
            Index = kinds.Count,
            Rolls = alike,
            Lot = lot,
            ClearM = clear,
            KeepingM = Math.Min(clear, roll.LengthM - end - rules.LeastRemnantM),
            BeginCost = (price * roll.LengthM) - (worth * (roll.LengthM - end)),
            MetreCost = worth,
            WholeCost = price * roll.LengthM,
            Dies = dies,
            There = roll.Received is { } day && day > rules.Start ? day : rules.Start,
        });
    }

    // Dies that cut the roll for some order, on some press.
    private (int Die, double Share)[] Dies(StockRoll roll) =>
    [
        .. from d in Enumerable.Range(0, question.Dies.Count)
           let die = question.Dies[d]
           where question.Orders.Any(o => question.Fits(o, roll, die))
               && question.Presses.Any(p => OrderRequest.Takes(p, die))
           select (d, question.GoodShare(roll, die)),
    ];
}
