using FeltNest.Numerics;
using Xunit;

namespace FeltNest.Tests.Numerics;

public sealed class SymmetricEigenTests
{
    [Fact]
    public void The_second_difference_matrix_has_its_closed_eigenvalues()
    {
        // 2 - 2 cos(k pi / (n + 1)), k = 1 to n: the discrete sine transform (own derivation).
        const int n = 6;
        double[] matrix = new double[n * n];
        for (int i = 0; i < n; i++)
        {
            matrix[(i * n) + i] = 2;
            if (i > 0)
            {
                matrix[(i * n) + i - 1] = matrix[((i - 1) * n) + i] = -1;
            }
        }

        (double Value, double[] Vector)[] found = SymmetricEigen.Of(matrix, n);

        for (int k = 0; k < n; k++)
        {
            Assert.Equal(2 - (2 * Math.Cos((k + 1) * Math.PI / (n + 1))), found[k].Value, 1e-12);
            double[] vector = found[k].Vector;
            for (int i = 0; i < n; i++)
            {
                Assert.Equal(found[k].Value * vector[i], Enumerable.Range(0, n).Sum(j => matrix[(i * n) + j] * vector[j]), 1e-12);
            }
        }
    }
}
