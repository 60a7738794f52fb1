using CsCheck;
using FeltNest.Rolls.Orders.Clock;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders.Clock;

public sealed class OpenHoursTests
{
    [Fact]
    public void The_usual_day_begins_at_six_and_a_long_one_ends_at_midnight()
    {
        Assert.Equal((6.0, 14.0), Ends(PressCalendar.Usual(8).Shifts[0]));
        Assert.Equal((2.0, 24.0), Ends(PressCalendar.Usual(22).Shifts[0]));
        Assert.Equal(5, PressCalendar.Usual(8).Shifts.Count);
    }

    [Fact]
    public void Work_pauses_over_closed_time_and_goes_on_after_it()
    {
        OpenHours hours = new(PressCalendar.Usual(8), OrderCases.Monday);

        Assert.Equal(13, hours.After(6, 7), 9);
        Assert.Equal(24 + 7, hours.After(13, 2), 9);
        // Friday noon and ten hours more: two on Friday, eight on Monday.
        Assert.Equal((7 * 24) + 14, hours.After((4 * 24) + 12, 10), 9);
        Assert.Equal(6, hours.NextOpen(0), 9);
        Assert.Equal(24 + 6, hours.NextOpen(14), 9);
        Assert.Equal(40, hours.Between(0, 7 * 24), 9);
    }

    [Fact]
    public void A_shift_over_midnight_reaches_into_the_first_day()
    {
        PressCalendar nights = new()
        {
            Shifts =
            [
                new WeekShift { Day = DayOfWeek.Sunday, FromHour = 22, ToHour = 30 },
                new WeekShift { Day = DayOfWeek.Monday, FromHour = 22, ToHour = 30 },
            ],
        };
        OpenHours hours = new(nights, OrderCases.Monday);

        Assert.Equal(6, hours.Until(22), 9);
        Assert.Equal(26, hours.After(22, 4), 9);
    }

    [Fact]
    public void Holidays_and_repairs_are_closed_and_overtime_on_them_is_open_for_its_price()
    {
        DateTime tuesday = OrderCases.Monday.AddDays(1).ToDateTime(TimeOnly.MinValue);
        PressCalendar calendar = PressCalendar.Usual(8) with
        {
            Closed =
            [
                new ClosedSpan { From = tuesday, To = tuesday.AddDays(1) },
                new ClosedSpan { From = tuesday.AddHours(32), To = tuesday.AddHours(34) },
            ],
            Overtime = [new OvertimeSpan { From = tuesday.AddHours(8), To = tuesday.AddHours(12), PricePerHour = 30 }],
        };
        OpenHours all = new(calendar, OrderCases.Monday);
        OpenHours none = new(calendar, OrderCases.Monday, _ => false);

        Assert.Equal(8 + 4 + 6, all.Until(3 * 24), 9);
        Assert.Equal(8 + 6, none.Until(3 * 24), 9);
        Assert.Equal(60, all.Price(24 + 10, 48));
        Assert.Equal([(0, 2.0)], all.OvertimeIn(24 + 10, 48));
        Assert.Equal(0, none.Price(0, 200));
    }

    [Fact]
    public void Overtime_inside_an_open_shift_costs_nothing()
    {
        DateTime monday = OrderCases.Monday.ToDateTime(TimeOnly.MinValue);
        PressCalendar calendar = PressCalendar.Usual(8) with
        {
            Overtime = [new OvertimeSpan { From = monday.AddHours(12), To = monday.AddHours(16), PricePerHour = 10 }],
        };

        Assert.Equal(20, new OpenHours(calendar, OrderCases.Monday).Price(0, 24));
    }

    [Fact]
    public void A_press_without_shifts_never_opens() =>
        Assert.True(double.IsInfinity(new OpenHours(new PressCalendar { Shifts = [] }, OrderCases.Monday).After(0, 1)));

    [Fact]
    public void Going_forward_and_back_by_open_hours_agree_with_counting_minutes() =>
        Gen.Int[0, 100_000].Sample(
            seed =>
            {
                PressCalendar calendar = Any(new Random(seed));
                OpenHours hours = new(calendar, OrderCases.Monday);
                bool[] open = [.. Enumerable.Range(0, 14 * 24 * 4).Select(quarter => IsOpen(calendar, quarter * 15))];
                Random random = new(seed + 1);
                int from = random.Next(open.Length);
                int to = from + random.Next(open.Length - from);
                int work = open[from..to].Count(one => one);

                Assert.Equal(work / 4.0, hours.Between(from / 4.0, to / 4.0), 6);
                if (work > 0)
                {
                    int last = Enumerable.Range(from, to - from).Last(quarter => open[quarter]);
                    int first = Enumerable.Range(from, to - from).First(quarter => open[quarter]);
                    Assert.Equal((last + 1) / 4.0, hours.After(from / 4.0, work / 4.0), 6);
                    Assert.Equal(first / 4.0, hours.Back(to / 4.0, work / 4.0), 6);
                    Assert.Equal(first / 4.0, hours.NextOpen(from / 4.0), 6);
                }
            },
            iter: Runs.Count(200), threads: 1);

    private static (double From, double To) Ends(WeekShift shift) => (shift.FromHour, shift.ToHour);

    // Whether the press runs in the minutes from one on, asked of the calendar itself.
    private static bool IsOpen(PressCalendar calendar, int minute)
    {
        DateTime moment = OrderCases.Monday.ToDateTime(TimeOnly.MinValue).AddMinutes(minute);
        double hour = moment.TimeOfDay.TotalHours;
        bool shift = calendar.Shifts.Any(s =>
            (s.Day == moment.DayOfWeek && hour >= s.FromHour && hour < s.ToHour)
                || (s.Day == moment.AddDays(-1).DayOfWeek && hour + 24 >= s.FromHour && hour + 24 < s.ToHour));
        return (shift && !calendar.Closed.Any(c => moment >= c.From && moment < c.To))
            || calendar.Overtime.Any(o => moment >= o.From && moment < o.To);
    }

    private static PressCalendar Any(Random random)
    {
        DateTime monday = OrderCases.Monday.ToDateTime(TimeOnly.MinValue);
        DateTime Moment() => monday.AddMinutes(15 * random.Next(14 * 24 * 4));
        return new PressCalendar
        {
            Shifts = [.. Enumerable.Range(0, random.Next(9)).Select(_ =>
            {
                double from = random.Next(96) / 4.0;
                return new WeekShift { Day = (DayOfWeek)random.Next(7), FromHour = from, ToHour = from + ((1 + random.Next(80)) / 4.0) };
            })],
            Closed =
            [
                .. Enumerable.Range(0, random.Next(4))
                    .Select(_ => Moment())
                    .Select(m => new ClosedSpan { From = m, To = m.AddHours(random.Next(40) + 1) }),
            ],
            Overtime =
            [
                .. Enumerable.Range(0, random.Next(3))
                    .Select(_ => Moment())
                    .Select(m => new OvertimeSpan { From = m, To = m.AddHours(random.Next(20) + 1), PricePerHour = 5 }),
            ],
        };
    }
}
