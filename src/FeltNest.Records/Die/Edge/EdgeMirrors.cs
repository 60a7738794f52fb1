namespace FeltNest.Die.Edge;

/// <summary>Axes through the origin in which an edge is its own mirror.</summary>
[Flags]
public enum EdgeMirrors
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>The x axis: y and -y are alike.</summary>
    AboutX = 1,

    /// <summary>The y axis: x and -x are alike.</summary>
    AboutY = 2,

    /// <summary>Both.</summary>
    Both = 3,
}
