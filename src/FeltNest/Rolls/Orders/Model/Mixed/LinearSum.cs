namespace FeltNest.Rolls.Orders.Model.Mixed;

/// <summary>A sum of variables with factors, and a constant.</summary>
internal sealed class LinearSum
{
    private readonly List<(Unknown Variable, double Factor)> terms = [];

    /// <summary>The constant.</summary>
    public double Constant { get; private set; }

    /// <summary>The terms; a variable may stand in several.</summary>
    public IReadOnlyList<(Unknown Variable, double Factor)> Terms => terms;

    /// <summary>True where no variable stands in it.</summary>
    public bool IsEmpty => terms.Count == 0;

    /// <summary>Adds a variable.</summary>
    public LinearSum Add(Unknown variable, double factor = 1)
    {
        terms.Add((variable, factor));
        return this;
    }

    /// <summary>Adds a number.</summary>
    public LinearSum Add(double constant)
    {
        Constant += constant;
        return this;
    }

    /// <summary>Adds another sum.</summary>
    public LinearSum Add(LinearSum other, double factor = 1)
    {
        terms.AddRange(other.terms.Select(t => (t.Variable, t.Factor * factor)));
        Constant += other.Constant * factor;
        return this;
    }

    /// <summary>Factors by variable, each variable once, in the order of first mention.</summary>
    public IEnumerable<(Unknown Variable, double Factor)> Gathered() =>
        terms.GroupBy(t => t.Variable.Index).Select(g => (g.First().Variable, g.Sum(t => t.Factor)));
}
