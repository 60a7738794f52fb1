using FeltNest.Ball;
using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Flatten;

/// <summary>The flat panel from which the felt is drawn over the sphere with the least elastic energy.</summary>
/// <remarks>A minimum is sought at a low degree and then followed to the full one. With mated edges this matters: one of two mated edges is always asked to be longer than it would be, and an edge
/// free to ripple in ever shorter waves could buy that length for nothing. The smooth equilibrium is the one a die can cut, and it settles with the degree like the others.</remarks>
internal sealed class ElasticFlattening(FeltLaw law, EdgeRule edge, int degree) : IFlattening
{
    /// <summary>Degree that settles lengths to 1e-8 and edge-true ones to 3e-6 at waists of 39 to 60 degrees.</summary>
    public const int UsualDegree = 37;

    // Degree of the first solve: quick, and too low for an edge to ripple.
    private const int FirstDegree = 13;

    /// <inheritdoc/>
    public (FlatMap Map, PanelSolve Solve) Flatten(PanelDomain domain)
    {
        bool mirror = domain.IsMirrorSymmetric && law.IsMirrorSymmetric;
        FlatSpace first = FlatSpace.Of(Math.Min(FirstDegree, degree), mirror), full = FlatSpace.Of(degree, mirror);
        FlatMap map = Start(domain, first.Degree).Raised(first);
        if (edge == EdgeRule.Mated)
        {
            map = new FlatMap(domain, first, Solver(domain, first, EdgeRule.Free).Minimise(map.Coefficients).X);
        }

        NewtonResult result = Solver(domain, first, edge).Minimise(map.Coefficients);
        if (degree > first.Degree)
        {
            map = new FlatMap(domain, first, result.X).Raised(full);
            NewtonResult followed = Solver(domain, full, edge).Follow(map.Coefficients);
            result = followed with { Iterations = result.Iterations + followed.Iterations };
        }

        map = new FlatMap(domain, full, result.X);
        return (map, new PanelSolve(degree, full.Count, result.Iterations, result.Residual, mirror ? 0 : Torque(map, result)));
    }

    private FlatMap Start(PanelDomain domain, int first) => edge == EdgeRule.True || domain is not SeamDomain
        ? new ConformalFlattening(first).Flatten(domain).Map
        : new EquidistantFlattening(first).Flatten(domain).Map;

    // The chord's multiplier is the force across the tip; turning the panel moves the tip by its own distance from the pole.
    private static double Torque(FlatMap map, NewtonResult result)
    {
        (double y, double x) = Math.SinCos(map.Domain.EdgeAt(Math.PI / 2).Angle);
        return result.Multipliers[^1] * map.At(x, y).Place.X;
    }

    private ConstrainedNewton Solver(PanelDomain domain, FlatSpace space, EdgeRule rule) => new(new ElasticProblem(domain, space, law, rule));
}
