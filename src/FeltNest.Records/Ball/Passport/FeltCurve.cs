namespace FeltNest.Ball.Passport;

/// <summary>The law of a strip in one direction, in tension or in compression: force for a mm of width against strain e in the range
/// fitted.</summary>
/// <remarks>Straight: N = c + E e. Bent: N = c + E e (1 + b e). The shift c is the strip's own: pretension and slack.</remarks>
internal sealed record FeltCurve
{
    /// <summary>Direction in the felt.</summary>
    public required FeltDirection Direction { get; init; }

    /// <summary>Whether the strips were in tension; else in compression.</summary>
    public required bool InTension { get; init; }

    /// <summary>Places fitted.</summary>
    public required int Points { get; init; }

    /// <summary>Modulus of the straight law, N/mm.</summary>
    public required FeltValue Straight { get; init; }

    /// <summary>What the straight law leaves, N/mm, root mean square.</summary>
    public required double StraightRms { get; init; }

    /// <summary>Modulus of the bent law at strain 0, N/mm.</summary>
    public required FeltValue Initial { get; init; }

    /// <summary>Bend b of the bent law, for a strain of 1; above 0 the felt grows stiffer when pulled.</summary>
    public required FeltValue Bend { get; init; }

    /// <summary>What the bent law leaves, N/mm, root mean square.</summary>
    public required double BentRms { get; init; }

    /// <summary>F of the bend: what one more number takes off the squares left, over the mean square that is left then.</summary>
    public required double Ratio { get; init; }

    /// <summary>Freedoms of what is left.</summary>
    public required int Freedom { get; init; }

    /// <summary>Chance that noise alone gives as much.</summary>
    public required double Chance { get; init; }

    // Above this chance a bend is taken for noise.
    private const double Level = 0.05;

    /// <summary>Whether the curve bends: more than noise gives, and alike from strip to strip.</summary>
    public bool Bends => Chance < Level && Math.Abs(Bend.Value) > Bend.Interval;
}
