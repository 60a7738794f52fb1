namespace FeltNest.Die.Check;

/// <summary>What the second geometry engine finds of a cutting edge.</summary>
internal sealed record EdgeVerdict
{
    /// <summary>Greatest distance between edge and the layout's outline, either way, mm.</summary>
    public required double OffMm { get; init; }

    /// <summary>Greatest bend at a joint, corners of the part itself left out, degrees.</summary>
    public required double TangentBreakDeg { get; init; }

    /// <summary>Difference of the areas over the part's area.</summary>
    public required double AreaShare { get; init; }

    /// <summary>Greatest distance from the edge to its mirror image, in the mirrors it is said to have, mm; 0 where it has
    /// none.</summary>
    public required double MirrorOffMm { get; init; }
}
