namespace FeltNest.Design.SeamDesign;

/// <summary>By how much a measured seam passes each of its limits; 0 or less keeps it.</summary>
internal readonly record struct SeamExcess
{
    /// <summary>Stretch, per cent.</summary>
    public required double Stretch { get; init; }

    /// <summary>Principal compression, per cent.</summary>
    public required double Compression { get; init; }

    /// <summary>Radius of the seam, mm too small.</summary>
    public required double Radius { get; init; }

    /// <summary>Distance between runs of the seam, mm too small.</summary>
    public required double Run { get; init; }

    /// <summary>Gap felt, mm.</summary>
    public required double Gap { get; init; }

    /// <summary>Whether all limits are kept.</summary>
    public bool IsNone => Math.Max(Math.Max(Stretch, Compression), Math.Max(Radius, Math.Max(Run, Gap))) <= 0;
}
