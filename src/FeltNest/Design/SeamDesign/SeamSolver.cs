using FeltNest.Ball;
using FeltNest.Numerics;
using FeltNest.Panel;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Elastic;
using FeltNest.Panel.Felt;

namespace FeltNest.Design.SeamDesign;

/// <summary>Solves the felt's state of rest on a seam from that of a seam near it, and says how it moves with each number of the
/// seam.</summary>
/// <remarks><para>At rest r(x, m; p) = 0: the slope of energy plus multipliers times equations, and the equations. By the implicit function
/// theorem dx/dp = -K^-1 dr/dp, K being the matrix of Newton's method, factorised once for all numbers. dr/dp is a central difference
/// of r at the same x and m: two evaluations without a solve, as r is known to 1e-14.</para>
/// <para>The nodes held at the edge limit are kept held: right wherever no node is just about to be held or let go.</para></remarks>
internal sealed class SeamSolver
{
    /// <summary>Step of the differences, mm: with the shortest wave its error is below a millionth, and so is rounding's.</summary>
    public const double Step = 1e-3;

    // A solve may end this share of its step off the tangents, and this much at least, radii: bends of the way take a few per cent, a
    // panel lost several times the step.
    private const double Astray = 0.15;
    private const double LeastAstray = 1e-4;

    private readonly SeamVariables variables;
    private readonly ElasticTables tables;
    private readonly int degree;

    /// <summary>Tabulates what all seams share.</summary>
    /// <param name="variables">The numbers of the seam.</param>
    /// <param name="degree">Polynomial degree, odd.</param>
    public SeamSolver(SeamVariables variables, int degree)
    {
        this.variables = variables;
        this.degree = degree;
        PanelRequest plain = PanelRequest.For(variables.BallOf(variables.Plain(variables.Waists().Least)));
        IsMirrorSymmetric = !variables.TurnsWarp && plain.Law.IsMirrorSymmetric && variables.Orders.All(Seam.ShapedSeam.KeepsMirrors);
        tables = new ElasticTables(FlatSpace.Of(degree, IsMirrorSymmetric));
    }

    /// <summary>Whether all seams of these numbers have panels with both mirrors.</summary>
    public bool IsMirrorSymmetric { get; }

    /// <summary>The polynomials.</summary>
    public FlatSpace Space => tables.Space;

    /// <summary>The state of rest on a seam, by the way that every panel is solved.</summary>
    /// <exception cref="InputException">The numbers are no seam.</exception>
    /// <exception cref="NoAnswerException">There is no state of rest.</exception>
    public SeamState First(double[] values)
    {
        (PanelRequest request, SeamDomain domain) = Asked(values);
        ElasticPanel panel = new ElasticFlattening(Law(request), request.Edge, Limit(request), degree).Panel(domain);
        FlatSpace from = panel.Map.Space;
        double[] start = from.IsMirrorSymmetric == IsMirrorSymmetric ? panel.Map.Coefficients.ToArray()
            : panel.Map.Raised(Space).Coefficients.ToArray();
        return Solve(values, request, domain, start, from.IsMirrorSymmetric == IsMirrorSymmetric ? panel.Held : []);
    }

    /// <summary>The state of rest on a seam by following it from another.</summary>
    /// <remarks>The edge's equations have further solutions, with tips drawn to a spike. A solve that ends far from where the tangents
    /// point has left the panel for one of them: then the way is gone in halves.</remarks>
    /// <param name="from">Where it begins.</param>
    /// <param name="tangents">How its coefficients move.</param>
    /// <param name="values">Numbers of the seam wanted.</param>
    /// <param name="halvings">How often the way may be halved.</param>
    /// <returns>Null where the panel was lost, or the numbers are no seam.</returns>
    public SeamState? Followed(SeamState from, double[][] tangents, double[] values, int halvings)
    {
        if (Near(from, tangents, values) is { } near)
        {
            return near;
        }

        double[] middle = [.. values.Zip(from.Values, (to, at) => (to + at) / 2)];
        return halvings > 0 && Followed(from, tangents, middle, halvings - 1) is { } half
            ? Followed(half, Tangents(half), values, halvings - 1) : null;
    }

    private SeamState? Near(SeamState from, double[][] tangents, double[] values)
    {
        double[] start = [.. from.Coefficients];
        for (int k = 0; k < values.Length; k++)
        {
            DenseRows.Add(start, values[k] - from.Values[k], tangents[k]);
        }

        try
        {
            (PanelRequest request, SeamDomain domain) = Asked(values);
            SeamState state = Solve(values, request, domain, start, from.Held);
            return Apart(state.Coefficients, start) <= Astray * Apart(from.Coefficients, start) + LeastAstray ? state : null;
        }
        catch (NoAnswerException)
        {
            return null;
        }
        catch (InputException)
        {
            return null;
        }
    }

    private static double Apart(double[] a, double[] b) => a.Zip(b, (p, q) => Math.Abs(p - q)).Max();

    /// <summary>What a panel on a seam is asked from, and its piece of sphere.</summary>
    public (PanelRequest Request, SeamDomain Domain) Asked(double[] values)
    {
        PanelRequest request = PanelRequest.For(variables.BallOf(values));
        return (request, new SeamDomain(request.Seam));
    }

    /// <summary>How the coefficients move with each number of the seam.</summary>
    public double[][] Tangents(SeamState at)
    {
        ElasticProblem problem = Problem(at.Request, at.Domain, at.Held);
        int size = problem.Unknowns;
        int all = size + problem.Equations;
        double[] jacobian = new double[problem.Equations * size];
        problem.Linearise(at.Coefficients, new double[size], jacobian);
        double[] hessian = new double[size * size];
        problem.Curve(at.Coefficients, at.Multipliers, hessian);
        double[] matrix = new double[all * all];
        for (int i = 0; i < size; i++)
        {
            hessian.AsSpan(i * size, size).CopyTo(matrix.AsSpan(i * all));
        }

        double[]? chord = IsMirrorSymmetric ? null : Chord();
        for (int k = 0; k < problem.Equations; k++)
        {
            ReadOnlySpan<double> row = jacobian.AsSpan(k * size, size);
            for (int i = 0; i < size; i++)
            {
                matrix[(i * all) + size + k] = row[i];
                matrix[((size + k) * all) + i] = k == 0 && chord is not null ? chord[i] : row[i];
            }
        }

        DenseLu factors = new(matrix, all);
        double[][] moves = new double[at.Values.Length][];
        Parallel.For(0, moves.Length, new ParallelOptions { MaxDegreeOfParallelism = 2 }, k => moves[k] = Tangent(at, k, factors, all));
        return moves;
    }

    private static FeltLaw Law(PanelRequest request) => request.Law.Scaled(1 / request.Law.UU);

    private static double? Limit(PanelRequest request) => request.Edge == EdgeRule.Mated ? request.EdgeLimit : null;

    private double[] Tangent(SeamState at, int number, DenseLu factors, int all)
    {
        double[] above = Residual(at, number, Step);
        double[] below = Residual(at, number, -Step);
        double[] move = new double[all];
        for (int i = 0; i < all; i++)
        {
            move[i] = (below[i] - above[i]) / (2 * Step);
        }

        factors.Solve(move);
        return move[..Space.Count];
    }

    // r of a seam one of whose numbers is moved; the chord's angle is the state's own and does not see the seam.
    private double[] Residual(SeamState at, int number, double by)
    {
        double[] values = [.. at.Values];
        values[number] += by;
        (PanelRequest request, SeamDomain domain) = Asked(values);
        ElasticProblem problem = Problem(request, domain, at.Held);
        int size = problem.Unknowns;
        double[] to = new double[size + problem.Equations];
        double[] jacobian = new double[problem.Equations * size];
        if (!problem.TryValue(at.Coefficients, out _, to.AsSpan(size)))
        {
            throw new NoAnswerException("the panel folds over itself");
        }

        problem.Linearise(at.Coefficients, to.AsSpan(0, size), jacobian);
        for (int k = 0; k < problem.Equations; k++)
        {
            DenseRows.Add(to.AsSpan(0, size), at.Multipliers[k], jacobian.AsSpan(k * size, size));
        }

        to[size] = IsMirrorSymmetric ? to[size] : 0;
        return to;
    }

    private ElasticProblem Problem(PanelRequest request, SeamDomain domain, IReadOnlyList<int> held)
    {
        ElasticProblem problem = new(domain, tables, Law(request), request.Edge, Limit(request));
        problem.Edge.Held = held;
        return problem;
    }

    private SeamState Solve(double[] values, PanelRequest request, SeamDomain domain, double[] start, IReadOnlyList<int> held)
    {
        ElasticSolver solver = new(domain, tables, Law(request), request.Edge, Limit(request));
        ElasticState state = solver.Solve(start, held, false);
        return new SeamState
        {
            Values = values,
            Request = request,
            Domain = domain,
            Coefficients = state.Result.X,
            Multipliers = state.Result.Multipliers,
            Held = state.Held,
        };
    }

    // The tip's place across the chord as a row of the coefficients: the tip is the rim's place on +x.
    private double[] Chord()
    {
        double[] row = new double[Space.Count];
        double[] scratch = new double[Space.V.Count];
        Space.V.Evaluate(1, 0, row.AsSpan(Space.U.Count), scratch, new double[scratch.Length]);
        return row;
    }
}
