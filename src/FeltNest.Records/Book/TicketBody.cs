namespace FeltNest.Book;

/// <summary>A cutting ticket as it was printed, with the standard it is judged by later.</summary>
internal sealed record TicketBody
{
    public required long Plan { get; init; }

    public required string Order { get; init; }

    public required string Ball { get; init; }

    public required string Roll { get; init; }

    public required string Felt { get; init; }

    public required string Lot { get; init; }

    public string? Supplier { get; init; }

    public required string Die { get; init; }

    public required string Press { get; init; }

    public required int Strikes { get; init; }

    public required int Panels { get; init; }

    /// <summary>Whole good balls to expect.</summary>
    public required int Balls { get; init; }

    /// <summary>Where the piece begins on the roll, m.</summary>
    public required decimal FromM { get; init; }

    public required decimal ToM { get; init; }

    /// <summary>Felt before the piece that is lost with it: the end of a roll, m.</summary>
    public required decimal LeadM { get; init; }

    public required decimal WidthMm { get; init; }

    public required decimal FeedMm { get; init; }

    /// <summary>What a run of strikes takes beyond a feed each, mm.</summary>
    public required decimal OverMm { get; init; }

    /// <summary>Narrowest width that loses no row, both trims included, mm.</summary>
    public decimal? LeastWidthMm { get; init; }

    /// <summary>Rows that a strike cuts.</summary>
    public int? Rows { get; init; }

    /// <summary>Panels of each pairing group in one strike.</summary>
    public required IReadOnlyList<int> GroupPanels { get; init; }

    public required decimal GoodShare { get; init; }

    public required decimal FaultPercent { get; init; }

    public required decimal RejectPercent { get; init; }

    public required decimal UnpairedPercent { get; init; }

    public required decimal PricePerMetre { get; init; }

    public required string Currency { get; init; }

    public required string Due { get; init; }

    public required string Start { get; init; }

    public required string End { get; init; }

    /// <summary>Felt that a number of strikes takes, m.</summary>
    internal decimal MetresOf(int strikes) => strikes == 0 ? 0 : Math.Round(((strikes * FeedMm) + OverMm) / 1000, 6);

    /// <summary>Whole good balls to expect of a number of strikes.</summary>
    internal int BallsOf(int strikes) =>
        GroupPanels.Sum(panels => (int)Math.Floor(((double)strikes * panels * (double)GoodShare / 2) + 1e-9));
}
