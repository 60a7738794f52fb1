namespace FeltNest.Numerics;

/// <summary>Newton's method for a least value under equations, with dense second derivatives.</summary>
/// <remarks>Follows J. Nocedal and S. Wright, <i>Numerical Optimization</i>, 2nd ed. 2006, chapter 18: sequential quadratic programming
/// with the reduced Hessian made positive definite by a shift and a line search on the exact penalty; differs in that a step which brings
/// the conditions nearer is taken even where the penalty rises, which spares the second-order correction.</remarks>
internal sealed class ConstrainedNewton
{
    // Most steps before the solve is given up: sound panels take fewer than 30.
    private const int MostSteps = 200;

    /// <summary>Conditions this small are met: the energies are of order 0.01 and their gradients are known to about 1e-14.</summary>
    public const double Met = 1e-11;

    // Conditions this small are accepted where rounding lets no step improve them.
    private const double NearlyMet = 1e-8;

    private readonly ConstrainedProblem problem;
    private readonly int size;
    private readonly int equations;
    private readonly double[] gradient;
    private readonly double[] jacobian;
    private readonly double[] residuals;
    private readonly double[] hessian;
    private readonly double[] work;
    private double lastShift;

    /// <summary>A solver that keeps its memory for several starts on one problem.</summary>
    public ConstrainedNewton(ConstrainedProblem problem)
    {
        this.problem = problem;
        size = problem.Unknowns;
        equations = problem.Equations;
        gradient = new double[size];
        jacobian = new double[equations * size];
        residuals = new double[equations];
        hessian = new double[size * size];
        work = new double[size];
    }

    /// <summary>Finds the minimum nearest to a start.</summary>
    /// <param name="start">Where to start.</param>
    /// <param name="until">Greatest violation of the conditions that ends the solve; <see cref="Met"/> where the result is wanted for
    /// itself.</param>
    /// <exception cref="NoAnswerException">The start has no value, or no minimum was reached.</exception>
    public NewtonResult Minimise(ReadOnlySpan<double> start, double until = Met) => Run(start, true, until);

    /// <summary>Finds the stationary point nearest to a start that is already near one, be it a minimum or not: each step must bring the
    /// conditions nearer.</summary>
    /// <param name="start">Where to start.</param>
    /// <param name="until">Greatest violation of the conditions that ends the solve.</param>
    /// <exception cref="NoAnswerException">The start has no value, or the steps did not close in.</exception>
    public NewtonResult Follow(ReadOnlySpan<double> start, double until = Met) => Run(start, false, until);

    private NewtonResult Run(ReadOnlySpan<double> start, bool minimum, double until)
    {
        double[] x = start.ToArray();
        if (!problem.TryValue(x, out double value, residuals))
        {
            throw new NoAnswerException("the panel folds over itself at the start of the flattening");
        }

        State here = Condition(x);
        for (int step = 0; step < MostSteps; step++)
        {
            if (here.Residual <= until)
            {
                return Result(x, value, here, step);
            }

            double[] move = Step(x, here, minimum);
            if ((minimum ? Fall(x, value, here, move) : Approach(x, here, move)) is not { } next)
            {
                if (here.Residual <= NearlyMet)
                {
                    return Result(x, value, here, step);
                }

                break;
            }

            (x, value, here) = next;
        }

        throw new NoAnswerException("the flattening found no equilibrium for this seam and felt");
    }

    private static NewtonResult Result(double[] x, double value, State here, int steps) => new()
    {
        X = x,
        Multipliers = here.Multipliers,
        Value = value,
        Residual = here.Residual,
        Iterations = steps,
    };

    // Gradient, equations and multipliers at x, whose residuals are in place.
    private State Condition(double[] x)
    {
        problem.Linearise(x, gradient, jacobian);
        NullSpace space = new(jacobian, equations, size);
        double[] split = [.. gradient];
        space.Split(split);
        double worst = 0;
        foreach (double free in split.AsSpan(equations))
        {
            worst = Math.Max(worst, Math.Abs(free));
        }

        foreach (double residual in residuals)
        {
            worst = Math.Max(worst, Math.Abs(residual));
        }

        double[] multipliers = split[..equations];
        space.SolveMultipliers(multipliers);
        for (int i = 0; i < equations; i++)
        {
            multipliers[i] = -multipliers[i];
        }

        return new State
        {
            Space = space,
            SplitGradient = split,
            Equations = [.. residuals],
            Multipliers = multipliers,
            Residual = worst,
        };
    }

    private double[] Step(double[] x, State here, bool minimum)
    {
        problem.Curve(x, here.Multipliers, hessian);
        here.Space.Split(hessian, work);
        double[] move = new double[size];
        for (int i = 0; i < equations; i++)
        {
            move[i] = -here.Equations[i];
        }

        here.Space.SolveSeen(move.AsSpan(0, equations));
        int free = here.Space.Free;
        double[] reduced = new double[free * free];
        for (int i = 0; i < free; i++)
        {
            ReadOnlySpan<double> row = hessian.AsSpan((i + equations) * size, size);
            row[equations..].CopyTo(reduced.AsSpan(i * free, free));
            move[i + equations] = -here.SplitGradient[i + equations] - DenseRows.Dot(row[..equations], move);
        }

        if (!minimum && DenseCholesky.TryFactor(reduced, free, 0) is null)
        {
            new DenseLu(reduced, free).Solve(move.AsSpan(equations));
        }
        else
        {
            Factor(reduced, free).Solve(move.AsSpan(equations));
        }

        here.Space.Join(move);
        return move;
    }

    // The shift starts small against the Hessian of the problem (of order 1) and is remembered, falling as the solve comes near.
    private DenseCholesky Factor(double[] reduced, int free)
    {
        const double first = 1e-4;
        const double growth = 4;
        const double fall = 0.25;
        const double none = 1e-7;
        if (DenseCholesky.TryFactor(reduced, free, 0) is { } plain)
        {
            lastShift *= fall;
            return plain;
        }

        double shift = Math.Max(first, lastShift < none ? 0 : lastShift * fall);
        while (true)
        {
            if (DenseCholesky.TryFactor(reduced, free, shift) is { } shifted)
            {
                lastShift = shift;
                return shifted;
            }

            shift *= growth;
        }
    }

    private (double[] X, double Value, State State)? Fall(double[] x, double value, State here, double[] move)
    {
        // Least part of the step tried before the search is given up, and the share of the promised fall that is asked for.
        const double leastPart = 1e-6;
        const double asked = 1e-4;
        const double nearer = 0.9;
        (double weight, double off) = Penalty(here);
        double slope = DenseRows.Dot(gradient, move) - (weight * off);
        double[] trial = new double[size];
        for (double part = 1; part >= leastPart; part /= 2)
        {
            x.CopyTo(trial, 0);
            DenseRows.Add(trial, part, move);
            if (!problem.TryValue(trial, out double there, residuals))
            {
                continue;
            }

            double merit = Merit(there - value - (weight * off), weight);
            if (merit <= asked * part * Math.Min(slope, 0))
            {
                return (trial, there, Condition(trial));
            }

            if (part == 1)
            {
                State next = Condition(trial);
                if (next.Residual <= nearer * here.Residual)
                {
                    return (trial, there, next);
                }
            }
        }

        return null;
    }

    private double Merit(double gained, double weight)
    {
        double merit = gained;
        foreach (double residual in residuals)
        {
            merit += weight * Math.Abs(residual);
        }

        return merit;
    }

    // What a violated equation costs against the value, and the sum of violations.
    private (double Weight, double Off) Penalty(State here)
    {
        double off = 0;
        double largest = 0;
        for (int i = 0; i < equations; i++)
        {
            largest = Math.Max(largest, Math.Abs(here.Multipliers[i]));
            off += Math.Abs(here.Equations[i]);
        }

        return ((2 * largest) + 1e-3, off);
    }

    private (double[] X, double Value, State State)? Approach(double[] x, State here, double[] move)
    {
        // Least part of a step tried: a start that needs less is not near a stationary point.
        const double leastPart = 1e-3;
        double[] trial = new double[size];
        for (double part = 1; part >= leastPart; part /= 2)
        {
            x.CopyTo(trial, 0);
            DenseRows.Add(trial, part, move);
            if (problem.TryValue(trial, out double there, residuals) && Condition(trial) is { } next && next.Residual < here.Residual)
            {
                return (trial, there, next);
            }
        }

        return null;
    }

    private sealed record State
    {
        public required NullSpace Space { get; init; }

        public required double[] SplitGradient { get; init; }

        public required double[] Equations { get; init; }

        public required double[] Multipliers { get; init; }

        public required double Residual { get; init; }
    }
}
