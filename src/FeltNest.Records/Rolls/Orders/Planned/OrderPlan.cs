namespace FeltNest.Rolls.Orders.Planned;

/// <summary>Which rolls are cut for which order, and when: fewest balls short, of these fewest days late weighed by priority, of these
/// fewest orders late, of these least cost.</summary>
internal sealed record OrderPlan
{
    /// <summary>The question.</summary>
    public required OrderRequest Question { get; init; }

    /// <summary>The work, in the order of its numbers.</summary>
    public required IReadOnlyList<OrderCut> Cuts { get; init; }

    /// <summary>Dies put on presses, press by press in order of time.</summary>
    public required IReadOnlyList<Mounting> Mountings { get; init; }

    /// <summary>Overtime that is worked, press by press.</summary>
    public required IReadOnlyList<OvertimeWork> Overtime { get; init; }

    /// <summary>Rolls to buy.</summary>
    public required IReadOnlyList<RollPurchase> Purchases { get; init; }

    /// <summary>What goes back to stock, and what is kept back there.</summary>
    public required IReadOnlyList<KeptRemnant> Remnants { get; init; }

    /// <summary>One for each order, in the order of the list.</summary>
    public required IReadOnlyList<OrderResult> Results { get; init; }

    /// <summary>Dies used, in the order in which they are first mounted, press by press.</summary>
    public required IReadOnlyList<DieWork> Dies { get; init; }

    /// <summary>How far it is the best.</summary>
    public required PlanProof Proof { get; init; }

    /// <summary>What it does otherwise than the plan before it, of which some is cut; null where there was none.</summary>
    public IReadOnlyList<PlanChange>? Changes { get; init; }

    /// <summary>Good balls to expect, no order counted above what it wants.</summary>
    public int BallsServed => Results.Sum(r => Math.Min(r.GoodBalls, r.Order.Balls));

    /// <summary>Balls short of all orders.</summary>
    public long ShortBalls => Results.Sum(r => (long)r.ShortBalls);

    /// <summary>Whether one ball in twenty or more of all that are wanted is missing.</summary>
    public bool BadlyShort => ShortBalls > 0 && ShortBalls * Badly >= Question.Orders.Sum(o => (long)o.Balls);

    /// <summary>Aims of which no proof says that no plan is better, in the order of the aims.</summary>
    public IEnumerable<string> Unproved
    {
        get
        {
            (string Aim, bool Proved)[] aims =
            [
                ("balls short", ShortBalls <= PlanProof.Whole(Proof.LeastShort)),
                ("days late", WeightedDaysLate <= PlanProof.Whole(Proof.LeastWeightedDays)),
                ("orders late", Late <= PlanProof.Whole(Proof.LeastLate)),
                ("cost", GapPercent <= ProvedGapPercent),
            ];
            return aims.Where(aim => !aim.Proved).Select(aim => aim.Aim);
        }
    }

    /// <summary>Orders late.</summary>
    public int Late => Results.Count(r => r.DaysLate > 0);

    /// <summary>Days late of all orders, each times its priority.</summary>
    public long WeightedDaysLate => Results.Sum(r => r.WeightedDaysLate);

    /// <summary>Hours that a press is at work: strikes, dies mounted, rolls changed.</summary>
    public double BusyHours(PressSpec press) =>
        Cuts.Where(c => c.Press.Name == press.Name).Sum(c => c.WorkHours + (c.RollChange ? press.RollChangeMinutes / 60 : 0))
            + (Mountings.Count(m => m.Paid && m.Press.Name == press.Name) * press.ChangeOverMinutes / 60);

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
            return new PlanCost
            {
                Felt = Begun.Where(roll => roll.Offer is null).Sum(roll => (decimal)roll.LengthM * roll.PricePerMetre)
                    + Purchases.Sum(p => p.Price),
                KeptValue = Remnants.Where(r => r.Begun || r.Roll.Offer is not null)
                    .Sum(r => (decimal)r.LengthM * r.Roll.PricePerMetre * share),
                Strikes = Dies.Sum(d => d.Strikes) * rules.PerStrike,
                Dies = Dies.Sum(d => d.Price),
                ChangeOvers = Mountings.Where(m => m.Paid).Sum(m => rules.HourRate * (decimal)m.Press.ChangeOverMinutes / 60),
                Overtime = Overtime.Sum(work => work.Price),
            };
        }
    }

    /// <summary>A gap up to this counts as proved, per cent.</summary>
    public const double ProvedGapPercent = 0.01;

    /// <summary>How far the cost may be above the least, per cent of it; null where there is no bound.</summary>
    public double? GapPercent
    {
        get
        {
            if (Bound is not { } bound)
            {
                return null;
            }

            if (Cost.Total == 0)
            {
                return 0;
            }

            return (double)(100 * (Cost.Total - bound) / Cost.Total);
        }
    }

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

    /// <summary>What plans are judged by, the first that differs deciding, less being better: balls short, reserves short, days late
    /// weighed by priority, orders late, cost.</summary>
    internal (int Balls, int Reserve, long WeightedDays, int Late, decimal Cost) Rank =>
        (Results.Sum(r => r.ShortBalls), Results.Sum(r => r.ReserveShortBalls), WeightedDaysLate, Late, Cost.Total);

    private const int Badly = 20;

    // A bound below this share of the cost says nothing about the plan; one above the cost by more than rounding is of a model that
    // counts balls more safely than the plan had to.
    private const decimal LeastShare = 0.5m;
    private const decimal Rounding = 0.0001m;
}
