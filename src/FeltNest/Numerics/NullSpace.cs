namespace FeltNest.Numerics;

/// <summary>Splits space into what a set of equation rows sees and what they leave free, by Householder reflections of the rows.</summary>
/// <remarks>Follows J. Nocedal and S. Wright, <i>Numerical Optimization</i>, 2nd ed. 2006, section 16.2 (null-space method).</remarks>
internal sealed class NullSpace
{
    private readonly double[] reflectors;
    private readonly double[] triangle;
    private readonly int rows;
    private readonly int size;

    /// <summary>Factors the rows, each of <paramref name="size"/> numbers.</summary>
    /// <exception cref="InvalidOperationException">The rows depend on each other.</exception>
    public NullSpace(ReadOnlySpan<double> jacobian, int rows, int size)
    {
        this.rows = rows;
        this.size = size;
        reflectors = jacobian[..(rows * size)].ToArray();
        triangle = new double[rows * rows];
        for (int i = 0; i < rows; i++)
        {
            Span<double> row = Reflector(i);
            for (int k = 0; k < i; k++)
            {
                Reflect(k, row);
                triangle[(k * rows) + i] = row[k];
                row[k] = 0;
            }

            double norm = Math.Sqrt(DenseRows.Dot(row, row));

            // A row that keeps less than this share of itself beside the others says nothing of its own.
            const double dependent = 1e-10;
            if (!(norm > dependent * Math.Sqrt(DenseRows.Dot(jacobian.Slice(i * size, size), jacobian.Slice(i * size, size)))))
            {
                throw new InvalidOperationException("equation rows depend on each other");
            }

            double head = row[i] > 0 ? -norm : norm;
            triangle[(i * rows) + i] = head;
            row[i] -= head;
            double scale = Math.Sqrt(2 / DenseRows.Dot(row, row));
            for (int k = i; k < size; k++)
            {
                row[k] *= scale;
            }
        }
    }

    /// <summary>How many directions are free.</summary>
    public int Free => size - rows;

    /// <summary>Turns a vector into the split frame: first what the equations see, then the free part.</summary>
    public void Split(Span<double> vector)
    {
        for (int i = 0; i < rows; i++)
        {
            Reflect(i, vector);
        }
    }

    /// <summary>Turns a split vector back.</summary>
    public void Join(Span<double> vector)
    {
        for (int i = rows - 1; i >= 0; i--)
        {
            Reflect(i, vector);
        }
    }

    /// <summary>Turns a symmetric matrix of full rows into the split frame.</summary>
    public void Split(Span<double> matrix, Span<double> work)
    {
        for (int i = 0; i < rows; i++)
        {
            ReadOnlySpan<double> v = Reflector(i);
            for (int k = 0; k < size; k++)
            {
                work[k] = DenseRows.Dot(matrix.Slice(k * size, size), v);
            }

            DenseRows.Add(work[..size], -0.5 * DenseRows.Dot(work[..size], v), v);
            for (int k = 0; k < size; k++)
            {
                DenseRows.Add(matrix.Slice(k * size, size), -v[k], work);
                DenseRows.Add(matrix.Slice(k * size, size), -work[k], v);
            }
        }
    }

    /// <summary>Solves rows times step = value, the answer being the seen part of a split step.</summary>
    public void SolveSeen(Span<double> value)
    {
        for (int i = 0; i < rows; i++)
        {
            for (int k = 0; k < i; k++)
            {
                value[i] -= triangle[(k * rows) + i] * value[k];
            }

            value[i] /= triangle[(i * rows) + i];
        }
    }

    /// <summary>Solves multipliers times rows = value, where the value is the seen part of a split gradient.</summary>
    public void SolveMultipliers(Span<double> value)
    {
        for (int i = rows - 1; i >= 0; i--)
        {
            for (int k = i + 1; k < rows; k++)
            {
                value[i] -= triangle[(i * rows) + k] * value[k];
            }

            value[i] /= triangle[(i * rows) + i];
        }
    }

    private Span<double> Reflector(int i) => reflectors.AsSpan(i * size, size);

    private void Reflect(int i, Span<double> vector) => DenseRows.Add(vector, -DenseRows.Dot(Reflector(i), vector), Reflector(i));
}
