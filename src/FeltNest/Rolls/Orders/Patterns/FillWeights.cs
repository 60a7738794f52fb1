namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Weights by which a lot is filled: other weights give other plans.</summary>
/// <param name="Orders">Factor on the worth of each order's strikes, by the place of the order.</param>
/// <param name="Whole">Factor on what it is worth to cut an order to its end.</param>
/// <param name="Rolls">Factor on the worth of a kind of roll.</param>
internal sealed record FillWeights(IReadOnlyDictionary<int, double> Orders, double Whole, Func<int, double> Rolls)
{
    // How far the worth of an order's strikes and of a roll is moved.
    private const double OrderSpread = 0.04;
    private const double RollSpread = 0.01;
    private static readonly double[] Wholes = [0.5, 1, 2, 4, 8];

    /// <summary>Weights that change nothing.</summary>
    public static FillWeights Even(IReadOnlyList<LotPortion> portions) => new(portions.ToDictionary(p => p.Order, _ => 1.0), 1, _ => 1);

    /// <summary>Weights at random.</summary>
    public static FillWeights Drawn(IReadOnlyList<LotPortion> portions, Random random)
    {
        double whole = Wholes[random.Next(Wholes.Length)];
        int seed = random.Next(1 << 20);
        double spread = random.Next(2) * RollSpread;
        return new FillWeights(
            portions.ToDictionary(p => p.Order, _ => 1 + (OrderSpread * ((2 * random.NextDouble()) - 1))), whole,
            kind => 1 + (spread * Math.Sin((seed + kind) * 12.9898)));
    }
}
