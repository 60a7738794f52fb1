namespace FeltNest.Numerics;

/// <summary>The normal equations of a least-squares fit with few unknowns, gathered row by row.</summary>
/// <param name="unknowns">How many unknowns.</param>
internal sealed class NormalEquations(int unknowns)
{
    private readonly double[] matrix = new double[unknowns * unknowns];
    private readonly double[] right = new double[unknowns];

    /// <summary>Takes a value.</summary>
    /// <param name="row">Factors of the unknowns.</param>
    /// <param name="value">What their sum is to be.</param>
    public void Add(ReadOnlySpan<double> row, double value)
    {
        for (int i = 0; i < unknowns; i++)
        {
            right[i] += row[i] * value;
            DenseRows.Add(matrix.AsSpan(i * unknowns, unknowns), row[i], row);
        }
    }

    /// <summary>The unknowns; null where the rows cannot tell them apart.</summary>
    /// <param name="least">Where a combination of unknowns, its squares adding to 1, changes the values by a sum of squares below this, the
    /// rows cannot tell it.</param>
    public double[]? Solve(double least = 0)
    {
        bool apart = least == 0 || DenseCholesky.TryFactor(matrix, unknowns, -least) is not null;
        if (!apart || DenseCholesky.TryFactor(matrix, unknowns, 0) is not { } factor)
        {
            return null;
        }

        double[] solution = [.. right];
        factor.Solve(solution);
        return solution;
    }

    /// <summary>The inverse of the matrix: the covariance of the unknowns for values of standard deviation 1; null where there is
    /// none.</summary>
    public double[,]? Inverse() => InverseOf(matrix, unknowns);

    /// <summary>Inverse of a symmetric positive definite matrix, row by row; null where it is not one.</summary>
    public static double[,]? InverseOf(ReadOnlySpan<double> matrix, int size)
    {
        if (DenseCholesky.TryFactor(matrix, size, 0) is not { } factor)
        {
            return null;
        }

        double[,] inverse = new double[size, size];
        for (int j = 0; j < size; j++)
        {
            double[] unit = new double[size];
            unit[j] = 1;
            factor.Solve(unit);
            for (int i = 0; i < size; i++)
            {
                inverse[i, j] = unit[i];
            }
        }

        return inverse;
    }
}
