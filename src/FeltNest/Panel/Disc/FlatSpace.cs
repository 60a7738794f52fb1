namespace FeltNest.Panel.Disc;

/// <summary>The polynomials a flat map is made of: both coordinates change sign under the half-turn.</summary>
/// <param name="U">Functions for the coordinate along the panel.</param>
/// <param name="V">Functions for the coordinate across.</param>
/// <param name="Degree">Highest degree, odd.</param>
/// <param name="IsMirrorSymmetric">Only maps that are mirror-symmetric in both axes.</param>
internal sealed record FlatSpace(DiscBasis U, DiscBasis V, int Degree, bool IsMirrorSymmetric)
{
    /// <summary>Unknowns of a map: those of u first.</summary>
    public int Count => U.Count + V.Count;

    /// <summary>The space of a degree.</summary>
    public static FlatSpace Of(int degree, bool mirrorSymmetric)
    {
        DiscBasis whole = DiscBasis.Odd(degree, true, true);
        return mirrorSymmetric
            ? new FlatSpace(DiscBasis.Odd(degree, true, false), DiscBasis.Odd(degree, false, true), degree, true)
            : new FlatSpace(whole, whole, degree, false);
    }
}
