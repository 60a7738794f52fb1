namespace FeltNest.Numerics;

/// <summary>A linear program of few unknowns and many limits, with one slack shared by the limits, solved from vertex to vertex.</summary>
/// <remarks>The dual simplex method: C. E. Lemke, <i>The dual method of solving the linear programming problem</i>, Naval Research
/// Logistics Quarterly 1, 1954. A vertex is held by as many limits as there are unknowns. The corner of the box that is cheapest is the
/// first; the limit broken most comes in, and the one whose price falls to nought first goes out. Prices never fall below nought, so the
/// first vertex that breaks no limit is the cheapest. With a handful of unknowns this takes a few dozen sums a limit, a hundredth of what a
/// solver for large programs spends on being set up.</remarks>
internal sealed class VertexProgram
{
    // A limit broken by less than this, mm, is kept.
    private const double Rounding = 1e-11;

    // Many corners of a regular outline touch at once, and on such ties the method can go round for ever: a step that needs more changes
    // of the vertex than this is taken for none.
    private const int MostChanges = 400;

    private readonly IReadOnlyList<(double[] Factors, double Bound)> limits;
    private readonly double[] least;
    private readonly double[] most;
    private readonly int size;

    // Which limit holds each place of the vertex: below 0 a side of the box, else a limit of the list.
    private readonly int[] held;

    // Column k moves along the edge that leaves the limit of place k and keeps the others.
    private readonly double[][] edges;
    private readonly double[] price;
    private readonly double[] at;

    private VertexProgram(
        double[] cost, IReadOnlyList<(double[] Factors, double Bound)> limits, double[] least, double[] most, double slackPrice)
    {
        this.limits = limits;
        size = cost.Length + 1;
        this.least = [.. least, 0];
        this.most = [.. most, double.PositiveInfinity];
        held = new int[size];
        edges = new double[size][];
        price = new double[size];
        at = new double[size];
        double[] costs = [.. cost, slackPrice];
        for (int i = 0; i < size; i++)
        {
            bool low = costs[i] >= 0;
            held[i] = low ? LowSide(i) : HighSide(i);
            edges[i] = new double[size];
            edges[i][i] = low ? 1 : -1;
            price[i] = Math.Abs(costs[i]);
            at[i] = low ? this.least[i] : this.most[i];
        }
    }

    /// <summary>Solves for the change of the parameters.</summary>
    /// <param name="cost">Gradient of the cost.</param>
    /// <param name="limits">Rows: factors times change, and the slack, must reach at least the bound.</param>
    /// <param name="least">Least change of each parameter, finite.</param>
    /// <param name="most">Greatest change, finite.</param>
    /// <param name="slackPrice">Cost of one mm of slack.</param>
    /// <returns>The change, or null when no vertex was found within the work allowed.</returns>
    internal static double[]? Solve(
        double[] cost, IReadOnlyList<(double[] Factors, double Bound)> limits, double[] least, double[] most, double slackPrice) =>
        Vertex(cost, limits, least, most, slackPrice)?.Change;

    /// <summary>Solves as <see cref="Solve"/> does, and keeps the vertex: the change, and the limits that hold it.</summary>
    /// <returns>The vertex, or null when none was found within the work allowed.</returns>
    internal static VertexProgram? Vertex(
        double[] cost, IReadOnlyList<(double[] Factors, double Bound)> limits, double[] least, double[] most, double slackPrice)
    {
        VertexProgram program = new(cost, limits, least, most, slackPrice);
        return program.Run() ? program : null;
    }

    /// <summary>Change of each parameter.</summary>
    internal double[] Change => at[..^1];

    /// <summary>Limits of the list that hold the vertex, each with its price: what the cost would fall by were it one mm looser.</summary>
    internal IReadOnlyList<(int Limit, double Price)> Held =>
        [.. held.Zip(price).Where(pair => pair.First >= 0).OrderBy(pair => pair.First)];

    private static int LowSide(int i) => -1 - (2 * i);

    private static int HighSide(int i) => -2 - (2 * i);

    private bool Run()
    {
        double[] weights = new double[size];
        for (int change = 0; change < MostChanges; change++)
        {
            (int broken, double by) = MostBroken();
            if (by <= Rounding)
            {
                Refine();
                return true;
            }

            Weigh(broken, weights);
            int leaving = Leaving(weights);
            if (leaving < 0)
            {
                return false;
            }

            Exchange(leaving, broken, by, weights);
        }

        return false;
    }

    private (int Limit, double By) MostBroken()
    {
        (int limit, double by) = (0, 0);
        for (int i = 0; i < size; i++)
        {
            if (least[i] - at[i] > by)
            {
                (limit, by) = (LowSide(i), least[i] - at[i]);
            }

            if (at[i] - most[i] > by)
            {
                (limit, by) = (HighSide(i), at[i] - most[i]);
            }
        }

        for (int row = 0; row < limits.Count; row++)
        {
            double lacks = limits[row].Bound - Reached(limits[row].Factors, at);
            if (lacks > by)
            {
                (limit, by) = (row, lacks);
            }
        }

        return (limit, by);
    }

    // A limit of the list has the slack with factor one behind its own factors.
    private double Reached(double[] factors, double[] point)
    {
        double sum = point[size - 1];
        for (int i = 0; i < factors.Length; i++)
        {
            sum += factors[i] * point[i];
        }

        return sum;
    }

    private double Along(int limit, double[] direction)
    {
        if (limit >= 0)
        {
            return Reached(limits[limit].Factors, direction);
        }

        int i = (-1 - limit) / 2;
        return limit == LowSide(i) ? direction[i] : -direction[i];
    }

    // The limit that comes in as a sum of those that hold the vertex.
    private void Weigh(int limit, double[] weights)
    {
        for (int k = 0; k < size; k++)
        {
            weights[k] = Along(limit, edges[k]);
        }
    }

    // Of equal ratios the greatest weight, which is the steadiest.
    private int Leaving(double[] weights)
    {
        int leaving = -1;
        double ratio = double.PositiveInfinity;
        for (int k = 0; k < size; k++)
        {
            if (weights[k] > Rounding
                && (price[k] / weights[k] < ratio || (price[k] / weights[k] == ratio && weights[k] > weights[leaving])))
            {
                (leaving, ratio) = (k, price[k] / weights[k]);
            }
        }

        return leaving;
    }

    private void Exchange(int leaving, int coming, double by, double[] weights)
    {
        double[] edge = edges[leaving];
        double paid = price[leaving] / weights[leaving];
        for (int i = 0; i < size; i++)
        {
            edge[i] /= weights[leaving];
            at[i] += by * edge[i];
        }

        for (int k = 0; k < size; k++)
        {
            if (k != leaving)
            {
                price[k] = Math.Max(0, price[k] - (paid * weights[k]));
                for (int i = 0; i < size; i++)
                {
                    edges[k][i] -= weights[k] * edge[i];
                }
            }
        }

        (held[leaving], price[leaving]) = (coming, paid);
    }

    // Takes out the rounding that the exchanges left.
    private void Refine()
    {
        double[] off = [.. held.Select(limit => Wanted(limit) - Along(limit, at))];
        for (int k = 0; k < size; k++)
        {
            for (int i = 0; i < size; i++)
            {
                at[i] += off[k] * edges[k][i];
            }
        }
    }

    private double Wanted(int limit)
    {
        if (limit >= 0)
        {
            return limits[limit].Bound;
        }

        int i = (-1 - limit) / 2;
        return limit == LowSide(i) ? least[i] : -most[i];
    }
}
