namespace FeltNest.Ball.Passport;

/// <summary>What a strip is wrapped round.</summary>
internal enum CoreShape
{
    /// <summary>A cemented core: curved along the strip and across it.</summary>
    Ball,

    /// <summary>A round bar or tube: curved along the strip alone.</summary>
    Cylinder,
}
