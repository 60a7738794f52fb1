using FeltNest.Rolls.Orders;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>Questions of a factory's size, made by number: orders of three balls, rolls of two felts in lots, three dies, two presses. All
/// figures are invented.</summary>
internal static class OrderFactory
{
    // A Monday.
    private static readonly DateOnly Start = new(2026, 3, 2);
    private static readonly string[] Felts = ["woven", "needled"];

    /// <summary>A question.</summary>
    /// <param name="orders">Orders.</param>
    /// <param name="rolls">Rolls in stock, more than the orders want.</param>
    /// <param name="seed">Its number.</param>
    /// <param name="press">Hours of each press, or null for as many as are wanted.</param>
    public static OrderRequest Plenty(int orders, int rolls, int seed, double? press = null)
    {
        Random random = new(seed);
        int lots = Math.Max(2, rolls / 20);
        StockRoll[] stock = [.. Enumerable.Range(0, rolls).Select(i => Roll(random, i, lots))];
        CoverOrder[] wanted = [.. Enumerable.Range(0, orders).Select(i => Order(random, i, 2 * (rolls / orders) + 1))];
        return new OrderRequest
        {
            Orders = wanted,
            Rolls = stock,
            Offers = [],
            Dies = [Die(0, 34, 190, 260, 1450), Die(1, 16, 95, 165, 1300), Die(2, 32, 205, 270, 1330)],
            Presses = [OrderCases.Press("P1", 12, 35, press), OrderCases.Press("P2", 9, 25, press)],
            Rules = Rules,
        };
    }

    /// <summary>The same orders with felt for nine tenths of their balls.</summary>
    public static OrderRequest ShortOfFelt(OrderRequest question)
    {
        double wanted = 0.9 * question.Orders.Sum(o => (double)o.Balls);
        List<StockRoll> kept = [];
        foreach (StockRoll roll in question.Rolls)
        {
            CutDie die = question.Dies.Where(d => d.Serves(roll)).MinBy(d => d.Shape.FeedMm / d.Shape.ClassPanels.Sum())!;
            if (wanted <= 0)
            {
                break;
            }

            kept.Add(roll);
            wanted -= die.Shape.BallsOf(die.Shape.StrikesIn(question.ClearM(roll)), question.GoodShare(roll, die));
        }

        return question with { Rolls = kept };
    }

    /// <summary>The same orders with half of the rolls of the lot that has most.</summary>
    public static OrderRequest OneLotShort(OrderRequest question)
    {
        string lot = question.Rolls.GroupBy(r => r.Lot).MaxBy(g => g.Sum(r => r.LengthM))!.Key;
        int kept = 0;
        return question with { Rolls = [.. question.Rolls.Where(r => r.Lot != lot || kept++ % 2 == 0)] };
    }

    /// <summary>The same orders with hours for about half of their strikes on each press.</summary>
    public static OrderRequest ShortOfHours(OrderRequest question)
    {
        double strikes = question.Orders.Sum(o => question.Dies.Where(d => d.Ball == o.Ball).Min(d => o.Balls / d.Shape.BallsPerStrike(1)));
        double hours = strikes / question.Presses.Sum(p => 60 * p.StrokesPerMinute) / 2;
        return question with { Presses = [.. question.Presses.Select(p => p with { Hours = hours })] };
    }

    private static OrderRules Rules { get; } = new()
    {
        Currency = "EUR",
        Start = Start,
        HoursPerDay = 16,
        EndLossMm = 300,
        RejectPercent = 0.5,
        UnpairedPercent = 0.2,
        RemnantValuePercent = 100,
        LeastRemnantM = 2,
        LeastCutM = 1,
        PerStrike = 0.13m,
        HourRate = 38,
    };

    private static StockRoll Roll(Random random, int i, int lots)
    {
        int lot = random.Next(lots);
        return new StockRoll
        {
            Name = $"R{i:0000}",
            Felt = Felts[lot % 2],
            Lot = $"L{lot:00}",
            WidthMm = 1500,
            LengthM = random.Next(4) == 0 ? 8 + (random.Next(150) / 10.0) : 40 + (random.Next(200) / 10.0),
            PricePerMetre = 15 + (lot % 7) / 2m,
            FaultPercent = 0.5 + (lot % 5 * 0.5),
            Received = null,
            Offer = null,
        };
    }

    private static CoverOrder Order(Random random, int i, int size) => new()
    {
        Name = $"O{i:000}",
        Ball = $"ball {i % 3}",
        Balls = 400 + (100 * random.Next(6 * size)),
        Due = Start.AddDays(3 + random.Next(25)),
        OneLot = random.Next(2) == 0,
        Felt = Felts[random.Next(2)],
        ReserveBalls = 0,
    };

    private static CutDie Die(int i, int panels, double feed, double length, double width) =>
        OrderCases.Die($"D{i}", $"ball {i}", panels, feed, length, 4, width, 50_000) with
        {
            LifeStrikes = 60_000,
            ReRulePrice = 700,
            MostReRules = 1,
        };
}
