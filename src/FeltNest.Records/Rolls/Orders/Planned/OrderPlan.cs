namespace FeltNest.Rolls.Orders.Planned;

/// <summary>Which rolls are cut for which order: fewest balls short, of these fewest orders late, of these least cost.</summary>
/// <param name="Question">The question.</param>
/// <param name="Cuts">The work, in the order of its numbers.</param>
/// <param name="Purchases">Rolls to buy.</param>
/// <param name="Remnants">What goes back to stock, and what is kept back there.</param>
/// <param name="Results">One for each order, in the order of the list.</param>
/// <param name="Dies">Dies used, in the order of their campaigns, press by press.</param>
/// <param name="Proof">How far it is the best.</param>
public sealed record OrderPlan(
    OrderQuestion Question, IReadOnlyList<OrderCut> Cuts, IReadOnlyList<RollPurchase> Purchases, IReadOnlyList<KeptRemnant> Remnants,
    IReadOnlyList<OrderResult> Results, IReadOnlyList<DieWork> Dies,
    PlanProof Proof)
{
    /// <summary>Good balls to expect, no order counted above what it wants.</summary>
    public int BallsServed => Results.Sum(r => Math.Min(r.GoodBalls, r.Order.Balls));

    /// <summary>Orders late.</summary>
    public int Late => Results.Count(r => r.DaysLate > 0);

    /// <summary>Rolls begun, in the order of the stock, then those bought.</summary>
    public IReadOnlyList<StockRoll> Begun =>
        [
            .. Question.Rolls.Where(roll => Cuts.Any(c => c.Roll == roll)),
            .. Cuts.Where(c => c.Roll.Offer is not null).Select(c => c.Roll).Distinct(),
        ];

    /// <summary>What it costs.</summary>
    public PlanCost Cost
    {
        get
        {
            OrderRules rules = Question.Rules;
            decimal share = (decimal)rules.RemnantValuePercent / 100;
            return new PlanCost(
                Begun.Where(roll => roll.Offer is null).Sum(roll => (decimal)roll.LengthM * roll.PricePerMetre)
                    + Purchases.Sum(p => p.Price),
                Remnants.Where(r => r.Begun || r.Roll.Offer is not null).Sum(r => (decimal)r.LengthM * r.Roll.PricePerMetre * share),
                Dies.Sum(d => d.Strikes) * rules.PerStrike,
                Dies.Sum(d => d.Price),
                Dies.Sum(d => rules.HourRate * (decimal)d.Press.ChangeOverMinutes / 60));
        }
    }

    /// <summary>How far the cost may be above the least, per cent of it; null where there is no bound.</summary>
    public double? GapPercent => Bound is not { } bound ? null : Cost.Total == 0 ? 0 : (double)(100 * (Cost.Total - bound) / Cost.Total);

    /// <summary>What no plan with as few balls short and orders late can cost less than; null where nothing worth saying is known: no
    /// bound, one below half the cost, or one that the plan itself disproves.</summary>
    public decimal? Bound
    {
        get
        {
            decimal total = Cost.Total;
            return Proof.CostBound is { } bound && bound >= total * LeastShare && bound <= total * (1 + Rounding)
                ? Math.Min(bound, total)
                : null;
        }
    }

    /// <summary>What plans are judged by, the first that differs deciding, less being better: balls short, reserves short, orders late,
    /// cost.</summary>
    internal (int Balls, int Reserve, int Late, decimal Cost) Rank =>
        (Results.Sum(r => r.ShortBalls), Results.Sum(r => r.ReserveShortBalls), Late, Cost.Total);

    // A bound below this share of the cost says nothing about the plan; one above the cost by more than rounding is of a model that
    // counts balls more safely than the plan had to.
    private const decimal LeastShare = 0.5m;
    private const decimal Rounding = 0.0001m;
}
