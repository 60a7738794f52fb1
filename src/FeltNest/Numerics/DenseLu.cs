namespace FeltNest.Numerics;

/// <summary>Triangular factors of a square matrix of full rows, with row exchanges: for systems that are not positive definite.</summary>
/// <remarks>Gaussian elimination with partial pivoting, as in G. Golub and C. Van Loan, <i>Matrix Computations</i>, 4th ed. 2013, section
/// 3.4.</remarks>
internal sealed class DenseLu
{
    private readonly double[] factors;
    private readonly int[] order;
    private readonly int size;

    /// <summary>Factors a matrix; the given numbers are kept.</summary>
    /// <exception cref="InvalidOperationException">The matrix is singular to the last digit.</exception>
    public DenseLu(ReadOnlySpan<double> matrix, int size)
    {
        this.size = size;
        factors = matrix[..(size * size)].ToArray();
        order = [.. Enumerable.Range(0, size)];
        for (int k = 0; k < size; k++)
        {
            int best = k;
            for (int i = k + 1; i < size; i++)
            {
                best = Math.Abs(factors[(i * size) + k]) > Math.Abs(factors[(best * size) + k]) ? i : best;
            }

            Exchange(k, best);
            double pivot = factors[(k * size) + k];
            if (pivot == 0)
            {
                throw new InvalidOperationException("matrix is singular");
            }

            ReadOnlySpan<double> upper = factors.AsSpan((k * size) + k + 1, size - k - 1);
            for (int i = k + 1; i < size; i++)
            {
                double share = factors[(i * size) + k] /= pivot;
                DenseRows.Add(factors.AsSpan((i * size) + k + 1, size - k - 1), -share, upper);
            }
        }
    }

    /// <summary>Solves in place.</summary>
    public void Solve(Span<double> x)
    {
        double[] given = x[..size].ToArray();
        for (int i = 0; i < size; i++)
        {
            x[i] = given[order[i]];
            x[i] -= DenseRows.Dot(factors.AsSpan(i * size, i), x);
        }

        for (int i = size - 1; i >= 0; i--)
        {
            int after = size - i - 1;
            x[i] -= DenseRows.Dot(factors.AsSpan((i * size) + i + 1, after), x.Slice(i + 1, after));
            x[i] /= factors[(i * size) + i];
        }
    }

    private void Exchange(int i, int j)
    {
        if (i == j)
        {
            return;
        }

        (order[i], order[j]) = (order[j], order[i]);
        for (int k = 0; k < size; k++)
        {
            (factors[(i * size) + k], factors[(j * size) + k]) = (factors[(j * size) + k], factors[(i * size) + k]);
        }
    }
}
