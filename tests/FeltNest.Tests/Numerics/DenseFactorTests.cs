using FeltNest.Numerics;
using Xunit;

namespace FeltNest.Tests.Numerics;

public sealed class DenseFactorTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(7)]
    [InlineData(33)]
    public void Both_factors_solve_a_positive_definite_system(int size)
    {
        double[] matrix = Definite(size);
        double[] x = Random(size, 5);
        double[] b = Times(matrix, x);
        double[] byCholesky = [.. b];
        double[] byLu = [.. b];

        DenseCholesky.TryFactor(matrix, size, 0)!.Solve(byCholesky);
        new DenseLu(matrix, size).Solve(byLu);

        for (int i = 0; i < size; i++)
        {
            Assert.Equal(x[i], byCholesky[i], 9);
            Assert.Equal(x[i], byLu[i], 9);
        }
    }

    [Fact]
    public void An_indefinite_matrix_has_no_Cholesky_factor_until_it_is_shifted_but_Lu_solves_it()
    {
        double[] matrix = [0, 2, 2, 0];
        double[] b = [2, 4];

        Assert.Null(DenseCholesky.TryFactor(matrix, 2, 0));
        Assert.NotNull(DenseCholesky.TryFactor(matrix, 2, 2.1));
        new DenseLu(matrix, 2).Solve(b);
        Assert.Equal([2.0, 1.0], b);
    }

    [Fact]
    public void A_singular_matrix_is_refused() => Assert.Throws<InvalidOperationException>(() => new DenseLu([1, 1, 1, 1], 2));

    [Fact]
    public void Row_products_agree_with_plain_sums_at_every_length()
    {
        for (int length = 1; length < 20; length++)
        {
            double[] row = Random(length, length);
            double[] block = Random(length * 6, 100 + length);
            double[] found = new double[6];
            DenseRows.Dots(row, block, found);
            for (int j = 0; j < 6; j++)
            {
                double plain = 0;
                for (int i = 0; i < length; i++)
                {
                    plain += row[i] * block[(j * length) + i];
                }

                Assert.Equal(plain, found[j], 13);
            }

            double[] sum = [.. row];
            DenseRows.Add(sum, 2.5, block);
            Assert.Equal(row[^1] + (2.5 * block[length - 1]), sum[^1], 14);
        }
    }

    internal static double[] Random(int count, int seed)
    {
        Random random = new(seed);
        return [.. Enumerable.Range(0, count).Select(_ => (2 * random.NextDouble()) - 1)];
    }

    internal static double[] Times(double[] matrix, double[] x) =>
        [.. Enumerable.Range(0, x.Length).Select(i => Enumerable.Range(0, x.Length).Sum(j => matrix[(i * x.Length) + j] * x[j]))];

    private static double[] Definite(int size)
    {
        double[] half = Random(size * size, size);
        double[] matrix = new double[size * size];
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j < size; j++)
            {
                matrix[(i * size) + j] =
                    (i == j ? 0.1 : 0) + Enumerable.Range(0, size).Sum(k => half[(i * size) + k] * half[(j * size) + k]);
            }
        }

        return matrix;
    }
}
