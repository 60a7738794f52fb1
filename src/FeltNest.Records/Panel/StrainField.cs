namespace FeltNest.Panel;

/// <summary>Strain sampled on a grid of rings from the pole (ring 0, all samples equal) to the edge (last ring), with the same count of
/// spokes in each.</summary>
public sealed record StrainField
{
    /// <summary>How many rings, the pole's included.</summary>
    public required int Rings { get; init; }

    /// <summary>How many samples a ring; the last is followed by the first.</summary>
    public required int Spokes { get; init; }

    /// <summary>Ring by ring, Rings x Spokes samples.</summary>
    public required IReadOnlyList<StrainSample> Samples { get; init; }

    /// <summary>The sample on a ring and a spoke (spokes wrap round).</summary>
    public StrainSample At(int ring, int spoke) => Samples[(ring * Spokes) + (spoke % Spokes)];
}
