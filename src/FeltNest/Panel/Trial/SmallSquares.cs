using FeltNest.Numerics;

namespace FeltNest.Panel.Trial;

/// <summary>Least squares with few unknowns: the solution, its covariance at noise 1, and what is left.</summary>
internal sealed class SmallSquares
{
    private SmallSquares(double[] solution, double[,] covariance, double left, int freedom) =>
        (Solution, Covariance, LeftSquares, Freedom) = (solution, covariance, left, freedom);

    /// <summary>The unknowns.</summary>
    public double[] Solution { get; }

    /// <summary>Covariance of the unknowns for values of standard deviation 1.</summary>
    public double[,] Covariance { get; }

    /// <summary>Sum of the squares left.</summary>
    public double LeftSquares { get; }

    /// <summary>Values less unknowns.</summary>
    public int Freedom { get; }

    /// <summary>Solves.</summary>
    /// <param name="rows">One row a value; the columns must be told apart.</param>
    /// <param name="values">The values.</param>
    public static SmallSquares Of(double[][] rows, double[] values)
    {
        int n = rows[0].Length;
        NormalEquations equations = new(n);
        foreach ((double[] row, double value) in rows.Zip(values))
        {
            equations.Add(row, value);
        }

        double[] solution = equations.Solve() ?? throw Alike();
        double[,] covariance = equations.Inverse() ?? throw Alike();
        double left = rows.Zip(values, (row, value) => value - row.Zip(solution, (a, b) => a * b).Sum()).Sum(d => d * d);
        return new SmallSquares(solution, covariance, left, values.Length - n);
    }

    /// <summary>The block of a square matrix from a first row and column on, so many wide.</summary>
    public static double[,] Block(double[,] matrix, int first, int count)
    {
        double[,] block = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++)
            {
                block[i, j] = matrix[first + i, first + j];
            }
        }

        return block;
    }

    /// <summary>Inverse of a symmetric positive definite matrix.</summary>
    public static double[,] Inverse(double[,] matrix) =>
        NormalEquations.InverseOf([.. matrix.Cast<double>()], matrix.GetLength(0)) ?? throw Alike();

    /// <summary>Matrix times vector.</summary>
    public static double[] Times(double[,] matrix, double[] vector) =>
    [
        .. Enumerable.Range(0, vector.Length).Select(i => Enumerable.Range(0, vector.Length).Sum(j => matrix[i, j] * vector[j])),
    ];

    /// <summary>A vector on both sides of a matrix.</summary>
    public static double Square(double[,] matrix, double[] vector) => Times(matrix, vector).Zip(vector, (a, b) => a * b).Sum();

    private static NoAnswerException Alike() => new("the readings cannot tell the unknowns apart");
}
