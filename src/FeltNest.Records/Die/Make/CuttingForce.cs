using FeltNest.Die.Order;

namespace FeltNest.Die.Make;

/// <summary>Force of one strike.</summary>
public readonly record struct CuttingForce
{
    /// <summary>Length of cutting edge, mm.</summary>
    public required double EdgeMm { get; init; }

    /// <summary>Length added for rules close to each other, mm.</summary>
    public required double CloseAddedMm { get; init; }

    /// <summary>Edge alone, kN.</summary>
    public required double BareKn { get; init; }

    /// <summary>With close rules, ejection and reserve, kN.</summary>
    public required double Kn { get; init; }

    // Force of a kilopond, N (ISO 80000-4).
    private const double StandardGravity = 9.80665;

    /// <summary>The force in tonnes-force, for presses that are marked so.</summary>
    public double TonnesForce => Kn / StandardGravity;

    /// <summary>The force of a strike: length of edge with half the shorter of each close pair added, times plies, times force per mm, then
    /// ejection and reserve.</summary>
    /// <param name="edgeMm">Length of cutting edge of all rules, mm.</param>
    /// <param name="closeMm">Length of edge that has another within reach, both sides counted: a quarter of it is half the shorter of every
    /// pair.</param>
    /// <param name="plies">Layers.</param>
    /// <param name="figures">Figures.</param>
    public static CuttingForce Of(double edgeMm, double closeMm, int plies, ForceFigures figures)
    {
        double added = closeMm / 4;
        double bare = edgeMm * plies * figures.NPerMmPerPly / 1000;
        return new CuttingForce
        {
            EdgeMm = edgeMm,
            CloseAddedMm = added,
            BareKn = bare,
            Kn = bare * (1 + (added / edgeMm)) * (1 + (figures.EjectionPercent / 100)) * (1 + (figures.ReservePercent / 100)),
        };
    }
}
