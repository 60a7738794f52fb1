namespace FeltNest.Panel.Thickness;

/// <summary>What the felt's thickness adds to a panel: strain of its faces, bending, what the glue must hold, and where it may
/// pucker.</summary>
public sealed record ThroughThickness
{
    /// <summary>Glue face, middle, nap face.</summary>
    public required IReadOnlyList<FeltLayer> Layers { get; init; }

    /// <summary>Greatest and least principal strain over the panel of each layer, per cent of flat length, in the order of
    /// <see cref="Layers"/>.</summary>
    public required IReadOnlyList<LayerExtremes> Extremes { get; init; }

    /// <summary>Energy of bending the felt to the sphere for a unit of its area, N/mm (1 N/mm is 1000 J/m2).</summary>
    public required double BendingNPerMm { get; init; }

    /// <summary>Energy of bending one panel to the sphere, N mm.</summary>
    public required double BendingNmm { get; init; }

    /// <summary>Greatest energy of strain along the edge for a unit of area on the ball, N/mm; places whose strain is no real one are left
    /// out.</summary>
    public required double EdgeStrainNPerMm { get; init; }

    /// <summary>Where that is: seam parameter, radians.</summary>
    public required double EdgeStrainS { get; init; }

    /// <summary>Adhesion that holds the edge down whatever the felt does, N/mm: all that felt on the edge could give back by coming
    /// off.</summary>
    public double EdgeTackNPerMm => BendingNPerMm + EdgeStrainNPerMm;

    /// <summary>Compression from which puckers are to be feared, per cent of flat length on the neutral layer; null where the felt has no
    /// limit.</summary>
    public required double? PuckerLimitPercent { get; init; }

    /// <summary>Whether that limit was given for the whole panel; else it is that of the edge.</summary>
    public required bool HasOwnPuckerLimit { get; init; }

    /// <summary>Share of the flat panel pushed together by more, per cent.</summary>
    public required double PuckerSharePercent { get; init; }
}
