using FeltNest.Geometry;
using FeltNest.Numerics;

namespace FeltNest.Panel.Proven;

/// <summary>Least squares of the normal distances between a measured outline and a panel's edge, over the panel's values and the place of
/// the outline.</summary>
/// <remarks>Follows K. Madsen, H. B. Nielsen and O. Tingleff, <i>Methods for Non-Linear Least Squares Problems</i>, 2nd ed. 2004, section
/// 3.2 (Levenberg and Marquardt's method), with the values kept in their ranges: one that stands at its end and is pushed outwards is left
/// there. The foot of each distance moves along the edge, which changes the distance in second order only.</remarks>
/// <param name="model">The panel's edge by its values.</param>
/// <param name="measured">The outline.</param>
/// <param name="sought">Numbers of the values that are sought; the rest stays as it is at the start.</param>
internal sealed class ProvenSearch(ProvenModel model, MeasuredEdge measured, int[] sought)
{
    private readonly int count = sought.Length;

    // Unknowns besides the values: turn and two moves. The turn is counted in hundredths of a radian, half a millimetre at a tip.
    private const int Rigid = 3;
    private const double TurnStep = 0.01;

    // Steps of the differences, in the steps of the values: an edge held at its limit is known to about 1e-4 of them, and curved by its own
    // size in about ten of them.
    private const double Difference = 1e-2;

    // Most rounds, and the share by which the sum of squares must still fall to go on.
    private const int MostRounds = 40;
    private const double Settled = 1e-9;

    /// <summary>The state nearest to a start; null where the start has no panel.</summary>
    public ProvenState? Run(ProvenState start)
    {
        if (At(start.Values, start.Turn, start.Move) is not { } here)
        {
            return null;
        }

        double damping = 1e-3;
        for (int round = 0; round < MostRounds; round++)
        {
            (double[] normal, double[] pull) = NormalEquations(Columns(here), here.Off);
            if (Better(here, normal, pull, ref damping) is not { } next)
            {
                return here;
            }

            const double fall = 0.2;
            bool settled = here.Square - next.Square <= Settled * here.Square;
            (here, damping) = (next, damping * fall);
            if (settled)
            {
                return here;
            }
        }

        return here;
    }

    private static (double[] Normal, double[] Pull) NormalEquations(double[][] columns, double[] off)
    {
        int n = columns.Length;
        double[] normal = new double[n * n];
        double[] pull = new double[n];
        for (int i = 0; i < n; i++)
        {
            pull[i] = -DenseRows.Dot(columns[i], off);
            for (int j = 0; j <= i; j++)
            {
                normal[(i * n) + j] = normal[(j * n) + i] = DenseRows.Dot(columns[i], columns[j]);
            }
        }

        return (normal, pull);
    }

    // The first step that lowers the sum of squares, damped more and more; null where none does.
    private ProvenState? Better(ProvenState here, double[] normal, double[] pull, ref double damping)
    {
        // Damping beyond this makes steps below rounding.
        const double most = 1e9;
        const double growth = 5;
        for (; damping < most; damping *= growth)
        {
            ProvenState? next = Try(here, normal, pull, damping);
            if (next is not null && next.Square < here.Square)
            {
                return next;
            }
        }

        return null;
    }

    /// <summary>The state of given values and place; null where there is no such panel.</summary>
    public ProvenState? At(double[] values, double turn, Point2 move)
    {
        double[] inside = model.Inside(values);
        if (model.Edge(inside) is not { } edge)
        {
            return null;
        }

        (double Parameter, Point2 Foot, Point2 Outward, double Off)[] feet = measured.Against(edge, turn, move);
        return new ProvenState
        {
            Values = inside,
            Turn = turn,
            Move = move,
            Parameters = [.. feet.Select(f => f.Parameter)],
            Feet = [.. feet.Select(f => f.Foot)],
            Outward = [.. feet.Select(f => f.Outward)],
            Off = [.. feet.Select(f => f.Off)],
        };
    }

    /// <summary>Change of each distance by one step of each value, then of turn and moves.</summary>
    public double[][] Columns(ProvenState at)
    {
        double[][] columns = new double[count + Rigid][];
        Parallel.For(0, count, i => columns[i] = ByValue(at, sought[i]));
        columns[count] = [.. measured.Places.Select((p, k) => p.Turned(at.Turn).Left.Dot(at.Outward[k]) * TurnStep)];
        columns[count + 1] = [.. at.Outward.Select(normal => normal.X)];
        columns[count + 2] = [.. at.Outward.Select(normal => normal.Y)];
        return columns;
    }

    private double[] ByValue(ProvenState at, int i)
    {
        // Downwards, where an edge limit acts, or upwards where the range ends below or there is no panel.
        double step = ProvenModel.Steps[i];
        foreach (double difference in new[] { -Difference, Difference })
        {
            double[] there = [.. at.Values];
            there[i] += difference * step;
            if (model.Inside(there)[i] == there[i] && model.Edge(there) is { } edge)
            {
                return [.. at.Parameters.Select((s, k) => (at.Feet[k] - edge.At(s).Place).Dot(at.Outward[k]) / difference)];
            }
        }

        return new double[at.Off.Length];
    }

    private ProvenState? Try(ProvenState here, double[] normal, double[] pull, double damping)
    {
        int n = pull.Length;
        bool[] left = new bool[n];
        for (int attempt = 0; attempt <= count; attempt++)
        {
            int[] free = [.. Enumerable.Range(0, n).Where(i => !left[i])];
            double[] step = [.. free.Select(i => pull[i])];
            if (DenseCholesky.TryFactor(Damped(normal, n, free, damping), free.Length, 0) is not { } factor)
            {
                return null;
            }

            factor.Solve(step);
            (double[] values, double turn, Point2 move) = Moved(here, free, step);
            double[] inside = model.Inside(values);
            int[] stopped = [.. Enumerable.Range(0, count).Where(i => !left[i] && IsStopped(here, values, inside, sought[i]))];
            if (stopped.Length == 0)
            {
                return At(inside, turn, move);
            }

            // The others go their way without the value that cannot move.
            Array.ForEach(stopped, i => left[i] = true);
        }

        return null;
    }

    // A value that stands at its end and is pushed outwards.
    private static bool IsStopped(ProvenState here, double[] values, double[] inside, int i) =>
        inside[i] != values[i] && inside[i] == here.Values[i];

    private static double[] Damped(double[] normal, int n, int[] free, double damping)
    {
        double[] matrix = new double[free.Length * free.Length];
        for (int a = 0; a < free.Length; a++)
        {
            for (int b = 0; b < free.Length; b++)
            {
                matrix[(a * free.Length) + b] = normal[(free[a] * n) + free[b]];
            }

            // A value that moves nothing keeps its place.
            matrix[(a * free.Length) + a] += Math.Max(damping * matrix[(a * free.Length) + a], double.Epsilon);
        }

        return matrix;
    }

    private (double[] Values, double Turn, Point2 Move) Moved(ProvenState here, int[] free, double[] step)
    {
        double[] values = [.. here.Values];
        (double turn, Point2 move) = (here.Turn, here.Move);
        for (int a = 0; a < free.Length; a++)
        {
            int i = free[a];
            switch (i - count)
            {
                case < 0:
                    values[sought[i]] += step[a] * ProvenModel.Steps[sought[i]];
                    break;
                case 0:
                    turn += step[a] * TurnStep;
                    break;
                case 1:
                    move += new Point2(step[a], 0);
                    break;
                default:
                    move += new Point2(0, step[a]);
                    break;
            }
        }

        return (values, turn, move);
    }
}
