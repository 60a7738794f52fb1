namespace FeltNest.Rolls.Orders;

/// <summary>What one strike of a die takes of a roll and gives.</summary>
internal sealed record StrikeShape
{
    /// <summary>Advance from strike to strike, mm.</summary>
    public required double FeedMm { get; init; }

    /// <summary>Extent of the cut edges of one strike along the roll, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Extent of the cut edges across the roll, mm.</summary>
    public required double AcrossMm { get; init; }

    /// <summary>Least distance to the cut edges of another die, mm.</summary>
    public required double GapMm { get; init; }

    /// <summary>Narrowest roll, both trims included, mm.</summary>
    public required double LeastWidthMm { get; init; }

    /// <summary>Panels of each pairing class in one strike.</summary>
    public required IReadOnlyList<int> ClassPanels { get; init; }

    /// <summary>Rows across the roll; null where it is not known.</summary>
    public int? Rows { get; init; }

    /// <summary>Part of the layout that covers the die's ball.</summary>
    public int Part { get; init; }

    /// <summary>Ball of the layout's other part, or its name where it covers none; null where there is no other part.</summary>
    public string? AlsoBall { get; init; }

    /// <summary>Panels of each pairing class of the other part in one strike.</summary>
    public IReadOnlyList<int> AlsoClasses { get; init; } = [];

    /// <summary>True where all its panels point one way along the nap.</summary>
    public bool OneWay { get; init; }

    // A cut that misses the end of its cloth by less, mm, is rounding.
    private const double SlackMm = 1e-6;

    /// <summary>What a run of strikes takes beyond a feed each: the strikes reach past their feed, and the next run keeps its gap.
    /// mm.</summary>
    public double OverMm => LengthMm - FeedMm + GapMm;

    /// <summary>Cloth a run of strikes takes, m.</summary>
    public double MetresOf(int strikes) => strikes == 0 ? 0 : ((strikes * FeedMm) + OverMm) / 1000;

    /// <summary>Most strikes in a length of cloth.</summary>
    public int StrikesIn(double metres) => Math.Max(0, (int)Math.Floor(((1000 * metres) - OverMm + SlackMm) / FeedMm));

    /// <summary>Balls one strike gives on average where a share of the panels is good.</summary>
    public double BallsPerStrike(double goodShare) => ClassPanels.Sum() * goodShare / 2;

    /// <summary>Whole good balls to expect of a run of strikes: both panels of a ball come from one class and one run.</summary>
    public int BallsOf(int strikes, double goodShare) => Balls(ClassPanels, strikes, goodShare);

    /// <summary>Whole good balls of the other part that a run of strikes gives besides.</summary>
    public int AlsoBallsOf(int strikes, double goodShare) => Balls(AlsoClasses, strikes, goodShare);

    private static int Balls(IReadOnlyList<int> classes, int strikes, double goodShare) =>
        classes.Sum(panels => (int)Math.Floor((strikes * panels * goodShare / 2) + 1e-9));

    /// <summary>Pairing classes of which a strike gives no whole number of balls: each may leave part of a ball unused in a run.</summary>
    public int UnevenClasses(double goodShare) =>
        ClassPanels.Count(panels => Math.Abs((panels * goodShare / 2) - Math.Round(panels * goodShare / 2)) > 1e-9);
}
