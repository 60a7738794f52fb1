using FeltNest.Numerics;
using Xunit;

namespace FeltNest.Tests.Numerics;

public sealed class ConstrainedNewtonTests
{
    [Fact]
    public void The_valley_of_Rosenbrock_is_walked_to_its_end()
    {
        // H. H. Rosenbrock, Computer J. 3, 1960: least value 0 at (1, 1), usual start (-1.2, 1).
        NewtonResult result = new ConstrainedNewton(new Valley(null)).Minimise([-1.2, 1]);

        Assert.Equal(1, result.X[0], 9);
        Assert.Equal(1, result.X[1], 9);
        Assert.InRange(result.Value, 0, 1e-18);
    }

    [Fact]
    public void An_equation_is_kept_and_its_multiplier_balances_the_gradient()
    {
        // The point is known from a scan of the circle (own derivation); the conditions themselves are looked at below.
        Valley valley = new(1);
        NewtonResult result = new ConstrainedNewton(valley).Minimise([0.1, 0.1]);

        Assert.Equal(0.7864, result.X[0], 4);
        Assert.Equal(0.6177, result.X[1], 4);
        double[] gradient = new double[2];
        double[] row = new double[2];
        valley.Linearise(result.X, gradient, row);
        Assert.Equal(0, gradient[0] + (result.Multipliers[0] * row[0]), 8);
        Assert.Equal(0, gradient[1] + (result.Multipliers[0] * row[1]), 8);
    }

    [Fact]
    public void Following_reaches_a_saddle_that_a_minimum_search_leaves()
    {
        NewtonResult saddle = new ConstrainedNewton(new Saddle()).Follow([0.1, 0.2]);

        Assert.Equal(0, saddle.X[0], 9);
        Assert.Equal(0, saddle.X[1], 9);
        Assert.Equal(1, Math.Abs(new ConstrainedNewton(new Saddle()).Minimise([0.1, 0.2]).X[1]), 9);
    }

    [Fact]
    public void Rows_that_depend_on_each_other_are_refused() =>
        Assert.Throws<InvalidOperationException>(() => new NullSpace([1, 2, 3, 2, 4, 6], 2, 3));

    [Fact]
    public void The_free_part_of_a_split_vector_moves_no_equation()
    {
        double[] rows = DenseFactorTests.Random(2 * 5, 3);
        double[] vector = [0, 0, 0.3, -0.7, 0.2];
        NullSpace space = new(rows, 2, 5);

        space.Join(vector);

        Assert.Equal(3, space.Free);
        Assert.Equal(0, DenseRows.Dot(rows.AsSpan(0, 5), vector), 14);
        Assert.Equal(0, DenseRows.Dot(rows.AsSpan(5, 5), vector), 14);
        space.Split(vector);
        Assert.Equal(-0.7, vector[3], 14);
    }

    private sealed class Valley(double? circle) : ConstrainedProblem
    {
        public override int Unknowns => 2;

        public override int Equations => circle is null ? 0 : 1;

        public override bool TryValue(ReadOnlySpan<double> x, out double value, Span<double> residuals)
        {
            value = (100 * Math.Pow(x[1] - (x[0] * x[0]), 2)) + Math.Pow(1 - x[0], 2);
            if (circle is { } r)
            {
                residuals[0] = (x[0] * x[0]) + (x[1] * x[1]) - (r * r);
            }

            return true;
        }

        public override void Linearise(ReadOnlySpan<double> x, Span<double> gradient, Span<double> jacobian)
        {
            double rise = x[1] - (x[0] * x[0]);
            (gradient[0], gradient[1]) = ((-400 * x[0] * rise) - (2 * (1 - x[0])), 200 * rise);
            if (circle is not null)
            {
                (jacobian[0], jacobian[1]) = (2 * x[0], 2 * x[1]);
            }
        }

        public override void Curve(ReadOnlySpan<double> x, ReadOnlySpan<double> multipliers, Span<double> hessian)
        {
            double held = circle is null ? 0 : 2 * multipliers[0];
            hessian[0] = (1200 * x[0] * x[0]) - (400 * x[1]) + 2 + held;
            hessian[1] = hessian[2] = -400 * x[0];
            hessian[3] = 200 + held;
        }
    }

    // x^2 - y^2/2 + y^4/4: a saddle at the origin, minima at y = 1 and -1.
    private sealed class Saddle : ConstrainedProblem
    {
        public override int Unknowns => 2;

        public override int Equations => 0;

        public override bool TryValue(ReadOnlySpan<double> x, out double value, Span<double> residuals)
        {
            value = (x[0] * x[0]) - (x[1] * x[1] / 2) + (Math.Pow(x[1], 4) / 4);
            return true;
        }

        public override void Linearise(ReadOnlySpan<double> x, Span<double> gradient, Span<double> jacobian) =>
            (gradient[0], gradient[1]) = (2 * x[0], Math.Pow(x[1], 3) - x[1]);

        public override void Curve(ReadOnlySpan<double> x, ReadOnlySpan<double> multipliers, Span<double> hessian) =>
            (hessian[0], hessian[1], hessian[2], hessian[3]) = (2, 0, 0, (3 * x[1] * x[1]) - 1);
    }
}
