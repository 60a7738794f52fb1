namespace FeltNest.Drawing;

/// <summary>Which end of a text stands at its place.</summary>
internal enum TextAnchor
{
    /// <summary>Its start.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
