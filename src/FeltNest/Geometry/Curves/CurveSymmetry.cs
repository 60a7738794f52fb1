namespace FeltNest.Geometry.Curves;

/// <summary>What a closed curve around the origin is known to be kept by.</summary>
internal enum CurveSymmetry
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>The half-turn about the origin, which moves the parameter by half a period.</summary>
    HalfTurn,

    /// <summary>The half-turn and the mirrors in both axes; parameter 0 lies on the negative y axis, a quarter period on the positive x
    /// axis.</summary>
    Mirrors,
}
