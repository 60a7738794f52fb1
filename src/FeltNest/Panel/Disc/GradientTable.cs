namespace FeltNest.Panel.Disc;

/// <summary>Gradients of all functions of a basis at the points of a quadrature rule: for each function one row, first the derivatives by x
/// at all points, then those by y.</summary>
/// <remarks>Kept by function, so that a Hessian is a product of rows.</remarks>
internal sealed class GradientTable
{
    private readonly double[] rows;
    private readonly double[] values;
    private readonly int points;

    /// <summary>Tabulates at the points of a rule.</summary>
    public GradientTable(DiscBasis basis, DiscQuadrature rule)
        : this(basis, rule.X, rule.Y)
    {
    }

    /// <summary>Tabulates at any points.</summary>
    public GradientTable(DiscBasis basis, double[] x, double[] y)
    {
        int count = basis.Count;
        points = x.Length;
        rows = new double[2 * points * count];
        values = new double[points * count];
        double[] value = new double[count];
        double[] dx = new double[count];
        double[] dy = new double[count];
        for (int q = 0; q < points; q++)
        {
            basis.Evaluate(x[q], y[q], value, dx, dy);
            for (int i = 0; i < count; i++)
            {
                values[(i * points) + q] = value[i];
                rows[(2 * i * points) + q] = dx[i];
                rows[(((2 * i) + 1) * points) + q] = dy[i];
            }
        }

        Count = count;
    }

    /// <summary>Number of functions.</summary>
    public int Count { get; }

    /// <summary>Derivatives of a function: by x at all points, then by y.</summary>
    public ReadOnlySpan<double> Row(int function) => rows.AsSpan(2 * function * points, 2 * points);

    /// <summary>The rows of the first functions, one after the other.</summary>
    public ReadOnlySpan<double> Rows(int count) => rows.AsSpan(0, 2 * points * count);

    /// <summary>Values of a function at all points.</summary>
    public ReadOnlySpan<double> Values(int function) => values.AsSpan(function * points, points);
}
