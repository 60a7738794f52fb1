using System.IO.Compression;
using System.Text;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Costs;
using FeltNest.Files.Csv;
using FeltNest.Files.Orders;
using FeltNest.Rolls.Orders;
using Xunit;
using static FeltNest.Tests.Files.Lists.SampleWorkbook;

namespace FeltNest.Tests.Files.Lists;

/// <summary>Lists in sheets of workbooks.</summary>
public sealed class WorkbookListTests : IDisposable
{
    private static readonly string[] Head = [Text("Order"), Text("ball"), Text("Thousand balls"), Text("due")];

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    // shapes/demo/lists.xlsx was written by LibreOffice Calc 7 from the two lists beside it: its days are days of the sheet, shown
    // 31.03.2026, its numbers are numbers.
    [Fact]
    public void A_workbook_of_a_spreadsheet_program_gives_the_orders_and_rolls_of_the_lists_it_was_made_from()
    {
        string book = Demo("lists.xlsx");
        ListReading reading = new() { Sheets = new Dictionary<string, string> { ["stock"] = "Stock", [string.Empty] = "Orders" } };
        CostInputs costs = CostsReader.Read(Demo("costs.json"));
        string[] felts = ["woven, raised and milled", "woven A (invented)"];
        string[] balls = ["type 2", "type 2 woven"];

        Assert.Equal(
            OrdersReader.Read(Demo("orders.csv"), balls, felts), OrdersReader.Read(reading.Open(book), balls, felts));
        Assert.Equal(
            new StockReader(costs).Read(Demo("stock.csv")).Select(Told), new StockReader(costs).Read(reading.Open(book)).Select(Told));
        Assert.Contains("Remark", Assert.Single(reading.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Days_numbers_and_names_kept_as_numbers_come_by_their_types()
    {
        // 46112 is 31 March 2026: 46023 is 1 January 2026, as 43831 is 1 January 2020 (ECMA-376 part 1, 18.17.4.1: 1900 date system).
        CoverOrder order = Assert.Single(Read(Of(("s", [Head, [Number("17", 4), Text("T2"), Number("2.4"), Number("46112", 1)]]))));
        Assert.Equal(("0017", 2400, new DateOnly(2026, 3, 31)), (order.Name, order.Balls, order.Due));
    }

    [Fact]
    public void A_number_with_many_digits_is_the_number_that_the_sheet_shows() => Assert.Equal(
        300, Assert.Single(Read(Of(("s", [Head, [Text("K"), Text("T2"), Number("0.30000000000000004"), Text("2026-03-31")]])))).Balls);

    [Theory]
    [InlineData("line 2, thousandBalls: '1.5%' is not a number")]
    [InlineData("line 3, thousandBalls: '#DIV/0!' is an error of the sheet")]
    [InlineData("line 3, order: '#NO VALUE' is an error of the sheet")]
    [InlineData("line 3, due: '2026-03-31T12:00' is not a day")]
    [InlineData("line 4, due: '06:00' is not a day")]
    public void Faults_of_cells_are_told_by_row_and_column(string told)
    {
        InputException fault = Refused(Of(("s",
            [
                Head, [Text("K1"), Text("T2"), Number("0.015", 3), Number("46112", 1)],
                [SampleWorkbook.Formula("1+1"), Text("T2"), Error("#DIV/0!"), Number("46112.5", 2)],

                // A quarter of a day: a time alone, with no day.
                [Text("K3"), Text("T2"), Number("1"), Number("0.25", 2)],
            ])));
        Assert.Contains(told, string.Join("\n", fault.Further.Select(one => one.Message).Prepend(fault.Message)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_sheet_is_read_and_the_others_are_named()
    {
        ListReading reading = new();
        Assert.Equal("K1", Assert.Single(Read(Two, reading)).Name);
        Assert.EndsWith("the sheet 'new' is read, of 'new', 'old'", Assert.Single(reading.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void The_sheet_that_was_asked_for_is_read()
    {
        Assert.Equal("K0", Assert.Single(Read(Two, Sheeted("orders", "old"))).Name);
        InputException fault = Assert.Throws<InputException>(() => Read(Two, Sheeted(string.Empty, "none")));
        Assert.Contains("has no sheet 'none': it has 'new', 'old'", fault.Message, StringComparison.Ordinal);
        Assert.Equal(AskedFor.ListSheet, fault.Mend);
    }

    [Fact]
    public void A_workbook_that_unpacks_to_far_more_than_it_is_is_told_in_one_line()
    {
        // 200 MB of blanks pack to some 200 kB.
        byte[] book = SampleWorkbook.Packed(
        [
            ("xl/workbook.xml", Encoding.UTF8.GetBytes("<workbook/>")), ("xl/worksheets/sheet1.xml", new byte[200 * 1024 * 1024]),
        ]);
        Assert.True(book.Length < 1024 * 1024);
        Assert.Contains("unpacks to more than 64 MB", Refused(book).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("old workbook", "D0CF11E0A1B11AE1")]
    [InlineData("is no sound workbook", "504B0304FFFFFFFF")]
    [InlineData("is no sound workbook", "3C68746D6C3E")]
    public void What_is_no_workbook_is_told_in_one_line(string told, string bytes)
    {
        InputException fault = Refused(Convert.FromHexString(bytes));
        Assert.Contains(told, fault.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', fault.Message);
    }

    [Fact]
    public void Another_package_is_told_in_one_line() => Assert.Contains(
        "is packed like a workbook and holds none", Refused(SampleWorkbook.Packed([("content.xml", "<a/>"u8.ToArray())])).Message,
        StringComparison.Ordinal);

    // Entities of a document type that name others could grow without end.
    [Fact]
    public void A_sheet_with_a_document_type_is_refused()
    {
        byte[] sound = Of(("s", [Head, [Text("K1"), Text("T2"), Number("1"), Number("46112", 1)]]));
        List<(string Name, byte[] Content)> parts = [];
        using (ZipArchive package = new(new MemoryStream(sound)))
        {
            foreach (ZipArchiveEntry part in package.Entries)
            {
                using StreamReader text = new(part.Open());
                string kind = part.Name.StartsWith("sheet", StringComparison.Ordinal) ? "<!DOCTYPE a [<!ENTITY b \"K9\">]>" : string.Empty;
                parts.Add((part.FullName, Encoding.UTF8.GetBytes(kind + text.ReadToEnd())));
            }
        }

        Assert.Contains("is no sound workbook", Refused(SampleWorkbook.Packed(parts)).Message, StringComparison.Ordinal);
    }

    private static byte[] Two => Of(
        ("new", [Head, [Text("K1"), Text("T2"), Number("1"), Number("46112", 1)]]),
        ("old", [Head, [Text("K0"), Text("T2"), Number("1"), Number("46112", 1)]]));

    private static ListReading Sheeted(string list, string sheet) => new() { Sheets = new Dictionary<string, string> { [list] = sheet } };

    private static string Demo(string name) => RepositoryFile.PathOf("shapes", "demo", name);

    // Measured rolls are objects of their own each time.
    private static (string, string, double, double, decimal, DateOnly?) Told(StockRoll roll) =>
        (roll.Name, roll.Lot, roll.WidthMm, roll.LengthM, roll.PricePerMetre, roll.Received);

    private IReadOnlyList<CoverOrder> Read(byte[] book, ListReading? reading = null)
    {
        string path = folder.Path("orders.xlsx");
        File.WriteAllBytes(path, book);
        return OrdersReader.Read((reading ?? new ListReading()).Open(path), ["T2"], []);
    }

    private InputException Refused(byte[] book) => Assert.Throws<InputException>(() => Read(book));
}
