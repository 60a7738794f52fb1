namespace FeltNest.Ball.Passport;

/// <summary>A figure of the felt that tests give and a ball takes.</summary>
internal enum FeltQuantity
{
    /// <summary>Thickness as cut, mm.</summary>
    Thickness,

    /// <summary>Mass per area as cut, g/m2.</summary>
    MassPerArea,

    /// <summary>Modulus times thickness along the warp, N/mm.</summary>
    WarpModulus,

    /// <summary>Modulus times thickness along the weft, N/mm.</summary>
    WeftModulus,

    /// <summary>Shear modulus times thickness, N/mm.</summary>
    ShearModulus,

    /// <summary>Poisson's ratio warp to weft.</summary>
    Poisson,

    /// <summary>Layer that keeps its length when bent, 0 core side to 1 outside.</summary>
    NeutralLayer,

    /// <summary>Compression of the edge that lay flat, per cent.</summary>
    EdgeLimit,

    /// <summary>Shrinkage along the warp on curing, per cent.</summary>
    ShrinkWarp,

    /// <summary>Shrinkage along the weft, per cent.</summary>
    ShrinkWeft,
}
