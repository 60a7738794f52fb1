namespace FeltNest.Panel.Wrap;

/// <summary>A flat piece whose edge is drawn to the seam.</summary>
internal sealed record EdgeHeldWrap
{
    /// <summary>Elastic energy, N mm.</summary>
    public required double EnergyNmm { get; init; }

    /// <summary>Greatest principal stretch, 100 (sphere/flat - 1).</summary>
    public required double MaxStretchPercent { get; init; }

    /// <summary>Greatest principal compression, 100 (1 - sphere/flat).</summary>
    public required double MaxCompressionPercent { get; init; }

    /// <summary>Greatest pull on the edge that closing needs, N for a mm of flat edge: across the edge and along it taken
    /// together.</summary>
    public required double EdgePullNPerMm { get; init; }

    /// <summary>Greatest distance of the edge from where it is held, mm.</summary>
    public required double EdgeOffSeamMm { get; init; }

    /// <summary>Greatest violation left of the equilibrium, at unit radius and stiffness.</summary>
    public required double Residual { get; init; }
}
