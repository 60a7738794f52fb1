using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>The orders in the model: their balls, their one lot, their reserve.</summary>
internal sealed class OrderRows
{
    private readonly Dictionary<(CoverOrder Order, string Felt, string Lot), Unknown> lots = [];
    private readonly Dictionary<CoverOrder, Unknown> lacking = [];

    private readonly bool safely;

    /// <summary>Adds all orders of a question to a model.</summary>
    /// <param name="model">The model.</param>
    /// <param name="question">The question.</param>
    /// <param name="felt">Its felt.</param>
    /// <param name="safely">Whether balls are counted so that every solution is a plan; else so that every plan is a solution.</param>
    public OrderRows(MixedModel model, OrderRequest question, FeltRows felt, bool safely = true)
    {
        this.safely = safely;
        ReserveWeight = WeightOfReserve(question);
        foreach (CoverOrder order in question.Orders)
        {
            Add(model, question, felt, order);
        }

        Room(model, felt);
        foreach (var lot in felt.Units.GroupBy(unit => (unit.Kind.Felt, unit.Kind.Lot)))
        {
            Whole(model, question, [.. lot]);
        }
    }

    private void Add(MixedModel model, OrderRequest question, FeltRows felt, CoverOrder order)
    {
        Unknown missing = model.Whole(0, order.Balls);
        lacking.Add(order, missing);
        LinearSum balls = new LinearSum().Add(missing);
        foreach ((RollUnit unit, int i) in Choices(felt.Units, order))
        {
            balls.Add(unit.BallsOf(i, question, safely));
            if (order.OneLot)
            {
                model.AtMost(new LinearSum().Add(unit.Pieces[i]).Add(LotOf(model, order, unit.Kind), -unit.Rolls.Count), 0);
            }
        }

        model.AtLeast(balls, order.Balls);
        Short.Add(missing);
        Wanting.Add(missing);
        if (order.ReserveBalls > 0)
        {
            Unknown unreserved = Reserve(model, question, felt, order);
            Short.Add(unreserved, ReserveWeight);
            Wanting.Add(unreserved);
        }

        LinearSum one = new();
        foreach (Unknown lot in lots.Where(l => l.Key.Order == order).Select(l => l.Value))
        {
            one.Add(lot);
        }

        if (!one.IsEmpty)
        {
            model.AtMost(one, 1);
        }
    }

    /// <summary>Whether an order takes a lot.</summary>
    public IEnumerable<(CoverOrder Order, string Felt, string Lot, Unknown Taken)> Lots =>
        lots.Select(l => (l.Key.Order, l.Key.Felt, l.Key.Lot, l.Value));

    /// <summary>Balls short, and far less weighty reserves short.</summary>
    public LinearSum Short { get; } = new();

    /// <summary>Balls and reserves short, one as weighty as the other.</summary>
    public LinearSum Wanting { get; } = new();

    /// <summary>Weight of a ball of a reserve in <see cref="Short"/>: one ball short outweighs every reserve.</summary>
    public double ReserveWeight { get; }

    /// <summary>Weight of a ball of a reserve in a question.</summary>
    public static double WeightOfReserve(OrderRequest question) => 1.0 / (1 + question.Orders.Sum(o => (double)o.ReserveBalls));

    /// <summary>Metres kept back for an order from a room.</summary>
    public List<(CoverOrder Order, FeltRoom Room, Unknown Metres)> Reserves { get; } = [];

    /// <summary>Balls that a metre of a roll gives an order by its best die; 0 where none fits.</summary>
    public static double BallsPerMetre(OrderRequest question, CoverOrder order, StockRoll roll) => question.Dies
        .Where(die => question.Fits(order, roll, die))
        .Select(die => 1000 * die.Shape.BallsPerStrike(question.GoodShare(roll, die)) / die.Shape.FeedMm)
        .DefaultIfEmpty(0).Max();

    private static IEnumerable<(RollUnit Unit, int Choice)> Choices(IEnumerable<RollUnit> units, CoverOrder order) =>
        units.SelectMany(unit => Enumerable.Range(0, unit.Choices.Count).Where(i => unit.Choices[i].Order == order).Select(i => (unit, i)));

    private Unknown Reserve(MixedModel model, OrderRequest question, FeltRows felt, CoverOrder order)
    {
        Unknown missing = model.Number(order.ReserveBalls);
        LinearSum kept = new LinearSum().Add(missing);
        foreach (FeltRoom room in felt.Rooms)
        {
            double perMetre = BallsPerMetre(question, order, room.Roll);
            if (perMetre > 0)
            {
                double most = order.ReserveBalls / perMetre;
                Unknown metres = model.Number(most);
                kept.Add(metres, perMetre);
                Reserves.Add((order, room, metres));
                if (order.OneLot)
                {
                    model.AtMost(new LinearSum().Add(metres).Add(LotOf(model, order, room.Roll), -most), 0);
                }
            }
        }

        model.AtLeast(kept, order.ReserveBalls);
        return missing;
    }

    // True of every plan and never binding in whole numbers, but it lets the solver see how many rolls of a lot its orders begin: an order
    // of one lot takes all its felt there, but for what it is short.
    private void Whole(MixedModel model, OrderRequest question, RollUnit[] units)
    {
        LinearSum clear = new();
        foreach (RollUnit unit in units)
        {
            clear.Add(unit.Begun, question.ClearM(unit.Kind));
        }

        foreach (CoverOrder order in question.Orders.Where(o => o.OneLot))
        {
            if (!lots.TryGetValue((order, units[0].Kind.Felt, units[0].Kind.Lot), out Unknown? lot))
            {
                continue;
            }

            LinearSum balls = new LinearSum().Add(lacking[order]).Add(lot, -order.Balls);
            foreach ((RollUnit unit, int i) in Choices(units, order))
            {
                balls.Add(unit.BallsOf(i, question, safely));
            }

            model.AtLeast(balls, 0);
            double perMetre = units.Max(unit => BallsPerMetre(question, order, unit.Kind));
            if (perMetre > 0)
            {
                clear.Add(lot, -order.Balls / perMetre).Add(lacking[order], 1 / perMetre);
            }
        }

        model.AtLeast(clear, 0);
    }

    private void Room(MixedModel model, FeltRows felt)
    {
        foreach (FeltRoom room in felt.Rooms)
        {
            LinearSum wanted = new();
            foreach ((_, _, Unknown metres) in Reserves.Where(r => r.Room == room))
            {
                wanted.Add(metres);
            }

            if (!wanted.IsEmpty)
            {
                model.AtMost(wanted.Add(room.Metres, -1), 0);
            }
        }
    }

    private Unknown LotOf(MixedModel model, CoverOrder order, StockRoll roll)
    {
        if (!lots.TryGetValue((order, roll.Felt, roll.Lot), out Unknown? lot))
        {
            lot = model.Choice();
            lots.Add((order, roll.Felt, roll.Lot), lot);
        }

        return lot;
    }
}
