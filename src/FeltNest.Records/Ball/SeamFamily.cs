namespace FeltNest.Ball;

/// <summary>Family of seam curves: no single curve is the seam, so the result says which was used.</summary>
public enum SeamFamily
{
    /// <summary>Two harmonics in each coordinate.</summary>
    TwoHarmonic,

    /// <summary>Four circular arcs.</summary>
    FourArc,

    /// <summary>Elastic curve on the sphere.</summary>
    Elastica,

    /// <summary>Given as points.</summary>
    Points,

    /// <summary>Two harmonics, moved along its normal by a few waves.</summary>
    Shaped,
}
