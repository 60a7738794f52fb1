namespace FeltNest.Geometry.NoFit;

/// <summary>A straight piece of allowed places inside a no-fit region, without area: the moving part fits exactly between two
/// sides.</summary>
internal readonly record struct NoFitSlit
{
    /// <summary>One end, mm.</summary>
    public required Point2 From { get; init; }

    /// <summary>Other end, mm.</summary>
    public required Point2 To { get; init; }
}
