namespace FeltNest.Panel.Disc;

/// <summary>The polynomials a flat map is made of: both coordinates change sign under the half-turn.</summary>
internal sealed record FlatSpace
{
    /// <summary>Functions for the coordinate along the panel.</summary>
    public required DiscBasis U { get; init; }

    /// <summary>Functions for the coordinate across.</summary>
    public required DiscBasis V { get; init; }

    /// <summary>Highest degree, odd.</summary>
    public required int Degree { get; init; }

    /// <summary>Only maps that are mirror-symmetric in both axes.</summary>
    public required bool IsMirrorSymmetric { get; init; }

    /// <summary>Unknowns of a map: those of u first.</summary>
    public int Count => U.Count + V.Count;

    /// <summary>The space of a degree.</summary>
    public static FlatSpace Of(int degree, bool mirrorSymmetric)
    {
        DiscBasis whole = DiscBasis.Odd(degree, true, true);
        return mirrorSymmetric
            ? new FlatSpace
            {
                U = DiscBasis.Odd(degree, true, false),
                V = DiscBasis.Odd(degree, false, true),
                Degree = degree,
                IsMirrorSymmetric = true,
            }
            : new FlatSpace { U = whole, V = whole, Degree = degree, IsMirrorSymmetric = false };
    }
}
