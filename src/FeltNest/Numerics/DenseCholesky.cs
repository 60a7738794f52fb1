namespace FeltNest.Numerics;

/// <summary>Cholesky factor of a symmetric positive definite matrix, given and kept as full rows of which only the lower triangle is
/// read.</summary>
internal sealed class DenseCholesky
{
    private readonly double[] factor;
    private readonly int size;

    private DenseCholesky(double[] factor, int size)
    {
        this.factor = factor;
        this.size = size;
    }

    /// <summary>Factors the matrix with <paramref name="shift"/> added to its diagonal; null where that is not positive definite.</summary>
    public static DenseCholesky? TryFactor(ReadOnlySpan<double> matrix, int size, double shift)
    {
        double[] l = matrix[..(size * size)].ToArray();
        for (int i = 0; i < size; i++)
        {
            Span<double> row = l.AsSpan(i * size, size);
            row[i] += shift;
            for (int j = 0; j < i; j++)
            {
                row[j] = (row[j] - DenseRows.Dot(row[..j], l.AsSpan(j * size, j))) / l[(j * size) + j];
            }

            double pivot = row[i] - DenseRows.Dot(row[..i], row[..i]);
            if (!(pivot > 0))
            {
                return null;
            }

            row[i] = Math.Sqrt(pivot);
        }

        return new DenseCholesky(l, size);
    }

    /// <summary>The lower factor times a vector: independent values of variance 1 come out with the matrix as their covariance.</summary>
    public double[] Mixed(ReadOnlySpan<double> x)
    {
        double[] mixed = new double[size];
        for (int i = 0; i < size; i++)
        {
            mixed[i] = DenseRows.Dot(factor.AsSpan(i * size, i + 1), x[..(i + 1)]);
        }

        return mixed;
    }

    /// <summary>Solves in place.</summary>
    public void Solve(Span<double> x)
    {
        for (int i = 0; i < size; i++)
        {
            x[i] = (x[i] - DenseRows.Dot(factor.AsSpan(i * size, i), x)) / factor[(i * size) + i];
        }

        for (int i = size - 1; i >= 0; i--)
        {
            x[i] /= factor[(i * size) + i];
            DenseRows.Add(x[..i], -x[i], factor.AsSpan(i * size, i));
        }
    }
}
