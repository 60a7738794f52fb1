namespace FeltNest.Ball.Passport;

/// <summary>Direction in the felt.</summary>
internal enum FeltDirection
{
    /// <summary>Along the warp, 0 degrees.</summary>
    Warp,

    /// <summary>Along the weft, 90 degrees.</summary>
    Weft,

    /// <summary>At 45 degrees to both.</summary>
    Bias,
}
