namespace FeltNest.Ball.Ranges;

/// <summary>What the gaps that an edge adhesive bridges may be.</summary>
internal static class AdhesiveRanges
{
    /// <summary>Least gap the adhesive bridges.</summary>
    public static readonly FieldRange Least = new()
    {
        Field = "seam.adhesiveLeastMm",
        Low = 0,
        High = 3,
        Unit = "mm",
        Reason = "below 0 the edges lap, and no seam gap is wider",
    };

    /// <summary>Greatest gap the adhesive bridges.</summary>
    public static readonly FieldRange Most = new()
    {
        Field = "seam.adhesiveMostMm",
        Low = 0,
        High = 3,
        Unit = "mm",
        Reason = "below 0 the edges lap, and a wider gap leaves the core bare",
    };
}
