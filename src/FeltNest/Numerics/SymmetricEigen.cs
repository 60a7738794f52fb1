namespace FeltNest.Numerics;

/// <summary>Eigenvalues and eigenvectors of a small symmetric matrix of full rows.</summary>
/// <remarks>Cyclic Jacobi rotations, as in G. Golub and C. Van Loan, <i>Matrix Computations</i>, 4th ed. 2013, section 8.5.</remarks>
internal static class SymmetricEigen
{
    // Sweeps before the rest off the diagonal is rounding: three or four are enough for matrices this small.
    private const int Sweeps = 30;

    /// <summary>Eigenvalues, least first, each with its vector of length 1.</summary>
    public static (double Value, double[] Vector)[] Of(ReadOnlySpan<double> matrix, int size)
    {
        double[] a = matrix[..(size * size)].ToArray();
        double[] v = new double[size * size];
        for (int i = 0; i < size; i++)
        {
            v[(i * size) + i] = 1;
        }

        for (int sweep = 0; sweep < Sweeps; sweep++)
        {
            for (int p = 0; p < size; p++)
            {
                for (int q = p + 1; q < size; q++)
                {
                    Rotate(a, v, size, p, q);
                }
            }
        }

        return [.. Enumerable.Range(0, size)
            .Select(i => (a[(i * size) + i], Enumerable.Range(0, size).Select(k => v[(k * size) + i]).ToArray()))
            .OrderBy(pair => pair.Item1)];
    }

    // One rotation in the plane of p and q that makes their common entry zero.
    private static void Rotate(double[] a, double[] v, int size, int p, int q)
    {
        double off = a[(p * size) + q];
        if (off == 0)
        {
            return;
        }

        double ratio = (a[(q * size) + q] - a[(p * size) + p]) / (2 * off);
        double tangent = (ratio >= 0 ? 1 : -1) / (Math.Abs(ratio) + Math.Sqrt(1 + (ratio * ratio)));
        double cos = 1 / Math.Sqrt(1 + (tangent * tangent));
        double sin = tangent * cos;
        for (int k = 0; k < size; k++)
        {
            (double kp, double kq) = (a[(k * size) + p], a[(k * size) + q]);
            (a[(k * size) + p], a[(k * size) + q]) = ((cos * kp) - (sin * kq), (sin * kp) + (cos * kq));
        }

        for (int k = 0; k < size; k++)
        {
            (double pk, double qk) = (a[(p * size) + k], a[(q * size) + k]);
            (a[(p * size) + k], a[(q * size) + k]) = ((cos * pk) - (sin * qk), (sin * pk) + (cos * qk));
            (double kp, double kq) = (v[(k * size) + p], v[(k * size) + q]);
            (v[(k * size) + p], v[(k * size) + q]) = ((cos * kp) - (sin * kq), (sin * kp) + (cos * kq));
        }
    }
}
