using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Begun;

/// <summary>Takes what is cut of a plan off the rolls, dies and orders that the plan was made from.</summary>
/// <remarks>A job of which some strikes are done is kept: its rest is cut from the same roll with the same die on the same press, before
/// all else there. Where its order wants more than that rest, the rest is planned as an order of its own.</remarks>
internal static class BegunShop
{
    /// <summary>What stands behind the name of an order for the rest of its job that is begun.</summary>
    public const string RestMark = " begun";

    // A roll shorter than any list takes is used up, m.
    private const double ShortestM = 0.1;

    /// <summary>The question without what is done.</summary>
    /// <param name="question">The question, of the lists that the plan was made from.</param>
    /// <param name="before">The question of that plan.</param>
    /// <param name="done">What is done.</param>
    /// <exception cref="NoAnswerException">All orders are done.</exception>
    public static OrderRequest After(OrderRequest question, OrderRequest before, IReadOnlyList<DoneWork> done)
    {
        OrderRequest rest = question with
        {
            Rolls = [.. question.Rolls.Select(roll => Roll(roll, before, done)).Where(roll => roll.LengthM >= ShortestM)],
            Dies = [.. question.Dies.Select(die => RestOf.Die(
                die, done.Where(d => d.Cut.Die.Name == die.Name).Sum(d => (long)d.Strikes), before.Rules.Start))],
        };
        List<CoverOrder> orders = [];
        foreach (CoverOrder order in question.Orders)
        {
            DoneWork[] own = [.. done.Where(d => d.Cut.Order.Name == order.Name && d.Strikes > 0)];
            CoverOrder left = own.Length == 0 ? order : Left(question, order, own);
            orders.AddRange(
                left.Balls > 0 ? Split(rest, before, left, [.. own.Where(d => d.IsBegun)], [.. question.Orders, .. orders]) : []);
        }

        return orders.Count > 0
            ? rest with { Orders = orders, Presses = Mounted(rest, done) }
            : throw new NoAnswerException("all orders of the list are done: nothing is left to plan");
    }

    /// <summary>The question of lists that say what is left already: jobs begun are kept.</summary>
    /// <param name="rest">The question.</param>
    /// <param name="begun">What is done of the jobs that are begun, in the order in which their dies were mounted.</param>
    public static OrderRequest Kept(OrderRequest rest, IReadOnlyList<DoneWork> begun)
    {
        List<CoverOrder> orders = [];
        foreach (CoverOrder order in rest.Orders)
        {
            DoneWork[] own = [.. begun.Where(d => d.Cut.Order.Name == order.Name && d.IsBegun)];
            orders.AddRange(Split(rest, rest, order, own, [.. rest.Orders, .. orders]));
        }

        return rest with { Orders = orders, Presses = Mounted(rest, begun) };
    }

    /// <summary>The name of the order that a rest belongs to.</summary>
    public static string OrderOf(CoverOrder order) =>
        order.Pins is { First: true } && order.Name.Contains(RestMark, StringComparison.Ordinal)
        ? order.Name[..order.Name.LastIndexOf(RestMark, StringComparison.Ordinal)]
        : order.Name;

    private static StockRoll Roll(StockRoll roll, OrderRequest before, IReadOnlyList<DoneWork> done)
    {
        DoneWork[] own = [.. done.Where(d => d.Roll == roll.Name && d.Strikes > 0)];
        return own.Length == 0
            ? roll
            : RestOf.Roll(roll, before.Rolls.FirstOrDefault(r => r.Name == roll.Name) ?? roll, own.Max(d => d.UsableFromM));
    }

    private static CoverOrder Left(OrderRequest question, CoverOrder order, DoneWork[] own)
    {
        StockRoll[] cut = [.. own.Select(d => question.Rolls.FirstOrDefault(r => r.Name == d.Roll) ?? d.Cut.Roll)];
        int left = (int)Math.Max(0, order.Balls - own.Sum(d => (long)d.Balls));
        return RestOf.Order(order, left, cut[0]);
    }

    // The rests of jobs that are begun, then what the order wants beside them.
    private static IEnumerable<CoverOrder> Split(
        OrderRequest rest, OrderRequest before, CoverOrder order, DoneWork[] begun, IReadOnlyList<CoverOrder> taken)
    {
        int left = order.Balls;
        List<CoverOrder> parts = [];
        foreach (DoneWork job in begun.Where(job => IsKept(rest, order, job)))
        {
            OrderPins pins = (order.Pins ?? new OrderPins()) with
            {
                Rolls = [job.Roll],
                Presses = [job.Cut.Press.Name],
                Dies = [job.Cut.Die.Name],
                Day = null,
                First = true,
            };
            int balls = job.Cut.Die.Shape.BallsOf(job.Cut.Strikes - job.Strikes, before.GoodShare(job.Cut.Roll, job.Cut.Die));
            if (balls >= left && left > 0)
            {
                return [.. parts, order with { Balls = left, Pins = pins }];
            }

            if (balls > 0)
            {
                string name = FreeName(order.Name + RestMark, [.. taken, .. parts]);
                parts.Add(order with { Name = name, Balls = balls, ReserveBalls = 0, Pins = pins });
                left -= balls;
            }
        }

        return [.. parts, order with { Balls = left }];
    }

    // Its roll, die and press are there, and the order may be cut by them.
    private static bool IsKept(OrderRequest rest, CoverOrder order, DoneWork job) =>
        rest.Rolls.FirstOrDefault(r => r.Name == job.Roll) is { } roll
            && rest.Dies.FirstOrDefault(d => d.Name == job.Cut.Die.Name) is { MostStrikes: > 0 } die
            && rest.Presses.FirstOrDefault(p => p.Name == job.Cut.Press.Name) is { } press
            && OrderRequest.CutsOn(order, press, die)
            && rest.FitsButForNap(order, roll, die);

    private static string FreeName(string name, IReadOnlyList<CoverOrder> taken)
    {
        int number = 1;
        string free = name;
        while (taken.Any(order => order.Name == free))
        {
            number++;
            free = $"{name} {number}";
        }

        return free;
    }

    // The die that was struck last on a press stands there, where its file names no other and the die went to no other press after.
    private static IReadOnlyList<PressSpec> Mounted(OrderRequest rest, IReadOnlyList<DoneWork> done)
    {
        DoneWork[] struck = [.. done.Where(d => d.Strikes > 0).OrderBy(d => d.Cut.StartHour)];
        return [.. rest.Presses.Select(Stands)];

        PressSpec Stands(PressSpec press)
        {
            DoneWork? last = struck.LastOrDefault(d => d.Cut.Press.Name == press.Name);
            bool stays = last is not null && press.MountedDie is null
                && struck.Last(d => d.Cut.Die.Name == last.Cut.Die.Name) == last
                && rest.Presses.All(p => p.MountedDie != last.Cut.Die.Name)
                && rest.Dies.Any(die => die.Name == last.Cut.Die.Name && OrderRequest.Takes(press, die));
            return stays ? press with { MountedDie = last!.Cut.Die.Name } : press;
        }
    }
}
