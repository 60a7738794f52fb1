using FeltNest.Panel;
using FeltNest.Panel.Domain;

namespace FeltNest.Design.SeamDesign;

/// <summary>The felt's state of rest on one seam.</summary>
internal sealed record SeamState
{
    /// <summary>Numbers of the seam.</summary>
    public required double[] Values { get; init; }

    /// <summary>What the panel is computed from.</summary>
    public required PanelRequest Request { get; init; }

    /// <summary>The piece of sphere.</summary>
    public required SeamDomain Domain { get; init; }

    /// <summary>Coefficients of the flat map.</summary>
    public required double[] Coefficients { get; init; }

    /// <summary>Multipliers of its equations.</summary>
    public required double[] Multipliers { get; init; }

    /// <summary>Nodes of the edge held at its limit.</summary>
    public required IReadOnlyList<int> Held { get; init; }
}
