namespace FeltNest.Ball;

/// <summary>What the elastic flattening asks of the panel's edge.</summary>
public enum EdgeRule
{
    /// <summary>Nothing.</summary>
    Free,

    /// <summary>Two panels' edges meet with equal lengths all along the seam.</summary>
    Mated,

    /// <summary>Every piece of edge keeps the length of its piece of seam.</summary>
    True,
}
