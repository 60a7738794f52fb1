using System.Text;
using FeltNest.Files.Csv;
using FeltNest.Files.Orders;
using FeltNest.Rolls.Orders;
using Xunit;

namespace FeltNest.Tests.Files.Lists;

/// <summary>Lists as spreadsheets write them out: other separators, other letters, other names, all their faults.</summary>
public sealed class ListTextTests : IDisposable
{
    private const string Head = "order,ball,thousandBalls,due\n";

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("order,ball,thousandBalls,due\nK1,T2,2.4,2026-03-31\n")]
    [InlineData("order;ball;thousandBalls;due\r\nK1;T2;2,4;2026-03-31\r\n")]
    [InlineData("order\tball\tthousandBalls\tdue\nK1\tT2\t2,4\t2026-03-31\n")]
    [InlineData("order|ball|thousandBalls|due\nK1|T2|2.4|2026-03-31\n")]
    [InlineData("sep=;\norder;ball;thousandBalls;due\nK1;T2;2.4;2026-03-31\n")]
    [InlineData("\"sep=\t\"\nORDER\tBall\tThousand balls\tDue\nK1\tT2\t2.4\t2026-03-31 00:00:00\n")]
    [InlineData("\norder,ball,thousand_balls,due\rK1,T2,2.4,2026-03-31T00:00\r")]
    [InlineData("Order,ball,Thousand (balls),due,,\nK1,T2,2.4,2026-03-31,,\n")]
    public void One_order_is_the_same_however_the_sheet_wrote_it(string text)
    {
        foreach (Encoding letters in (Encoding[])[Encoding.UTF8, Encoding.Unicode, Encoding.BigEndianUnicode, new UTF8Encoding(false)])
        {
            CoverOrder order = Assert.Single(Read([.. letters.GetPreamble(), .. letters.GetBytes(text)], new ListReading()));
            Assert.Equal(("K1", "T2", 2400, new DateOnly(2026, 3, 31)), (order.Name, order.Ball, order.Balls, order.Due));
        }
    }

    // RFC 4180, section 2: fields with line breaks stand in quotes.
    [Theory]
    [InlineData("K1,\"T2\n\",2.4,2026-03-31\nK2,T2,1,2026-03-31\n", "K1")]
    [InlineData("\"K1\r\nblue\",T2,2.4,2026-03-31\r\nK2,T2,1,2026-03-31\r\n", "K1 blue")]
    [InlineData("\"K1\n\n\"\"blue\"\"\",T2,2.4,2026-03-31\nK2,T2,1,2026-03-31\n", "K1  \"blue\"")]
    public void A_line_break_inside_quotes_is_a_blank(string lines, string name)
    {
        IReadOnlyList<CoverOrder> orders = Read(Encoding.UTF8.GetBytes(Head + lines), new ListReading());

        Assert.Equal([(name, "T2", 2400), ("K2", "T2", 1000)], orders.Select(o => (o.Name, o.Ball, o.Balls)));
    }

    [Fact]
    public void A_name_of_a_column_may_be_broken_over_lines() => Assert.Equal(2400, Assert.Single(
        Read(Encoding.UTF8.GetBytes("order,ball,\"thousand\nballs\",due\nK1,T2,2.4,2026-03-31\n"), new ListReading())).Balls);

    // A quote without its partner spoils its own line; the faults of the others are told too, by their numbers in the file.
    [Theory]
    [InlineData(3)]
    [InlineData(30)]
    public void A_quote_that_nobody_closed_does_not_swallow_the_list(int behind)
    {
        string lines = string.Concat(Enumerable.Range(1, behind).Select(i => $"K{i},T2,2.4,2026-03-31\n"));
        InputException fault =
            Refused(Encoding.UTF8.GetBytes($"{Head}\"K,T2,2.4,2026-03-31\n{lines}L,T2,x,2026-03-31\n"), new ListReading());

        Assert.Contains("line 2: ", fault.Message, StringComparison.Ordinal);
        Assert.Contains("an opening quote without a closing one", fault.Message, StringComparison.Ordinal);
        Assert.Equal($"line {behind + 3}, thousandBalls", Assert.Single(fault.Further).Field);
    }

    [Fact]
    public void A_line_over_more_breaks_than_anybody_writes_is_refused()
    {
        string Lines(int breaks) => $"{Head}\"K1{new string('\n', breaks)}\",T2,2.4,2026-03-31\n";

        Assert.Single(Read(Encoding.UTF8.GetBytes(Lines(20)), new ListReading()));
        Assert.Contains(
            "without a closing one in the 20 lines behind it", Refused(Encoding.UTF8.GetBytes(Lines(21)), new ListReading()).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_bar_in_a_name_does_not_part_a_list_with_commas() =>
        Assert.Equal("K|1|2|3|4", Assert.Single(Read(Head + "K|1|2|3|4,T2,1,2026-03-31\n", new ListReading())).Name);

    [Fact]
    public void Letters_of_the_west_are_read_with_a_note_and_refused_where_nobody_hears_it()
    {
        ListReading reading = new();
        byte[] western = Encoding.Latin1.GetBytes(Head + "M\u00FCller 1,T2,1,2026-03-31\n");

        Assert.Equal("M\u00FCller 1", Assert.Single(Read(western, reading)).Name);
        Assert.Contains("Windows-1252", Assert.Single(reading.Notes), StringComparison.Ordinal);
        Assert.Contains("is not UTF-8 text", Refused(western, null).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("looks like UTF-16 text without its mark", false)]
    [InlineData("is UTF-32 text", true)]
    public void Wide_letters_that_no_mark_tells_are_refused(string told, bool widest)
    {
        byte[] bytes = widest
            ? [.. Encoding.UTF32.GetPreamble(), .. Encoding.UTF32.GetBytes(Head)]
            : Encoding.Unicode.GetBytes(Head + "K1,T2,1,2026-03-31\n");
        Assert.Contains(told, Refused(bytes, new ListReading()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Columns_of_others_are_passed_over_with_one_note_that_names_them()
    {
        ListReading reading = new();
        string list = "order,customer,ball,thousandBalls,due,note\nK1,C1,T2,1,2026-03-31,at once\n";

        Assert.Equal("K1", Assert.Single(Read(list, reading)).Name);
        Assert.EndsWith(
            "passed over, as the list has no such column: customer, note", Assert.Single(reading.Notes), StringComparison.Ordinal);
        Assert.Contains("'customer' is not known", Refused(list, null).Message, StringComparison.Ordinal);
    }

    // A slip must not lose a column: what it holds would be taken at its usual value.
    [Theory]
    [InlineData("reservBalls", "reserveBalls")]
    [InlineData("reserve", "reserveBalls")]
    [InlineData("lot no.", "lot")]
    [InlineData("prioritty", "priority")]
    public void A_slip_of_a_name_is_asked_about(string written, string meant)
    {
        InputException fault = Refused($"order,ball,thousandBalls,due,{written}\nK1,T2,1,2026-03-31,3\n", new ListReading());
        Assert.Contains($"line 1: the column '{written}' is not known; did you mean '{meant}'?", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_in_two_writings_stands_there_twice() => Assert.Contains(
        "the column 'Due' stands there twice",
        Refused("order,ball,thousandBalls,due,Due\nK1,T2,1,2026-03-31,2026-04-01\n", new ListReading()).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("02.03.2026", "dmy", 2)]
    [InlineData("3/2/2026", "mdy", 2)]
    [InlineData("3-2-2026 0:00", "mdy", 2)]
    [InlineData("3.3.2026 00:00:00", "dmy", 3)]
    public void A_turned_day_is_read_in_the_order_that_was_said(string written, string order, int day) => Assert.Equal(
        new DateOnly(2026, 3, day),
        Assert.Single(Read($"{Head}K1,T2,1,{written}\n", Ordered(order))).Due);

    [Theory]
    [InlineData("02.03.2026", null)]
    [InlineData("31.03.2026", null)]
    [InlineData("31.03.2026", "mdy")]
    public void A_turned_day_is_never_guessed(string written, string? order)
    {
        InputException fault = Refused($"{Head}K1,T2,1,{written}\n", Ordered(order));
        Assert.Equal(("line 2, due", AskedFor.ListDays), (fault.Field, fault.Mend));
    }

    [Theory]
    [InlineData("2026-03-31 06:00")]
    [InlineData("31.3.26")]
    public void A_day_with_a_time_or_a_short_year_is_refused(string written) => Assert.Contains(
        "is not a day", Refused($"{Head}K1,T2,1,{written}\n", new ListReading { Days = DayOrder.Dmy }).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("YES", true)]
    [InlineData("y", true)]
    [InlineData("1", true)]
    [InlineData("True", true)]
    [InlineData("No", false)]
    [InlineData("0", false)]
    [InlineData("FALSE", false)]
    public void Yes_and_no_come_in_any_letters_and_as_figures(string word, bool there)
    {
        string list = "roll,felt,lot,widthMm,lengthM,price,priceUnit,currency,available\n"
            + $"R1,w,L,1500,50,18,M,EUR,{word}\nR2,w,L,1500,50,18,m,EUR,yes\n";
        IReadOnlyList<StockEntry> rolls = new StockReader(FeltNest.Cost.Sheet.CostInputs.Bare("EUR"))
            .Entries(new ListReading().Open(folder.Write("stock.csv", list)));
        Assert.Equal([there, true], rolls.Select(roll => roll.Available));
    }

    [Fact]
    public void All_faults_of_a_list_are_told_by_line_and_column()
    {
        InputException fault = Refused(
            Head + "K1,T2,x,2026-02-30\n\"K2\"z,T2,1,2026-03-31\nK3,T3,1,2026-03-31\nK4,T2,1\nK5,T2,1,2026-03-31\nK5,T2,0,\n",
            new ListReading());

        Assert.Equal(
            [
                "line 2, thousandBalls", "line 2, due", "line 3", "line 4, ball", "line 5", "line 7, thousandBalls", "line 7, due",
            ], [fault.Field!, .. fault.Further.Select(further => further.Field!)]);
    }

    [Fact]
    public void Faults_are_told_up_to_a_page_and_the_rest_counted()
    {
        InputException fault = Refused(
            Head + string.Concat(Enumerable.Range(1, 57).Select(i => $"K{i},T2,1,no day\n")), new ListReading());

        Assert.Equal(40, fault.Further.Count);
        Assert.Equal("and 17 more faults", fault.Further[^1].Problem);
    }

    // Forty stand on a page: one more is counted, not told.
    [Theory]
    [InlineData(40, 39, "line 41, due")]
    [InlineData(41, 40, null)]
    public void A_page_holds_forty_faults(int lines, int behind, string? last)
    {
        InputException fault = Refused(
            Head + string.Concat(Enumerable.Range(1, lines).Select(i => $"K{i},T2,1,no day\n")), new ListReading());

        Assert.Equal((behind, last), (fault.Further.Count, fault.Further[^1].Field));
    }

    [Fact]
    public void One_list_has_one_decimal_mark() => Assert.Contains(
        "line 3, thousandBalls: '1.500' has a decimal '.' where line 2 has a decimal ',': use one of them",
        Refused("order;ball;thousandBalls;due\nK1;T2;2,4;2026-03-31\nK2;T2;1.500;2026-03-31\n", new ListReading()).Message,
        StringComparison.Ordinal);

    [Fact]
    public void A_line_with_a_value_too_many_is_refused() => Assert.Contains(
        "line 2: has 5 values where the line of names has 4; are these decimal commas?",
        Refused(Head + "K1,T2,2,4,2026-03-31\n", new ListReading()).Message, StringComparison.Ordinal);

    [Fact]
    public void A_separator_of_two_letters_is_none() => Assert.Contains(
        "line 1: 'sep=;;' tells no separator",
        Refused("sep=;;\norder;ball;thousandBalls;due\nK1;T2;1;2026-03-31\n", new ListReading()).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("1999-12-31")]
    [InlineData("2200-01-01")]
    public void A_day_of_another_century_is_refused(string day) => Assert.Contains(
        $"'{day}' is not a day", Refused($"{Head}K1,T2,1,{day}\n", new ListReading()).Message, StringComparison.Ordinal);

    [Fact]
    public void What_a_formula_left_when_it_failed_is_no_name() => Assert.Contains(
        "line 2, order: '#REF!' is an error of the sheet", Refused(Head + "#REF!,T2,1,2026-03-31\n", new ListReading()).Message,
        StringComparison.Ordinal);

    private static ListReading Ordered(string? order) => new() { Days = order is null ? null : EnumWord.Find<DayOrder>(order) };

    private IReadOnlyList<CoverOrder> Read(string list, ListReading? reading) => Read(Encoding.UTF8.GetBytes(list), reading);

    private IReadOnlyList<CoverOrder> Read(byte[] list, ListReading? reading)
    {
        string path = folder.Path("orders.csv");
        File.WriteAllBytes(path, list);
        return OrdersReader.Read(reading?.Open(path) ?? FeltNest.Files.InputText.OfFile(path), ["T2"], []);
    }

    private InputException Refused(string list, ListReading? reading) => Refused(Encoding.UTF8.GetBytes(list), reading);

    private InputException Refused(byte[] list, ListReading? reading) => Assert.Throws<InputException>(() => Read(list, reading));
}
