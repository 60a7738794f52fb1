namespace FeltNest.Ball;

/// <summary>The felt of the cover.</summary>
/// <param name="Name">Name shown on results.</param>
/// <param name="Construction">Woven or needled.</param>
/// <param name="ThicknessMm">Thickness as cut, mm.</param>
/// <param name="FinishedThicknessMm">Thickness on the finished ball, mm.</param>
/// <param name="MassPerAreaGsm">Mass per area as cut, g/m2.</param>
/// <param name="WarpModulusNPerMm">Modulus times thickness along the warp, N/mm.</param>
/// <param name="WeftModulusNPerMm">Modulus times thickness along the weft, N/mm.</param>
/// <param name="ShearModulusNPerMm">Shear modulus times thickness, N/mm.</param>
/// <param name="Poisson">Poisson's ratio warp to weft.</param>
/// <param name="NeutralLayer">Where the felt neither stretches nor shortens when bent: 0 its core side, 1 its outside.</param>
/// <param name="MaxStretchPercent">Stretch the felt takes without thinning, per cent; checked everywhere and warned.</param>
/// <param name="MaxEdgeCompressionPercent">How far the edge may be pushed together without puckering, per cent of flat length.</param>
/// <param name="CureShrinkWarpPercent">Shrinkage along the warp when cured and steamed, per cent.</param>
/// <param name="CureShrinkWeftPercent">Shrinkage along the weft, per cent.</param>
public sealed record FeltSpec(
    string Name,
    FeltConstruction Construction,
    double ThicknessMm,
    double FinishedThicknessMm,
    double MassPerAreaGsm,
    double WarpModulusNPerMm,
    double WeftModulusNPerMm,
    double ShearModulusNPerMm,
    double Poisson,
    double NeutralLayer,
    double MaxStretchPercent,
    double MaxEdgeCompressionPercent,
    double CureShrinkWarpPercent,
    double CureShrinkWeftPercent)
{
    /// <summary>Stretch along the warp by which the felt is pulled on over its whole face, beyond what the sphere asks, per cent of the cut
    /// length.</summary>
    public double ApplicationStretchWarpPercent { get; init; }

    /// <summary>The same along the weft, per cent.</summary>
    public double ApplicationStretchWeftPercent { get; init; }

    // A panel solved to lie on a limit may pass it by this much, per cent, between the solver's points: far below anything that can be
    // measured.
    private const double RoundingPercent = 0.01;

    /// <summary>Whether a stretch, per cent, stays within the felt's limit.</summary>
    public bool TakesStretch(double percent) => percent <= MaxStretchPercent + RoundingPercent;

    /// <summary>Whether the edge may be pushed together by so much, per cent.</summary>
    public bool TakesAlongEdge(double percent) => percent <= MaxEdgeCompressionPercent + RoundingPercent;
}
