using FeltNest.Numerics;
using Xunit;

namespace FeltNest.Tests.Numerics;

public sealed class NormalEquationsTests
{
    // y = a + b x through (0, 1), (1, 2), (2, 4): by hand b = 3/2, a = 5/6; the inverse is ((5/6, -1/2), (-1/2, 1/2)).
    [Fact]
    public void A_line_through_three_points_is_that_by_hand()
    {
        NormalEquations line = Line([0, 1, 2], [1, 2, 4]);
        double[] found = line.Solve()!;
        double[,] inverse = line.Inverse()!;

        Assert.Equal(5 / 6.0, found[0], 1e-14);
        Assert.Equal(1.5, found[1], 1e-14);
        Assert.Equal(5 / 6.0, inverse[0, 0], 1e-14);
        Assert.Equal(-0.5, inverse[1, 0], 1e-14);
        Assert.Equal(0.5, inverse[1, 1], 1e-14);
    }

    // All values at one place tell no slope; nearly one place tells one that is all noise.
    [Fact]
    public void Unknowns_that_the_rows_cannot_tell_apart_have_no_answer()
    {
        Assert.Null(Line([1, 1, 1], [1, 2, 3]).Solve());
        Assert.Null(Line([1, 1, 1], [1, 2, 3]).Inverse());
        Assert.Null(Line([1, 1, 1 + 1e-6], [1, 2, 3]).Solve(1e-9));
        Assert.NotNull(Line([1, 1, 1 + 1e-3], [1, 2, 3]).Solve(1e-9));
    }

    private static NormalEquations Line(double[] x, double[] y)
    {
        NormalEquations equations = new(2);
        for (int i = 0; i < x.Length; i++)
        {
            equations.Add([1, x[i]], y[i]);
        }

        return equations;
    }
}
