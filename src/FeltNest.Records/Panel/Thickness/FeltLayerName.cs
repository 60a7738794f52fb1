namespace FeltNest.Panel.Thickness;

/// <summary>Layers of the felt, from the core outwards.</summary>
public enum FeltLayerName
{
    /// <summary>On the cement.</summary>
    GlueFace,

    /// <summary>Half-way through the thickness as cut.</summary>
    Middle,

    /// <summary>Outside, before the nap is raised.</summary>
    NapFace,
}
