using System.Text;
using FeltNest.Files;
using FeltNest.Files.Presses;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders.Clock;
using FeltNest.Tests.Rolls.Orders;
using Xunit;

namespace FeltNest.Tests.Files.Presses;

public sealed class CalendarReaderTests
{
    private const string Head = "press,kind,day,from,to,pricePerHour\n";

    private static readonly PressSpec[] Presses =
        [OrderCases.Press("P1", 1, 0, null), OrderCases.Press("P2", 1, 0, null) with { Calendar = new PressCalendar { Shifts = [] } }];

    [Fact]
    public void Lines_of_a_press_come_before_lines_of_all_and_these_before_its_file()
    {
        IReadOnlyList<PressSpec> read =
            Read("P1,shift,saturday,22:00,06:00,\n,shift,every-day,00:00,24:00,\n,closed,,2026-12-24,2026-12-26,\n");

        Assert.Equal(
            [new WeekShift { Day = DayOfWeek.Saturday, FromHour = 22, ToHour = 30 }], read[0].Calendar!.Shifts);
        Assert.Equal(7, read[1].Calendar!.Shifts.Count);
        Assert.Equal(new DateTime(2026, 12, 27), Assert.Single(read[0].Calendar!.Closed).To);
        Assert.Single(read[1].Calendar!.Closed);
    }

    [Fact]
    public void A_press_of_which_no_line_speaks_keeps_its_usual_days()
    {
        PressCalendar calendar = Read("P2,shift,monday,06:00,14:00,\nP1,overtime,,2026-03-07T06:00,2026-03-07 12:30,45.5\n")[0].Calendar!;

        Assert.Equal(5, calendar.Shifts.Count);
        OvertimeSpan overtime = Assert.Single(calendar.Overtime);
        Assert.Equal((6.5, 45.5m), ((overtime.To - overtime.From).TotalHours, overtime.PricePerHour));
    }

    [Theory]
    [InlineData("P3,shift,monday,06:00,14:00,", "press", "'P3' is no press of this plan: there are P1, P2")]
    [InlineData(",shift,,06:00,14:00,", "day", "is blank")]
    [InlineData(",shift,monday,24:00,14:00,", "from", "'24:00' is not allowed")]
    [InlineData(",shift,monday,6,14:00,", "from", "write a time of day as 06:00")]
    [InlineData(",shift,monday,06:00,14:75,", "to", "'14:75' is not allowed")]
    [InlineData(",shift,monday,06:00,,", "to", "is blank")]
    [InlineData(",closed,,2026-12-24T12:00,,", "to", "needs its end")]
    [InlineData(",closed,,24.12.2026,,", "from", "write a day as 2026-03-31")]
    [InlineData(",closed,,2026-12-24,2026-12-23,", "to", "is not after")]
    [InlineData(",overtime,,2026-03-07T06:00,2026-03-07T12:00,", "pricePerHour", "is blank")]
    [InlineData(",overtime,,2026-03-07T06:00,2026-03-07T12:00,5\n,overtime,,2026-03-07T11:00,2026-03-07T13:00,5", "from", "overlap")]
    [InlineData(",night,monday,06:00,14:00,", "kind", "'night'")]
    public void A_line_that_cannot_be_used_is_refused_with_what_is_allowed(string lines, string column, string words)
    {
        InputException error = Assert.Throws<InputException>(() => Read(lines + "\n"));

        Assert.EndsWith(", " + column, error.Field, StringComparison.Ordinal);
        Assert.Contains(words, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_press_file_says_its_calendar_its_roll_change_and_the_die_that_stands_on_it()
    {
        PressSpec press = Press(
            """
            "rollChangeMinutes": 8, "mountedDie": "T2",
            "calendar": {
              "shifts": [ { "day": "monday-friday", "from": "06:00", "to": "14:00" } ], "closed": [ { "from": "2026-12-24" } ],
              "overtime": [ { "from": "2026-03-07T06:00", "to": "2026-03-07T12:00", "pricePerHour": 45 } ] }
            """);

        Assert.Equal((8.0, "T2"), (press.RollChangeMinutes, press.MountedDie));
        Assert.Equal((5, 1, 45m), (press.Calendar!.Shifts.Count, press.Calendar.Closed.Count, press.Calendar.Overtime[0].PricePerHour));
    }

    [Fact]
    public void A_time_of_a_press_file_that_is_none_is_refused_by_its_path()
    {
        InputException error = Assert.Throws<InputException>(() =>
            Press("""  "calendar": { "shifts": [ { "day": "monday", "from": "six", "to": "14:00" } ] } """));

        Assert.Equal("calendar.shifts[0].from", error.Field);
    }

    private static IReadOnlyList<PressSpec> Read(string lines) =>
        CalendarListReader.Read(InputText.Of("calendar.csv", Encoding.UTF8.GetBytes(Head + lines)), Presses, 8);

    private static PressSpec Press(string more) => PressReader.Read(InputText.Of("press.json", Encoding.UTF8.GetBytes(
        """
        { "schema": "feltnest/press/1", "name": "P", "ratedForceKn": 100, "bed": { "lengthMm": 500, "widthMm": 500, "marginMm": 0 },
          "strokesPerMinute": 10, "changeOverMinutes": 20, "feedToleranceMm": 0.5, "guideToleranceMm": 0.5,
        """ + more + "}")));
}
