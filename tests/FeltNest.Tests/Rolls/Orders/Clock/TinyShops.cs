using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Clock;

namespace FeltNest.Tests.Rolls.Orders.Clock;

/// <summary>Shops of four or five pieces, and the best of all their sequences.</summary>
internal static class TinyShops
{
    /// <summary>A shop by its number.</summary>
    internal static (OrderRequest Question, CutPiece[] Pieces) Of(int seed)
    {
        Random random = new(seed);
        int presses = 1 + random.Next(2);
        CutPiece[] pieces =
        [
            .. Enumerable.Range(0, presses == 1 ? 5 : 4).Select(i => new CutPiece(
                ClockCases.Order($"O{i / (1 + random.Next(2))}", random.Next(4), 1 + random.Next(3)), ClockCases.Die($"D{random.Next(2)}"),
                ClockCases.Roll($"R{random.Next(3)}"), 1 + random.Next(9))),
        ];
        Dictionary<string, CoverOrder> orders = pieces.Select(p => p.Order).GroupBy(o => o.Name).ToDictionary(o => o.Key, o => o.First());
        Dictionary<string, StockRoll> rolls = pieces.Select(p => p.Roll).GroupBy(r => r.Name).ToDictionary(r => r.Key, r => r.First() with
        {
            Received = OrderCases.Monday.AddDays(random.Next(4) == 0 ? random.Next(3) : 0),
        });
        pieces = [.. pieces.Select(p => p with { Order = orders[p.Order.Name], Roll = rolls[p.Roll.Name] })];
        PressSpec[] shop =
        [
            .. Enumerable.Range(0, presses).Select(i => ClockCases.Press($"P{i}", PressCalendar.Usual(8 + random.Next(8)), 90) with
            {
                RollChangeMinutes = 10 * random.Next(3),
                Hours = random.Next(4) == 0 ? 20 : null,
                MountedDie = i == 0 && random.Next(2) == 0 ? "D0" : null,
            }),
        ];
        return (ClockCases.Question(pieces, shop), pieces);
    }

    /// <summary>The best of every order of dispatch and every choice of presses.</summary>
    internal static ClockScore Best(ClockShop shop)
    {
        int count = shop.Pieces.Count;
        int presses = shop.Open.Length;
        PressClock clock = new(shop);
        ClockScore? best = null;
        Try([]);
        return best!.Value;

        void Try(List<int> taken)
        {
            if (taken.Count == count)
            {
                for (int code = 0; code < Math.Pow(presses, count); code++)
                {
                    int rest = code;
                    int[] pressOf =
                    [
                        .. Enumerable.Range(0, count).Select(_ => (rest = Math.DivRem(rest, presses, out int press)) is var _ ? press : 0),
                    ];
                    ClockScore score = clock.Run([.. taken], pressOf);
                    best = best is { } known && known.CompareTo(score) <= 0 ? known : score;
                }

                return;
            }

            foreach (int next in Enumerable.Range(0, count).Where(piece => !taken.Contains(piece)))
            {
                Try([.. taken, next]);
            }
        }
    }
}
