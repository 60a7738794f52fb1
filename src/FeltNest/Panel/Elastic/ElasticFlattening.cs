using FeltNest.Ball;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Flatten;

namespace FeltNest.Panel.Elastic;

/// <summary>The flat panel from which the felt is drawn over the sphere with the least elastic energy.</summary>
/// <remarks>A minimum is sought at a low degree and then followed to the full one. With mated edges this matters: one of two mated edges is
/// always asked to be longer than it would be, and an edge free to ripple in ever shorter waves could buy that length for nothing. The
/// smooth equilibrium is the one a die can cut, and it settles with the degree like the others.</remarks>
/// <param name="law">Stiffness of the felt in the panel's axes.</param>
/// <param name="edge">Edge rule.</param>
/// <param name="limit">Greatest compression along a mated edge, as a part of flat length below 1; null for none.</param>
/// <param name="degree">Polynomial degree, odd.</param>
internal sealed class ElasticFlattening(FeltLaw law, EdgeRule edge, double? limit, int degree) : IFlattening
{
    /// <summary>Degree that settles lengths to 1e-8 and edge-true ones to 3e-6 at waists of 39 to 60 degrees.</summary>
    public const int UsualDegree = 37;

    // Degrees on the way: the first solve is quick, and too low for an edge to ripple; the next one finds held nodes and turn at little
    // cost.
    private const int FirstDegree = 13;
    private const int MiddleDegree = 25;

    /// <inheritdoc/>
    public (FlatMap Map, PanelSolve Solve) Flatten(PanelDomain domain)
    {
        ElasticPanel panel = Panel(domain);
        return (panel.Map, panel.Solve);
    }

    /// <summary>The flat map with what was held along its edge.</summary>
    /// <exception cref="NoAnswerException">No equilibrium was found.</exception>
    public ElasticPanel Panel(PanelDomain domain)
    {
        bool mirror = domain.IsMirrorSymmetric && law.IsMirrorSymmetric;
        FlatSpace space = FlatSpace.Of(Math.Min(FirstDegree, degree), mirror);
        FlatMap map = Start(domain, space.Degree).Raised(space);
        if (edge == EdgeRule.Mated)
        {
            map = new FlatMap(
                domain, space, new ElasticSolver(domain, space, law, EdgeRule.Free, null).Solve(map.Coefficients, [], true).Result.X);
        }

        int[] ladder = limit is null && mirror ? [FirstDegree, degree] : [FirstDegree, MiddleDegree, degree];
        IReadOnlyList<int> held = [];
        double spacing = 0;
        PanelSolve solve = new() { Degree = 0, Unknowns = 0, Iterations = 0, Residual = 0, ChordTorqueNmm = 0 };
        foreach (int rung in ladder.Select(rung => Math.Min(rung, degree)).Distinct())
        {
            space = FlatSpace.Of(rung, mirror);
            ElasticSolver solver = new(domain, space, law, edge, limit);
            (int count, double step) = solver.Nodes;

            // Nodes are carried over by where they lie.
            int[] guess = [.. Enumerable.Range(0, count).Where(i => held.Contains((int)((i + 0.5) * step / spacing)))];
            ElasticState state =
                solver.Solve(map.Raised(space).Coefficients, guess, rung <= FirstDegree, limit is not null && rung == degree);
            map = new FlatMap(domain, space, state.Result.X);
            (held, spacing) = (state.Held, step);
            solve = new PanelSolve
            {
                Degree = rung,
                Unknowns = space.Count,
                Iterations = solve.Iterations + state.Result.Iterations,
                Residual = state.Result.Residual,
                ChordTorqueNmm = state.Torque,
            };
        }

        return new ElasticPanel(map, solve, held, spacing);
    }

    /// <summary>The flat map of this degree by following a state that is near it, such as that of the panel without a limit.</summary>
    /// <exception cref="NoAnswerException">No equilibrium was found.</exception>
    public ElasticPanel Near(PanelDomain domain, ElasticPanel from)
    {
        FlatSpace space = FlatSpace.Of(degree, domain.IsMirrorSymmetric && law.IsMirrorSymmetric);
        ElasticSolver solver = new(domain, space, law, edge, limit);
        ElasticState state = solver.Solve(from.Map.Raised(space).Coefficients, [], false, limit is not null);
        PanelSolve solve = new()
        {
            Degree = degree,
            Unknowns = space.Count,
            Iterations = from.Solve.Iterations + state.Result.Iterations,
            Residual = state.Result.Residual,
            ChordTorqueNmm = state.Torque,
        };
        return new ElasticPanel(new FlatMap(domain, space, state.Result.X), solve, state.Held, solver.Nodes.Spacing);
    }

    private FlatMap Start(PanelDomain domain, int first) => edge == EdgeRule.True || domain is not SeamDomain
        ? new ConformalFlattening(first).Flatten(domain).Map
        : new EquidistantFlattening(first).Flatten(domain).Map;
}
