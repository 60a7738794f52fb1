namespace FeltNest.Ball;

/// <summary>The felt of the cover.</summary>
public sealed record FeltSpec
{
    /// <summary>Name shown on results.</summary>
    public required string Name { get; init; }

    /// <summary>Woven or needled.</summary>
    public required FeltConstruction Construction { get; init; }

    /// <summary>Thickness as cut, mm.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Thickness on the finished ball, mm.</summary>
    public required double FinishedThicknessMm { get; init; }

    /// <summary>Mass per area as cut, g/m2.</summary>
    public required double MassPerAreaGsm { get; init; }

    /// <summary>Modulus times thickness along the warp, N/mm.</summary>
    public required double WarpModulusNPerMm { get; init; }

    /// <summary>Modulus times thickness along the weft, N/mm.</summary>
    public required double WeftModulusNPerMm { get; init; }

    /// <summary>Shear modulus times thickness, N/mm.</summary>
    public required double ShearModulusNPerMm { get; init; }

    /// <summary>Poisson's ratio warp to weft.</summary>
    public required double Poisson { get; init; }

    /// <summary>Where the felt neither stretches nor shortens when bent: 0 its core side, 1 its outside.</summary>
    public required double NeutralLayer { get; init; }

    /// <summary>Stretch the felt takes without thinning, per cent; checked everywhere and warned.</summary>
    public required double MaxStretchPercent { get; init; }

    /// <summary>How far the edge may be pushed together without puckering, per cent of flat length.</summary>
    public required double MaxEdgeCompressionPercent { get; init; }

    /// <summary>How far the felt may be pushed together anywhere before it puckers, per cent of flat length on the neutral layer; null
    /// where it was not measured.</summary>
    public double? MaxCompressionPercent { get; init; }

    /// <summary>Shrinkage along the warp when cured and steamed, per cent.</summary>
    public required double CureShrinkWarpPercent { get; init; }

    /// <summary>Shrinkage along the weft, per cent.</summary>
    public required double CureShrinkWeftPercent { get; init; }

    /// <summary>Stretch along the warp by which the felt is pulled on over its whole face, beyond what the sphere asks, per cent of the cut
    /// length.</summary>
    public double ApplicationStretchWarpPercent { get; init; }

    /// <summary>The same along the weft, per cent.</summary>
    public double ApplicationStretchWeftPercent { get; init; }

    /// <summary>The lot that the figures were measured on; null where the ball's file states none.</summary>
    public FeltLot? Lot { get; init; }

    // A panel solved to lie on a limit may pass it by this much, per cent, between the solver's points: far below anything that can be
    // measured.
    private const double RoundingPercent = 0.01;

    /// <summary>Whether a stretch, per cent, stays within the felt's limit.</summary>
    public bool TakesStretch(double percent) => percent <= MaxStretchPercent + RoundingPercent;

    /// <summary>Whether the edge may be pushed together by so much, per cent.</summary>
    public bool TakesAlongEdge(double percent) => percent <= MaxEdgeCompressionPercent + RoundingPercent;

    /// <summary>The compression, per cent, from which puckers are to be feared anywhere on the panel: the felt's own, and that of its edge
    /// where none was measured.</summary>
    public double PuckerLimitPercent => MaxCompressionPercent ?? MaxEdgeCompressionPercent;

    /// <summary>Whether the felt may be pushed together by so much, per cent, anywhere on the panel.</summary>
    public bool TakesCompression(double percent) => percent <= PuckerLimitPercent + RoundingPercent;
}
