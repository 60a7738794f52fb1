using FeltNest.Rolls.Orders.Clock;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Check;

/// <summary>When a press is open, worked out from its calendar by cutting time at every moment at which anything begins or ends, and asking
/// of each piece of time whether the press runs in it. Overtime counts where the plan says that it is worked.</summary>
internal sealed class WallCalendar
{
    private readonly List<(double From, double To, OvertimeSpan? Overtime)> open = [];

    /// <summary>The open times of a press of a plan, until all its work is done.</summary>
    public WallCalendar(OrderPlan plan, PressSpec press)
    {
        OrderRules rules = plan.Question.Rules;
        PressCalendar calendar = press.Calendar ?? Usual(rules.HoursPerDay);
        OvertimeSpan[] worked = [.. plan.Overtime.Where(o => o.Press.Name == press.Name).Select(o => o.Span)];
        double last = plan.Cuts.Where(c => c.Press.Name == press.Name).Select(c => c.EndHour)
            .Concat(plan.Mountings.Where(m => m.Press.Name == press.Name).Select(m => m.EndHour))
            .DefaultIfEmpty(0).Max();
        DateTime first = rules.Start.ToDateTime(TimeOnly.MinValue);
        int days = (int)Math.Clamp(last / 24, 0, 5000) + 2;
        List<(double From, double To)> shifts = [];
        for (int day = -1; day < days; day++)
        {
            shifts.AddRange(
                calendar.Shifts.Where(shift => shift.Day == rules.Start.AddDays(day).DayOfWeek)
                    .Select(shift => ((24.0 * day) + shift.FromHour, (24.0 * day) + shift.ToHour)));
        }

        (double From, double To)[] closed = [.. calendar.Closed.Select(c => (Hours(c.From), Hours(c.To)))];
        (double From, double To, OvertimeSpan Span)[] more = [.. worked.Select(o => (Hours(o.From), Hours(o.To), o))];
        double[] cuts =
        [
            .. shifts.Concat(closed).Concat(more.Select(m => (m.From, m.To))).SelectMany(s => new[] { s.Item1, s.Item2 })
                .Append(0).Append(24.0 * days).Where(h => h >= 0 && h <= 24.0 * days).Distinct().Order(),
        ];
        for (int i = 0; i + 1 < cuts.Length; i++)
        {
            double middle = (cuts[i] + cuts[i + 1]) / 2;
            bool inShift = shifts.Exists(s => s.From < middle && middle < s.To) && !closed.Any(s => s.From < middle && middle < s.To);
            OvertimeSpan? overtime = inShift ? null : more.FirstOrDefault(m => m.From < middle && middle < m.To).Span;
            if (inShift || overtime is not null)
            {
                open.Add((cuts[i], cuts[i + 1], overtime));
            }
        }

        double Hours(DateTime moment) => (moment - first).Ticks / (double)TimeSpan.TicksPerHour;
    }

    /// <summary>Open hours between two moments.</summary>
    public double Work(double from, double to) => open.Sum(span => Math.Max(0, Math.Min(span.To, to) - Math.Max(span.From, from)));

    /// <summary>Hours of an overtime between two moments.</summary>
    public double Work(double from, double to, OvertimeSpan overtime) => open.Where(span => span.Overtime == overtime)
        .Sum(span => Math.Max(0, Math.Min(span.To, to) - Math.Max(span.From, from)));

    /// <summary>The moment from which so many open hours lie before a moment; 0 where there are fewer.</summary>
    public double Before(double moment, double hours)
    {
        for (int i = open.Count - 1; i >= 0 && hours > 0; i--)
        {
            double to = Math.Min(moment, open[i].To);
            double room = Math.Max(0, to - open[i].From);
            if (room >= hours - 1e-9)
            {
                return Math.Max(0, to - hours);
            }

            hours -= room;
        }

        return hours > 0 ? 0 : moment;
    }

    // Monday to Friday, from six in the morning or so that the day ends at midnight.
    private static PressCalendar Usual(double hours)
    {
        double begin = hours > 18 ? 24 - hours : 6;
        DayOfWeek[] days = [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday];
        return new PressCalendar
        {
            Shifts = [.. days.Select(day => new WeekShift { Day = day, FromHour = begin, ToHour = begin + hours })],
        };
    }
}
