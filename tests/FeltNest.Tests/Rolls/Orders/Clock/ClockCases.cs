using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Clock;

namespace FeltNest.Tests.Rolls.Orders.Clock;

/// <summary>Pieces and presses to put in sequence.</summary>
internal static class ClockCases
{
    /// <summary>Every hour of every day.</summary>
    internal static PressCalendar Always { get; } =
        new() { Shifts = [.. Enum.GetValues<DayOfWeek>().Select(day => new WeekShift { Day = day, FromHour = 0, ToHour = 24 })] };

    /// <summary>A press of one strike an hour.</summary>
    internal static PressSpec Press(string name, PressCalendar? calendar = null, double mountMinutes = 0, params string[] dies) =>
        OrderCases.Press(name, 1 / 60.0, mountMinutes, null, dies) with { Calendar = calendar ?? Always };

    internal static CoverOrder Order(string name, int dueDay, int priority = 1) =>
        OrderCases.Order(name, "ball", 1_000_000, dueDay) with { Priority = priority };

    internal static CutDie Die(string name) => OrderCases.Die(name, "ball", 20, 200, 250, 5);

    internal static StockRoll Roll(string name) => OrderCases.Roll(name, 10_000, 1);

    internal static OrderRequest Question(IEnumerable<CutPiece> pieces, params PressSpec[] presses)
    {
        CutPiece[] all = [.. pieces];
        return new OrderRequest
        {
            Orders = [.. all.Select(p => p.Order).Distinct()],
            Rolls = [.. all.Select(p => p.Roll).Distinct()],
            Offers = [],
            Dies = [.. all.Select(p => p.Die).Distinct()],
            Presses = presses,
            Rules = OrderCases.Bare,
        };
    }

    /// <summary>Days late by priority of what the scheduler makes.</summary>
    internal static long WeightedDays(OrderRequest question, IEnumerable<CutPiece> pieces, int effort = 5) =>
        Scored(CutScheduler.Run(question, [.. pieces], effort)).WeightedDays;

    /// <summary>The score of a result, from its end times alone.</summary>
    internal static (long Unplaced, long WeightedDays, int Late) Scored(ClockResult result)
    {
        ClockShop shop = result.Shop;
        double[] done = new double[shop.Orders.Length];
        long unplaced = 0;
        for (int piece = 0; piece < shop.Pieces.Count; piece++)
        {
            int order = shop.OrderOf[piece];
            done[order] = result.Times.Placed[piece] ? Math.Max(done[order], result.Times.End[piece]) : done[order];
            unplaced += result.Times.Placed[piece] ? 0 : shop.Balls[piece];
        }

        long[] days = [.. done.Select((end, o) => (long)Math.Max(0, Math.Ceiling((end - shop.Due[o]) / 24 - 1e-8)))];
        return (unplaced, days.Select((d, o) => d * shop.Priority[o]).Sum(), days.Count(d => d > 0));
    }

    /// <summary>A shop by its number: so many orders of one to three pieces, four dies, presses of two shifts.</summary>
    internal static (OrderRequest Question, CutPiece[] Pieces) Shop(int seed, int orders, int presses, double load = 0.9)
    {
        Random random = new(seed);
        CutDie[] dies = [.. Enumerable.Range(0, 4 + (presses / 2)).Select(i => Die($"D{i}"))];
        List<CutPiece> pieces = [];
        double hours = 0;
        for (int o = 0; o < orders; o++)
        {
            CoverOrder order = Order($"O{o}", 0, 1 + (random.Next(4) == 0 ? random.Next(9) : 0));
            CutDie die = dies[random.Next(dies.Length)];
            for (int k = 1 + random.Next(3); k > 0; k--)
            {
                int strikes = 60 + random.Next(900);
                hours += strikes / 600.0;
                pieces.Add(new CutPiece(order, die, Roll($"R{random.Next(orders)}"), strikes));
            }
        }

        int days = (int)Math.Ceiling(hours / presses / 14 / load * 7 / 5);
        Dictionary<string, CoverOrder> due = pieces.Select(p => p.Order).Distinct()
            .ToDictionary(o => o.Name, o => o with { Due = OrderCases.Monday.AddDays(random.Next(days + 1)) });
        PressCalendar shifts = new()
        {
            Shifts = [.. Enumerable.Range(1, 5).Select(d => new WeekShift { Day = (DayOfWeek)d, FromHour = 6, ToHour = 20 })],
        };
        CutPiece[] all = [.. pieces.Select(p => p with { Order = due[p.Order.Name] })];
        PressSpec[] shop =
        [
            .. Enumerable.Range(0, presses).Select(i => OrderCases.Press($"P{i}", 10, 30, null) with
            {
                Calendar = shifts,
                RollChangeMinutes = 5,
            }),
        ];
        return (Question(all, shop), all);
    }
}
