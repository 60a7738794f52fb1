namespace FeltNest.Ball.Passport;

/// <summary>Distance of two marks on a square before and after the cure.</summary>
internal sealed record SquareReading
{
    /// <summary>Name of the square.</summary>
    public required string Specimen { get; init; }

    /// <summary>Direction of the two marks: warp or weft.</summary>
    public required FeltDirection Direction { get; init; }

    /// <summary>Distance before, mm.</summary>
    public required double BeforeMm { get; init; }

    /// <summary>Distance after, mm.</summary>
    public required double AfterMm { get; init; }

    /// <summary>Shrinkage, per cent of the length before; below 0 the felt grew.</summary>
    public double ShrinkPercent => 100 * (BeforeMm - AfterMm) / BeforeMm;
}
