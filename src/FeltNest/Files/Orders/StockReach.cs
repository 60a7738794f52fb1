using FeltNest.Rolls.Orders;

namespace FeltNest.Files.Orders;

/// <summary>How many balls all the felt in stock could give at most: an order for many times as many is asked about, as its number may have
/// been typed in balls where thousands are wanted.</summary>
internal sealed class StockReach
{
    // Times all the felt in stock from which on an order is asked about. A shop that buys for each order holds little, so it is given more.
    private const int TimesAlone = 5;
    private const int TimesBuying = 50;

    private readonly double metres;
    private readonly int times;
    private readonly Dictionary<string, double> metresPerBall;

    /// <summary>The reach of felt under dies.</summary>
    /// <param name="stock">Rolls in stock.</param>
    /// <param name="dies">Dies.</param>
    /// <param name="buying">Whether felt can be bought.</param>
    public StockReach(IEnumerable<StockRoll> stock, IEnumerable<CutDie> dies, bool buying)
    {
        metres = stock.Sum(roll => roll.LengthM);
        times = buying ? TimesBuying : TimesAlone;
        metresPerBall = dies
            .GroupBy(die => die.Ball)
            .ToDictionary(same => same.Key, same => same.Min(die => die.Shape.FeedMm / 1000 / die.Shape.BallsPerStrike(1)));
    }

    /// <summary>What is asked about an order for so many balls, or null for nothing.</summary>
    /// <param name="ball">Its ball.</param>
    /// <param name="balls">Balls wanted.</param>
    public string? Question(string ball, double balls) =>
        metresPerBall.TryGetValue(ball, out double each) && balls * each > times * metres
            ? InvariantText.Invariant($"{balls / 1000:0.###} thousand balls want at least {balls * each:0} m of felt, and all in stock is ")
                + InvariantText.Invariant($"{metres:0.#} m: 2400 balls are 2.4 here; if the number is meant, say so")
            : null;
}
