namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Lays the shifts, closed times and overtime of a calendar out on the line of hours.</summary>
internal static class OpenSpans
{
    // Two moments this near are one: rounding of minutes.
    private const double Slack = 1e-9;

    /// <summary>The open spans in order of time, to the last moment that is planned for.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="start">First day of cutting.</param>
    /// <param name="used">Whether an overtime, by its place, is worked.</param>
    public static List<OpenSpan> Of(PressCalendar calendar, DateOnly start, Func<int, bool> used)
    {
        List<(double From, double To)> closed = [.. calendar.Closed.Select(span => (HourOf(span.From, start), HourOf(span.To, start)))];
        List<(double From, double To)> shifts = Less(Merged(Weeks(calendar, start)), Merged(closed));
        List<OpenSpan> open = [.. shifts.Select(span => new OpenSpan { StartHour = span.From, EndHour = span.To, Overtime = -1 })];
        List<(double From, double To)> taken = shifts;
        for (int i = 0; i < calendar.Overtime.Count; i++)
        {
            (double From, double To) span =
                (Math.Max(0, HourOf(calendar.Overtime[i].From, start)),
                    Math.Min(OpenHours.MostHours, HourOf(calendar.Overtime[i].To, start)));
            if (used(i) && span.To > span.From)
            {
                open.AddRange(Less([span], taken).Select(part => new OpenSpan { StartHour = part.From, EndHour = part.To, Overtime = i }));
                taken = Merged([.. taken, span]);
            }
        }

        return [.. open.OrderBy(span => span.StartHour)];
    }

    /// <summary>Hours from 00:00 of the first day to a moment.</summary>
    public static double HourOf(DateTime moment, DateOnly start) => (moment - start.ToDateTime(TimeOnly.MinValue)).TotalHours;

    // Every shift of every week; the week before the first counts for shifts that end on the next day.
    private static List<(double From, double To)> Weeks(PressCalendar calendar, DateOnly start)
    {
        List<(double From, double To)> all = [];
        foreach (WeekShift shift in calendar.Shifts)
        {
            int days = (((int)shift.Day - (int)start.DayOfWeek) % 7) - 7;
            for (double day = 24.0 * days; day < OpenHours.MostHours; day += 7 * 24)
            {
                double from = Math.Max(0, day + shift.FromHour);
                double to = Math.Min(OpenHours.MostHours, day + shift.ToHour);
                if (to > from + Slack)
                {
                    all.Add((from, to));
                }
            }
        }

        return all;
    }

    private static List<(double From, double To)> Merged(List<(double From, double To)> spans)
    {
        List<(double From, double To)> merged = [];
        foreach ((double from, double to) in spans.OrderBy(span => span.From))
        {
            if (merged.Count > 0 && from <= merged[^1].To + Slack)
            {
                merged[^1] = (merged[^1].From, Math.Max(merged[^1].To, to));
            }
            else
            {
                merged.Add((from, to));
            }
        }

        return merged;
    }

    // Both in order, neither overlapping itself.
    private static List<(double From, double To)> Less(List<(double From, double To)> spans, List<(double From, double To)> holes)
    {
        List<(double From, double To)> left = [];
        int first = 0;
        foreach ((double from, double to) in spans)
        {
            double at = from;
            while (first < holes.Count && holes[first].To <= from)
            {
                first++;
            }

            for (int i = first; i < holes.Count && holes[i].From < to; i++)
            {
                if (holes[i].From > at + Slack)
                {
                    left.Add((at, holes[i].From));
                }

                at = Math.Max(at, holes[i].To);
            }

            if (to > at + Slack)
            {
                left.Add((at, to));
            }
        }

        return left;
    }
}
