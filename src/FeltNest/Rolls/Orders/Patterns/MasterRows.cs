namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Rows and columns of a linear program, in the order in which they are added.</summary>
internal sealed class MasterRows
{
    private readonly List<(double Low, double High)> rows = [];
    private readonly List<MasterColumn> columns = [];

    /// <summary>Bounds of the rows.</summary>
    public IReadOnlyList<(double Low, double High)> Rows => rows;

    /// <summary>The columns.</summary>
    public IReadOnlyList<MasterColumn> Columns => columns;

    /// <summary>Adds a row.</summary>
    /// <returns>Its place.</returns>
    public int Row(double low, double high)
    {
        rows.Add((low, high));
        return rows.Count - 1;
    }

    /// <summary>Adds a column.</summary>
    /// <returns>Its place.</returns>
    public int Column(double cost, double most, params (int Row, double Factor)[] entries)
    {
        columns.Add(new MasterColumn { Cost = cost, Most = most, Entries = entries });
        return columns.Count - 1;
    }

    /// <summary>Moves the bounds of a row.</summary>
    public void Move(int row, double by) => rows[row] = (rows[row].Low + by, rows[row].High + by);
}
