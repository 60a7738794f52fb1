namespace FeltNest.Rolls.Orders.Clock;

/// <summary>The open hours of one press from 00:00 of the first day of cutting on: how many lie between two moments, and when so many have
/// run. A moment is a number of hours since then.</summary>
internal sealed class OpenHours
{
    /// <summary>Last moment that is planned for: eleven years.</summary>
    public const double MostHours = 100_000;

    // Hours this near are one moment: rounding.
    private const double Slack = 1e-9;

    private readonly OpenSpan[] spans;
    private readonly double[] before;
    private readonly decimal[] paid;
    private readonly int[] firstOfDay;
    private readonly IReadOnlyList<OvertimeSpan> overtime;

    /// <summary>The hours of a calendar.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="start">First day of cutting.</param>
    /// <param name="used">Whether an overtime, by its place, is worked; null for all.</param>
    public OpenHours(PressCalendar calendar, DateOnly start, Func<int, bool>? used = null)
    {
        overtime = calendar.Overtime;
        spans = [.. OpenSpans.Of(calendar, start, used ?? (_ => true))];
        before = new double[spans.Length + 1];
        paid = new decimal[spans.Length + 1];
        for (int i = 0; i < spans.Length; i++)
        {
            double length = spans[i].EndHour - spans[i].StartHour;
            before[i + 1] = before[i] + length;
            paid[i + 1] = paid[i] + ((decimal)length * PriceOf(spans[i]));
        }

        firstOfDay = new int[(int)(MostHours / 24) + 2];
        int next = 0;
        for (int day = 0; day < firstOfDay.Length; day++)
        {
            while (next < spans.Length && spans[next].EndHour <= 24.0 * day)
            {
                next++;
            }

            firstOfDay[day] = next;
        }

        HasOvertime = spans.Any(span => span.Overtime >= 0);
    }

    /// <summary>Its spans in order of time.</summary>
    public IReadOnlyList<OpenSpan> Spans => spans;

    /// <summary>Whether any of them is overtime.</summary>
    public bool HasOvertime { get; }

    /// <summary>Open hours from the first moment to a moment.</summary>
    public double Until(double moment)
    {
        int i = SpanAt(moment);
        return i == spans.Length ? before[i] : before[i] + Math.Max(0, moment - spans[i].StartHour);
    }

    /// <summary>Open hours between two moments.</summary>
    public double Between(double from, double to) => Until(to) - Until(from);

    /// <summary>The moment itself where the press is open from it on, else the next one at which it opens; infinite where none
    /// comes.</summary>
    public double NextOpen(double moment)
    {
        int i = SpanAt(moment);
        return i == spans.Length ? double.PositiveInfinity : Math.Max(moment, spans[i].StartHour);
    }

    /// <summary>The moment at which so many open hours have run since a moment; infinite where they never do.</summary>
    public double After(double moment, double hours)
    {
        int i = SpanAt(moment);
        double from = moment;
        for (double left = hours; i < spans.Length; i++)
        {
            from = Math.Max(from, spans[i].StartHour);
            double room = spans[i].EndHour - from;
            if (left <= room + Slack)
            {
                return from + Math.Min(left, room);
            }

            left -= room;
        }

        return double.PositiveInfinity;
    }

    /// <summary>The latest moment from which so many open hours lie before a moment.</summary>
    public double Back(double moment, double hours)
    {
        int i = Math.Min(SpanAt(moment), spans.Length - 1);
        double to = moment;
        for (double left = hours; i >= 0; i--)
        {
            to = Math.Min(to, spans[i].EndHour);
            double room = Math.Max(0, to - spans[i].StartHour);
            if (left <= room + Slack)
            {
                return to - Math.Min(left, room);
            }

            left -= room;
        }

        return 0;
    }

    /// <summary>What the overtime between two moments costs.</summary>
    public decimal Price(double from, double to) => HasOvertime ? PaidUntil(to) - PaidUntil(from) : 0;

    /// <summary>Hours of each overtime between two moments, by its place in the calendar.</summary>
    public IEnumerable<(int Overtime, double Hours)> OvertimeIn(double from, double to)
    {
        for (int i = HasOvertime ? SpanAt(from) : spans.Length; i < spans.Length && spans[i].StartHour < to; i++)
        {
            double hours = Math.Min(to, spans[i].EndHour) - Math.Max(from, spans[i].StartHour);
            if (spans[i].Overtime >= 0 && hours > Slack)
            {
                yield return (spans[i].Overtime, hours);
            }
        }
    }

    // The span that holds a moment, or the next one; a moment at its end belongs to the next.
    private int SpanAt(double moment)
    {
        int day = (int)Math.Clamp(moment / 24, 0, firstOfDay.Length - 1);
        int i = firstOfDay[day];
        while (i < spans.Length && spans[i].EndHour <= moment + Slack)
        {
            i++;
        }

        return i;
    }

    private decimal PaidUntil(double moment)
    {
        int i = SpanAt(moment);
        return i == spans.Length ? paid[i] : paid[i] + ((decimal)Math.Max(0, moment - spans[i].StartHour) * PriceOf(spans[i]));
    }

    private decimal PriceOf(OpenSpan span) => span.Overtime >= 0 ? overtime[span.Overtime].PricePerHour : 0;
}
