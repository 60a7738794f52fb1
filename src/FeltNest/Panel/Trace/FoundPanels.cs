namespace FeltNest.Panel.Trace;

/// <summary>Panels found in a picture.</summary>
internal sealed record FoundPanels
{
    /// <summary>Colour in which panel and ground lie farthest apart.</summary>
    public required string Seen { get; init; }

    /// <summary>How far they lie apart, of 255.</summary>
    public required double Contrast { get; init; }

    /// <summary>Their edges, pixels; the largest first.</summary>
    public required IReadOnlyList<Contour> Panels { get; init; }

    /// <summary>Frames and other things as large as a mark that were left aside.</summary>
    public required int LeftAside { get; init; }
}
