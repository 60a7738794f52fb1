namespace FeltNest.Runs.Dies;

/// <summary>Which measured panel is to be judged against what.</summary>
internal sealed record FirstArticleAsk
{
    /// <summary>File of the die or of the outline.</summary>
    public required string WantedFile { get; init; }

    /// <summary>Points measured round the panel.</summary>
    public required string PointsFile { get; init; }

    /// <summary>Profile tolerance, mm, or null for the die's own or the usual one.</summary>
    public double? ProfileMm { get; init; }

    /// <summary>Expanded uncertainty of a measured distance, mm, or null where it is unknown.</summary>
    public double? UncertaintyMm { get; init; }

    /// <summary>Steepest change of the distance along the edge, mm a mm, or null for the usual one.</summary>
    public double? Steepness { get; init; }

    /// <summary>Whether the points stand in the frame of the drawing.</summary>
    public bool InFrame { get; init; }

    /// <summary>Resolution of the outline where it is a picture, dots per inch, or null.</summary>
    public double? Dpi { get; init; }

    /// <summary>Letter of the part where the die cuts several, or null.</summary>
    public string? Part { get; init; }
}
