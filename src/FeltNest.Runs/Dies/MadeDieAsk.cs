namespace FeltNest.Runs.Dies;

/// <summary>Which die as made is to be held against which drawing.</summary>
internal sealed record MadeDieAsk
{
    /// <summary>File of the die as drawn.</summary>
    public required string DieFile { get; init; }

    /// <summary>What was measured: a list of cavity,u,v, a DXF, or a picture.</summary>
    public required string MeasuredFile { get; init; }

    /// <summary>Profile tolerance of an edge, mm, or null for the die's own.</summary>
    public double? ProfileMm { get; init; }

    /// <summary>Position tolerance of a cavity, mm, or null for the die's own.</summary>
    public double? PositionMm { get; init; }

    /// <summary>Resolution of a picture, dots per inch, or null.</summary>
    public double? Dpi { get; init; }

    /// <summary>Expanded uncertainty of a measured distance, mm, or null where it is unknown.</summary>
    public double? UncertaintyMm { get; init; }

    /// <summary>Steepest change of the distance along an edge, mm a mm, or null for the usual one.</summary>
    public double? Steepness { get; init; }

    /// <summary>Whether the points stand in the die's frame.</summary>
    public bool InFrame { get; init; }
}
