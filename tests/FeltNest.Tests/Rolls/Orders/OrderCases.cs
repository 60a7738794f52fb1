using FeltNest.Rolls;
using FeltNest.Rolls.Orders;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>Orders, rolls, dies and presses to plan.</summary>
internal static class OrderCases
{
    /// <summary>A Monday.</summary>
    internal static DateOnly Monday { get; } = new(2026, 3, 2);

    /// <summary>No losses, no cost but the felt's, remnants worth nothing.</summary>
    internal static OrderRules Bare { get; } = new()
    {
        Currency = "EUR",
        Start = Monday,
        HoursPerDay = 8,
        EndLossMm = 0,
        RejectPercent = 0,
        UnpairedPercent = 0,
        RemnantValuePercent = 0,
        LeastRemnantM = 0,
        LeastCutM = 0,
        PerStrike = 0,
        HourRate = 0,
    };

    /// <summary>A press that does not bind.</summary>
    internal static PressSpec FreePress { get; } = Press("P1", 600, 0, null);

    internal static PressSpec Press(string name, double strokes, double changeOver, double? hours, params string[] dies) =>
        new()
        {
            Name = name,
            RatedForceKn = 250,
            AllowedSharePercent = 80,
            Bed = new PressBed { LengthMm = 10_000, WidthMm = 10_000, MarginMm = 0 },
            DaylightMm = null,
            StrokesPerMinute = strokes,
            ChangeOverMinutes = changeOver,
            Hours = hours,
            MostPlies = 1,
            FeedToleranceMm = 0.5,
            GuideToleranceMm = 0.5,
            Dies = dies,
        };

    internal static CoverOrder Order(string name, string ball, int balls, int dueDay = 1000, bool oneLot = false, int reserve = 0) =>
        new()
        {
            Name = name,
            Ball = ball,
            Balls = balls,
            Due = Monday.AddDays(dueDay),
            OneLot = oneLot,
            Felt = null,
            ReserveBalls = reserve,
        };

    internal static StockRoll Roll(string name, double length, decimal price, string lot = "L1", double width = 1000, double fault = 0) =>
        new()
        {
            Name = name,
            Felt = "felt",
            Lot = lot,
            WidthMm = width,
            LengthM = length,
            PricePerMetre = price,
            FaultPercent = fault,
            Received = null,
            Offer = null,
        };

    /// <summary>A die on the rack: so many panels a strike, feed and length of a strike in mm.</summary>
    internal static CutDie Die(
        string name, string ball, int panels, double feed, double length, double gap = 0, double width = 900, int strikes = 1_000_000) =>
        new()
        {
            Name = name,
            Ball = ball,
            Shape = new StrikeShape
            {
                FeedMm = feed,
                LengthMm = length,
                AcrossMm = width - 30,
                GapMm = gap,
                LeastWidthMm = width,
                ClassPanels = [panels],
            },
            MostWidthMm = 10_000,
            StrikesLeft = strikes,
            MakePrice = null,
            LifeStrikes = 0,
            ReRulePrice = 0,
            MostReRules = 0,
        };

    /// <summary>A workshop by its number: so many orders and rolls of three felts in lots, eight dies, two presses.</summary>
    internal static OrderRequest Workshop(int seed, int orders, int rolls)
    {
        Random random = new(seed);
        string[] felts = ["woven", "needled", "light"];
        CutDie[] dies = [.. Enumerable.Range(0, 8)
            .Select(i => Die(
                $"D{i}", $"ball {i % 4}", i < 4 ? 34 : 16, i < 4 ? 190 : 95, i < 4 ? 260 : 165, 4, i < 4 ? 1450 : 1300,
                i == 3 ? 800 : 60_000) with
        {
            LifeStrikes = 60_000,
            ReRulePrice = 700,
            MostReRules = 1,
        })];
        StockRoll[] stock = [.. Enumerable.Range(0, rolls).Select(i => new StockRoll
        {
            Name = $"R{i:00}",
            Felt = felts[i % 3],
            Lot = $"L{i % 3}{random.Next(4)}",
            WidthMm = random.Next(2) == 0 ? 1500 : 1370,
            LengthM = random.Next(4) == 0 ? 8 + random.Next(15) : 40 + random.Next(20),
            PricePerMetre = 15 + random.Next(8),
            FaultPercent = 0.5 + random.Next(5) * 0.5,
            Received = null,
            Offer = null,
        })];
        CoverOrder[] wanted = [.. Enumerable.Range(0, orders).Select(i => new CoverOrder
        {
            Name = $"O{i:00}",
            Ball = $"ball {i % 4}",
            Balls = 500 + (100 * random.Next(40)),
            Due = Monday.AddDays(4 + random.Next(25)),
            OneLot = random.Next(3) > 0,
            Felt = felts[random.Next(3)],
            ReserveBalls = random.Next(5) == 0 ? 100 : 0,
        })];
        PressSpec[] presses =
        [
            Press("P1", 12, 40, 150, "D0", "D1", "D4", "D5", "D6"), Press("P2", 8, 30, 150, "D2", "D3", "D6", "D7", "D1"),
        ];
        return new OrderRequest
        {
            Orders = wanted,
            Rolls = stock,
            Offers = [],
            Dies = dies,
            Presses = presses,
            Rules = new OrderRules
            {
                Currency = "EUR",
                Start = Monday,
                HoursPerDay = 8,
                EndLossMm = 300,
                RejectPercent = 0.5,
                UnpairedPercent = 0.2,
                RemnantValuePercent = 100,
                LeastRemnantM = 2,
                LeastCutM = 1,
                PerStrike = 0.13m,
                HourRate = 38,
            },
        };
    }

    /// <summary>A small question by its number, of every kind: lots, reserves, offers, worn dies, dies to make, short hours, least
    /// pieces, rolls that arrive later, uneven classes.</summary>
    internal static OrderRequest Random(int seed)
    {
        Random random = new(seed);
        CutDie[] dies = [.. Enumerable.Range(0, 1 + random.Next(4))
            .Select(i => Die(
                $"D{i}", $"b{random.Next(2)}", 1 + random.Next(30), 90 + random.Next(200), 150 + random.Next(200), random.Next(6),
                random.Next(3) == 0 ? 1300 : 900) with
        {
            StrikesLeft = random.Next(3) == 0 ? random.Next(40) : 5000,
        })];
        dies =
        [
            .. dies.Select(d =>
                random.Next(4) == 0
                    ? d with { StrikesLeft = 0, MakePrice = random.Next(50), LifeStrikes = 500 }
                    : random.Next(4) == 0
                    ? d with { LifeStrikes = 30, MostReRules = 2, ReRulePrice = 3 }
                    : d),
        ];
        StockRoll Felt(string name) =>
            Roll(
                name, 0.3 + (12 * random.NextDouble()), 1 + random.Next(5), $"L{random.Next(3)}", random.Next(2) == 0 ? 1000 : 1400,
                3 * random.NextDouble()) with
            {
                Felt = random.Next(2) == 0 ? "felt" : "other",
            };
        StockRoll[] rolls =
        [
            .. Enumerable.Range(0, 1 + random.Next(8))
                .Select(i => Felt($"R{i}") with { Received = random.Next(3) == 0 ? Monday.AddDays(random.Next(9) - 4) : null }),
        ];
        FeltPurchase[] offers =
        [
            .. Enumerable.Range(0, random.Next(3))
                .Select(i => new FeltPurchase(Felt($"offer {i}") with { Offer = $"offer {i}" }, random.Next(3) * 8)),
        ];
        CoverOrder[] orders = [.. Enumerable.Range(0, 1 + random.Next(6))
            .Select(i => Order(
                $"O{i}", $"b{random.Next(3)}", 1 + random.Next(400), random.Next(20), random.Next(2) == 0,
                random.Next(3) == 0 ? random.Next(60) : 0) with
        {
            Felt = random.Next(3) == 0 ? "felt" : null,
        })];
        PressSpec[] presses =
        [
            .. Enumerable.Range(0, 1 + random.Next(2))
                .Select(i => Press($"P{i}", 1 + random.Next(20), random.Next(60), random.Next(2) == 0 ? random.Next(5) : null)),
        ];
        return new OrderRequest
        {
            Orders = orders,
            Rolls = rolls,
            Offers = offers,
            Dies = dies,
            Presses = presses,
            Rules = new OrderRules
            {
                Currency = "EUR",
                Start = Monday,
                HoursPerDay = 8,
                EndLossMm = random.Next(2) * 50,
                RejectPercent = random.NextDouble(),
                UnpairedPercent = 0,
                RemnantValuePercent = 50 * random.Next(3),
                LeastRemnantM = random.Next(3),
                LeastCutM = random.Next(3) * 0.7,
                PerStrike = 0.1m,
                HourRate = 5,
            },
        };
    }
}
