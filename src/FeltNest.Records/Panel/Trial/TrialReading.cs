namespace FeltNest.Panel.Trial;

/// <summary>What was read at one place of the seam of a trial ball.</summary>
internal sealed record TrialReading
{
    /// <summary>Name of the ball.</summary>
    public required string Ball { get; init; }

    /// <summary>Number of the place on the record sheet, from 1.</summary>
    public required int Place { get; init; }

    /// <summary>Gap between the two edges, mm along the surface, below 0 a lap.</summary>
    public required double GapMm { get; init; }

    /// <summary>Width across the waist that the place lies on, over the felt's outer face from the middle of the seam to the middle of the
    /// seam, mm; null where it was not measured.</summary>
    public double? WaistMm { get; init; }
}
