using FeltNest.Die.Order;

namespace FeltNest.Die.Make;

/// <summary>Force of one strike.</summary>
/// <param name="RuleMm">Length of rule, mm.</param>
/// <param name="CloseAddedMm">Length added for rules close to each other, mm.</param>
/// <param name="BareKn">Rule alone, kN.</param>
/// <param name="Kn">With close rules, ejection and reserve, kN.</param>
public readonly record struct CuttingForce(double RuleMm, double CloseAddedMm, double BareKn, double Kn)
{
    // Force of a kilopond, N (ISO 80000-4).
    private const double StandardGravity = 9.80665;

    /// <summary>The force in tonnes-force, for presses that are marked so.</summary>
    public double TonnesForce => Kn / StandardGravity;

    /// <summary>The force of a strike: length of rule with half the shorter of each close pair added, times plies, times force per mm, then ejection and reserve.</summary>
    /// <param name="ruleMm">Length of all rules, mm.</param>
    /// <param name="closeMm">Length of rule that has another within reach, both sides counted: a quarter of it is half the shorter of every pair.</param>
    /// <param name="plies">Layers.</param>
    /// <param name="figures">Figures.</param>
    public static CuttingForce Of(double ruleMm, double closeMm, int plies, ForceFigures figures)
    {
        double added = closeMm / 4, bare = ruleMm * plies * figures.NPerMmPerPly / 1000;
        return new CuttingForce(ruleMm, added, bare, bare * (1 + (added / ruleMm)) * (1 + (figures.EjectionPercent / 100)) * (1 + (figures.ReservePercent / 100)));
    }
}
