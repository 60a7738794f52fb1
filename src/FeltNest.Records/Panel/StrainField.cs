namespace FeltNest.Panel;

/// <summary>Strain sampled on a grid of rings from the pole (ring 0, all samples equal) to the edge (last ring), with the same count of
/// spokes in each.</summary>
/// <param name="Rings">How many rings, the pole's included.</param>
/// <param name="Spokes">How many samples a ring; the last is followed by the first.</param>
/// <param name="Samples">Ring by ring, Rings x Spokes samples.</param>
public sealed record StrainField(int Rings, int Spokes, IReadOnlyList<StrainSample> Samples)
{
    /// <summary>The sample on a ring and a spoke (spokes wrap round).</summary>
    public StrainSample At(int ring, int spoke) => Samples[(ring * Spokes) + (spoke % Spokes)];
}
