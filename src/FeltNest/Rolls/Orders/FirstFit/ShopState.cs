using FeltNest.Rolls.Orders.Assembly;
using FeltNest.Rolls.Orders.Model;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.FirstFit;

/// <summary>What is left in the shop while a plan grows: cloth on rolls, strikes in dies, hours of presses, rolls bought.</summary>
internal sealed class ShopState
{
    // A strike that misses the end of a press's hours by less is rounding.
    private const double Slack = 1e-9;

    private readonly List<StockRoll> rolls;
    private readonly List<double> free;
    private readonly List<CutPiece> pieces;
    private readonly int[] struck;
    private readonly int[] stands;
    private readonly int[] bought;
    private readonly double[] busy;

    /// <summary>The shop before any work: all rolls, those that come later too, nothing cut.</summary>
    public ShopState(OrderRequest question)
    {
        Question = question;
        rolls = [.. question.Rolls];
        free = [.. rolls.Select(question.ClearM)];
        pieces = [];
        struck = new int[question.Dies.Count];
        stands = [.. question.Dies.Select(_ => -1)];
        busy = new double[question.Presses.Count];
        bought = new int[question.Offers.Count];
    }

    private ShopState(ShopState other)
    {
        Question = other.Question;
        (rolls, free, pieces) = ([.. other.rolls], [.. other.free], [.. other.pieces]);
        (struck, stands, bought, busy) = ([.. other.struck], [.. other.stands], [.. other.bought], [.. other.busy]);
    }

    /// <summary>The question.</summary>
    public OrderRequest Question { get; }

    /// <summary>Rolls there, those bought behind those in stock.</summary>
    public IReadOnlyList<StockRoll> Rolls => rolls;

    /// <summary>Pieces so far.</summary>
    public IReadOnlyList<CutPiece> Pieces => pieces;

    /// <summary>What some of the rolls, all purchases and all dies cost so far.</summary>
    public decimal Cost(IEnumerable<int> some)
    {
        OrderRules rules = Question.Rules;
        decimal share = (decimal)rules.RemnantValuePercent / 100;
        decimal cost = 0;
        foreach (int i in some)
        {
            bool begun = free[i] < Question.ClearM(rolls[i]) - Slack;
            double left = begun ? free[i] + (rules.EndLossMm / 1000) : rolls[i].LengthM;
            double kept = left >= rules.LeastRemnantM ? left : 0;
            cost +=
                begun || rolls[i].Offer is not null ? rolls[i].PricePerMetre * ((decimal)rolls[i].LengthM - (share * (decimal)kept)) : 0;
        }

        for (int o = 0; o < bought.Length; o++)
        {
            StockRoll kind = Question.Offers[o].Roll;
            cost += (Rolled(o) - bought[o]) * kind.PricePerMetre * (decimal)kind.LengthM * (1 - share);
        }

        foreach (int die in Enumerable.Range(0, struck.Length).Where(d => struck[d] > 0))
        {
            DieWork work = new(Question.Dies[die], Question.Presses[stands[die]], struck[die]);
            cost += work.Price + (work.Strikes * rules.PerStrike) + (rules.HourRate * (decimal)work.Press.ChangeOverMinutes / 60);
        }

        return cost;
    }

    /// <summary>The same again, to try something on.</summary>
    public ShopState Copy() => new(this);

    /// <summary>Strikes a die makes so far.</summary>
    public int Struck(int die) => struck[die];

    /// <summary>Uncut cloth of a roll, m.</summary>
    public double FreeM(int roll) => free[roll];

    /// <summary>The press a die stands on, or the least busy one that has room for what is wanted, else the one with most room, and the
    /// most strikes it can make there.</summary>
    public (int Press, int Most) PressFor(int die, int wanted)
    {
        CutDie tool = Question.Dies[die];
        long left = tool.MostStrikes - struck[die];
        if (stands[die] >= 0)
        {
            return (stands[die], Most(stands[die], 0));
        }

        return Enumerable.Range(0, busy.Length).Where(p => OrderRequest.Takes(Question.Presses[p], tool))
            .Select(p => (Press: p, Most: Most(p, Question.Presses[p].ChangeOverMinutes / 60)))
            .MinBy(p => (Math.Max(0, (long)wanted - p.Most), busy[p.Press], p.Press));

        int Most(int press, double before) => Question.Presses[press].Hours is not { } hours
            ? (int)Math.Min(left, int.MaxValue)
            : (int)Math.Clamp(
                Math.Floor((60 * Question.Presses[press].StrokesPerMinute * (hours - busy[press] - before)) + Slack), 0,
                Math.Min(left, int.MaxValue));
    }

    /// <summary>Whether one more roll of an offer may be bought.</summary>
    public bool MayBuy(int offer) => bought[offer] < FeltRows.MostBought;

    /// <summary>Buys a roll.</summary>
    /// <returns>Its place among the rolls.</returns>
    public int Buy(int offer)
    {
        rolls.Add(Question.Offers[offer].Copy(++bought[offer]));
        free.Add(Question.ClearM(rolls[^1]));
        return rolls.Count - 1;
    }

    /// <summary>Adds a piece.</summary>
    /// <returns>Good balls of it.</returns>
    public int Cut(CoverOrder order, int die, int roll, int press, int strikes)
    {
        CutPiece piece = new(order, Question.Dies[die], rolls[roll], strikes);
        pieces.Add(piece);
        if (stands[die] < 0)
        {
            stands[die] = press;
            busy[press] += Question.Presses[press].ChangeOverMinutes / 60;
        }

        Take(die, roll, strikes);
        free[roll] -= piece.Die.Shape.MetresOf(strikes);
        return piece.BallsIn(Question);
    }

    /// <summary>Makes a piece shorter, or takes it back where no strike is left.</summary>
    public void Shorten(int place, int strikes)
    {
        CutPiece piece = pieces[place];
        int die = Question.Dies.ToList().IndexOf(piece.Die);
        int roll = rolls.IndexOf(piece.Roll);
        Take(die, roll, strikes - piece.Strikes);
        free[roll] += piece.Die.Shape.MetresOf(piece.Strikes) - piece.Die.Shape.MetresOf(strikes);
        if (strikes == 0)
        {
            pieces.RemoveAt(place);
        }
        else
        {
            pieces[place] = piece with { Strikes = strikes };
        }

        if (struck[die] == 0)
        {
            busy[stands[die]] -= Question.Presses[stands[die]].ChangeOverMinutes / 60;
            stands[die] = -1;
        }
    }

    /// <summary>The plan of all pieces; felt for later rejects is kept back of what they leave.</summary>
    /// <param name="effort">Counted work for putting them in sequence; 0 takes the best sequence of a rule.</param>
    /// <param name="stop">Ends that with the best so far.</param>
    public OrderPlan Plan(int effort = 0, CancellationToken stop = default)
    {
        RollPurchase[] purchases =
        [
            .. Enumerable.Range(0, bought.Length).Select(o => new RollPurchase(Question.Offers[o], Rolled(o))).Where(p => p.Rolls > 0),
        ];
        return PlanAssembly.Of(Question, pieces, purchases, ReserveFill.Of(this), effort, stop);
    }

    // Rolls of an offer: those taken, or the least that is sold.
    private int Rolled(int offer) =>
        bought[offer] == 0
            ? 0
            : Math.Max(bought[offer], (int)Math.Ceiling((Question.Offers[offer].MinimumM / Question.Offers[offer].Roll.LengthM) - 1e-9));

    private void Take(int die, int roll, int strikes)
    {
        struck[die] += strikes;
        busy[stands[die]] += strikes / (60 * Question.Presses[stands[die]].StrokesPerMinute);
    }
}
