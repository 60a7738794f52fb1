namespace FeltNest.Die.Check;

/// <summary>A plan of stock as a die file states it.</summary>
internal sealed record StatedStock
{
    /// <summary>One length, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Lost at a cut, mm.</summary>
    public required double LossMm { get; init; }

    /// <summary>Dies it is for.</summary>
    public required int Dies { get; init; }

    /// <summary>Lengths taken.</summary>
    public required int Lengths { get; init; }

    /// <summary>Fewest that any plan takes.</summary>
    public required int Bound { get; init; }

    /// <summary>Cuts: times, pieces by place in the list of strips with their count, left over.</summary>
    public required IReadOnlyList<(int Times, IReadOnlyList<(int Strip, int Count)> Pieces, double OffcutMm)> Cuts { get; init; }
}
