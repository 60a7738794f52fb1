namespace FeltNest.Rolls.Orders.Clock;

/// <summary>The most hours of work that presses can give together until a moment: grows, and is linear from one corner to the
/// next.</summary>
internal sealed class Capacity
{
    /// <summary>Hours this near are equal: rounding of sums, on the safe side of a bound.</summary>
    public const double Slack = 1e-6;

    private readonly double[] at;
    private readonly double[] until;

    private Capacity(IEnumerable<(double At, double Rate)> corners, int days)
    {
        Days = days;
        (double At, double Rate)[] all = [.. corners];
        at = [.. all.Select(corner => corner.At)];
        until = new double[all.Length];
        for (int i = 1; i < all.Length; i++)
        {
            until[i] = until[i - 1] + (all[i - 1].Rate * (all[i].At - all[i - 1].At));
        }
    }

    /// <summary>Days it reaches over.</summary>
    public int Days { get; }

    /// <summary>Of all presses that take one of the dies, each less what its first piece takes to set up.</summary>
    /// <param name="question">The question.</param>
    /// <param name="days">Days it is to reach over.</param>
    /// <param name="mounted">Whether its first mounting is part of that.</param>
    public static Capacity OfAll(OrderRequest question, int days, bool mounted) =>
        Of(question, [.. question.Dies], (days, int.MaxValue), mounted);

    /// <summary>Of the dies of one ball: never more presses at a time than dies of it.</summary>
    /// <param name="question">The question.</param>
    /// <param name="ball">The ball.</param>
    /// <param name="days">Days it is to reach over.</param>
    /// <param name="mounted">Whether the first mounting of a press is taken off.</param>
    public static Capacity OfBall(OrderRequest question, string ball, int days, bool mounted)
    {
        CutDie[] dies = [.. question.Dies.Where(die => die.Ball == ball)];
        return Of(question, dies, (days, dies.Length), mounted);
    }

    /// <summary>Most hours of work between two moments.</summary>
    public double Between(double from, double to) => to <= from ? 0 : Until(to) - Until(from);

    /// <summary>Most hours of work of a day.</summary>
    public double OfDay(int day) => Between(24.0 * day, 24.0 * (day + 1));

    private double Until(double moment)
    {
        int i = Array.BinarySearch(at, moment);
        i = i >= 0 ? i : ~i - 1;
        if (i < 0)
        {
            return 0;
        }

        double rate = i + 1 < at.Length ? (until[i + 1] - until[i]) / (at[i + 1] - at[i]) : 0;
        return until[i] + (rate * (moment - at[i]));
    }

    private static Capacity Of(OrderRequest question, CutDie[] dies, (int Days, int Most) limits, bool mounted) => new(
        Corners(
            [
                .. question.Presses.Where(press => Array.Exists(dies, die => OrderRequest.Takes(press, die)))
                    .Select(press => Spans(question, press, limits.Days, SetUp(press, mounted))),
            ], limits.Most), limits.Days);

    // A die that stands there already needs no mounting; the first roll must be put on in any case.
    private static double SetUp(PressSpec press, bool mounted) =>
        ((mounted && press.MountedDie is null ? press.ChangeOverMinutes : 0) + press.RollChangeMinutes) / 60;

    // Open spans of a press after its first set-up: before that it can do no work. The hours it may run in all are no part of it, as they
    // may be saved for later.
    private static List<(double From, double To)> Spans(OrderRequest question, PressSpec press, int days, double setUp)
    {
        List<(double From, double To)> spans = [];
        double skip = setUp;
        foreach (OpenSpan span in new OpenHours(question.CalendarOf(press), question.Rules.Start).Spans)
        {
            double from = Math.Min(span.EndHour, span.StartHour + skip);
            skip -= from - span.StartHour;
            double to = Math.Min(span.EndHour, 24.0 * days);
            if (to > from)
            {
                spans.Add((from, to));
            }
        }

        return spans;
    }

    // Where the number of presses that run changes, and that number.
    private static List<(double At, double Rate)> Corners(IReadOnlyList<List<(double From, double To)>> presses, int most)
    {
        SortedDictionary<double, int> steps = new() { [0] = 0 };
        foreach ((double from, double to) in presses.SelectMany(spans => spans))
        {
            steps[from] = steps.GetValueOrDefault(from) + 1;
            steps[to] = steps.GetValueOrDefault(to) - 1;
        }

        int running = 0;
        return [.. steps.Select(step => (step.Key, (double)Math.Min(running += step.Value, most)))];
    }
}
