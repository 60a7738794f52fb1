namespace FeltNest.Ball;

/// <summary>How the spherical panel is made flat.</summary>
public enum FlatteningMethod
{
    /// <summary>Least elastic energy of the felt.</summary>
    Elastic,

    /// <summary>Angles kept, scale 1 along the whole edge.</summary>
    Conformal,

    /// <summary>The long axis and the great circles across it keep their lengths.</summary>
    Equidistant,
}
