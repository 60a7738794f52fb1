namespace FeltNest.Page.Answers;

/// <summary>A band of a lay: from and to across the roll, length of its repeat, and its panels as x, y, angle in degrees and number of
/// their pairing class.</summary>
internal sealed record BandAnswer
{
    public required double FromMm { get; init; }

    public required double ToMm { get; init; }

    public required double RepeatMm { get; init; }

    public required double[][] Panels { get; init; }
}
