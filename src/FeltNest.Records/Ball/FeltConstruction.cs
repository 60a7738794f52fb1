namespace FeltNest.Ball;

/// <summary>How the felt is made.</summary>
public enum FeltConstruction
{
    /// <summary>Woven, then raised and milled.</summary>
    Woven,

    /// <summary>Needled.</summary>
    Needled,
}
