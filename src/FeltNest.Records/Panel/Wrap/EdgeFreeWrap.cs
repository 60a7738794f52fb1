using FeltNest.Seam;

namespace FeltNest.Panel.Wrap;

/// <summary>Where a flat piece comes to lie when nothing pulls its edge.</summary>
internal sealed record EdgeFreeWrap
{
    /// <summary>Elastic energy, N mm.</summary>
    public required double EnergyNmm { get; init; }

    /// <summary>Greatest gap two copies leave along the edge, mm, 0 or more: geodesic distance from copy 1's edge, normal to it, to the
    /// edge of copy 2, which is copy 1 half-turned about the axis (1, -1, 0); null where the copies' edges nowhere face each
    /// other. The outline's long axis along u, this is the pair on the ball.</summary>
    public required double? LargestGapMm { get; init; }

    /// <summary>Greatest overlap, mm, 0 or more; null likewise.</summary>
    public required double? LargestOverlapMm { get; init; }

    /// <summary>The edge on the sphere, mm: centre of the sphere at 0, the outline's centroid on +z, its +u in the +x half-plane, seen
    /// from outside.</summary>
    public required IReadOnlyList<SpherePoint> Edge { get; init; }

    /// <summary>How far both copies are then turned about their poles for the least mean square gap, radians counter-clockwise: whoever
    /// fits them turns them so. 0 where mirrors hold them.</summary>
    public required double Turn { get; init; }

    /// <summary>Signed gap after that turn at each place of <see cref="Edge"/>, mm, negative where the copies overlap, null where the
    /// other edge is not met.</summary>
    public required IReadOnlyList<double?> Gaps { get; init; }

    /// <summary>Greatest violation left of the equilibrium, at unit radius and stiffness.</summary>
    public required double Residual { get; init; }

    /// <summary>The edge after the turn.</summary>
    public IReadOnlyList<SpherePoint> TurnedEdge => Turned(Edge, Turn);

    /// <summary>Places turned about the pole, radians counter-clockwise seen from outside.</summary>
    public static SpherePoint[] Turned(IReadOnlyList<SpherePoint> places, double turn)
    {
        (double sin, double cos) = Math.SinCos(turn);
        return [.. places.Select(p => new SpherePoint((p.X * cos) - (p.Y * sin), (p.X * sin) + (p.Y * cos), p.Z))];
    }
}
