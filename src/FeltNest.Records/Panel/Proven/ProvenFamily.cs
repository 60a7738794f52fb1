using FeltNest.Ball;

namespace FeltNest.Panel.Proven;

/// <summary>How near one seam family comes to a measured outline.</summary>
internal sealed record ProvenFamily
{
    /// <summary>The family.</summary>
    public required SeamFamily Curve { get; init; }

    /// <summary>Root mean square distance of the outline from its nearest panel, mm.</summary>
    public required double RmsMm { get; init; }

    /// <summary>Neutral layer of that panel.</summary>
    public required double NeutralLayer { get; init; }

    /// <summary>Its waist, mm.</summary>
    public required double WaistMm { get; init; }
}
