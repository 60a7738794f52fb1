namespace FeltNest.Layout.Limits;

/// <summary>How many layers of cloth one strike cuts, and how they face.</summary>
/// <param name="Count">Layers, 1 or more.</param>
/// <param name="FaceToFace">True when every second layer lies with its nap side down, so that its panels come out mirrored about the
/// warp.</param>
public readonly record struct Plies(int Count, bool FaceToFace)
{
    /// <summary>A single layer, nap side up.</summary>
    public static Plies One { get; } = new(1, false);
}
