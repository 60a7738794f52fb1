namespace FeltNest.Panel.Wrap;

/// <summary>By how much the edge of a real outline was smoothed before it was laid on the ball.</summary>
internal sealed record EdgeSmoothing
{
    /// <summary>Places of the outline that the smooth edge was laid through.</summary>
    public required int Places { get; init; }

    /// <summary>How far the places lie off the smooth edge, root mean square, mm.</summary>
    public required double RmsMm { get; init; }

    /// <summary>How far at most, mm.</summary>
    public required double GreatestMm { get; init; }

    /// <summary>How far at most the smooth edge runs off the outline as drawn between its places, mm: the rise of an edge over its
    /// chords.</summary>
    public required double OffDrawnMm { get; init; }

    /// <summary>What the smooth edge is kept by: an outline that is off its own image by its noise alone is taken to be kept.</summary>
    public required string KeptBy { get; init; }
}
