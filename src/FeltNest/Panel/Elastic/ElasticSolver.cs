using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Elastic;

/// <summary>Equilibrium of the felt in the polynomials of one degree: Newton's method within, and around it the search for the nodes held
/// at the edge limit and for the turn that lays the chord along u.</summary>
/// <remarks>The held nodes are found by the primal-dual active set method (M. Hintermueller, K. Ito, K. Kunisch, <i>SIAM J. Optim.</i> 13,
/// 2002): a node above the limit is held, a held node that pulls the wrong way is let go.</remarks>
internal sealed class ElasticSolver
{
    // Rounds of held nodes and turns before the solve is given up: sound panels take fewer than 12.
    private const int MostRounds = 60;

    // Times the limit is lowered where it is passed between nodes: each leaves about a quarter of what was over.
    private const int MostTightenings = 8;

    // Conditions met this far are enough to tell which nodes to hold: Newton's method then squares what is left.
    private const double Rough = 1e-6;

    private readonly ElasticProblem problem;
    private readonly PanelDomain domain;
    private readonly FlatSpace space;

    /// <summary>Tabulates a problem.</summary>
    public ElasticSolver(PanelDomain domain, FlatSpace space, FeltLaw law, EdgeRule edge, double? limit)
        : this(domain, new ElasticTables(space), law, edge, limit)
    {
    }

    /// <summary>Tabulates a problem whose polynomials are tabulated already.</summary>
    public ElasticSolver(PanelDomain domain, ElasticTables tables, FeltLaw law, EdgeRule edge, double? limit)
    {
        this.domain = domain;
        space = tables.Space;
        problem = new ElasticProblem(domain, tables, law, edge, limit);
    }

    /// <summary>The problem, as the last solve left it.</summary>
    internal ElasticProblem Problem => problem;

    /// <summary>Equilibrium near a start.</summary>
    /// <param name="start">Coefficients of the start.</param>
    /// <param name="held">Nodes held to begin with.</param>
    /// <param name="minimum">Seek a minimum; otherwise follow the equilibrium the start is already near.</param>
    /// <param name="everywhere">Keep the edge limit between the nodes as well.</param>
    /// <exception cref="NoAnswerException">No equilibrium was reached.</exception>
    // Long because each round ends in one of five ways, and all of them share what the rounds so far have found.
    public ElasticState Solve(ReadOnlySpan<double> start, IReadOnlyList<int> held, bool minimum, bool everywhere = false)
    {
        double[] x = start.ToArray();
        problem.Edge.Held = held;
        problem.MeanTurn = space.IsMirrorSymmetric ? 0 : problem.Turn(x);
        ChordTurn turn = new();
        HashSet<string> seen = [];
        int steps = 0;
        int tightened = 0;
        bool last = false;
        for (int round = 0; round < MostRounds; round++)
        {
            ConstrainedNewton newton = new(problem);
            double until = last ? ConstrainedNewton.Met : Rough;
            NewtonResult result = minimum ? newton.Minimise(x, until) : newton.Follow(x, until);
            steps += result.Iterations;
            x = result.X;
            int[] now = [.. problem.Edge.Held];
            int[] next = Next(result, now);
            if (!next.SequenceEqual(now))
            {
                // A set that comes back is left by one node at a time.
                problem.Edge.Held = seen.Add(string.Join(',', next)) ? next : Single(now, next);
                last = false;
                continue;
            }

            if (everywhere && tightened < MostTightenings && problem.Edge.Tighten(x))
            {
                tightened++;
                seen.Clear();
                last = false;
                continue;
            }

            if (result.Residual > ConstrainedNewton.Met && !last)
            {
                last = true;
                continue;
            }

            if (space.IsMirrorSymmetric)
            {
                return new ElasticState(result with { Iterations = steps }, now, 0);
            }

            Point2 tip = Tip(x);
            if (Math.Abs(tip.Y / tip.X) <= ChordTurn.Met)
            {
                return new ElasticState(
                    result with { X = Turned(x, tip), Iterations = steps }, now, -result.Multipliers[0] * problem.TurnRate(x));
            }

            problem.MeanTurn = turn.Next(problem.MeanTurn, tip, problem.TurnRate(x));
        }

        throw new NoAnswerException("the flattening found no equilibrium for this seam, felt and edge limit");
    }

    /// <summary>Nodes along the edge that may be held, and their spacing in s.</summary>
    public (int Count, double Spacing) Nodes => (problem.Edge.Nodes, problem.Edge.NodeSpacing);

    private static int[] Above(double[] overs, int[] besides)
    {
        // Squared stretches this far above the limit are above it: two digits above the Newton method's own measure.
        const double clear = 1e-9;
        return [.. Enumerable.Range(0, overs.Length).Where(i => overs[i] > clear || besides.Contains(i))];
    }

    private int[] Next(NewtonResult result, int[] held)
    {
        double[] pulls = result.Multipliers[^held.Length..];
        return Above(problem.Edge.Overs(result.X), [.. held.Where((_, i) => pulls[i] > 0)]);
    }

    private static int[] Single(int[] held, int[] next)
    {
        int other = held.Except(next).Concat(next.Except(held)).Min();
        return [.. held.Contains(other) ? held.Where(i => i != other) : held.Append(other).Order()];
    }

    // The panel turned as a whole until the tip lies on the u axis; both coordinates are made of the same functions.
    private double[] Turned(double[] x, Point2 tip)
    {
        double cos = tip.X / tip.Length;
        double sin = tip.Y / tip.Length;
        double[] to = new double[x.Length];
        int count = space.U.Count;
        for (int i = 0; i < count; i++)
        {
            to[i] = (cos * x[i]) + (sin * x[count + i]);
            to[count + i] = (cos * x[count + i]) - (sin * x[i]);
        }

        return to;
    }

    private Point2 Tip(double[] x)
    {
        (double sin, double cos) = Math.SinCos(domain.EdgeAt(Math.PI / 2).Angle);
        return new FlatMap(domain, space, x).At(cos, sin).Place;
    }
}
