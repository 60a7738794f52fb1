using System.Text;
using System.Text.RegularExpressions;
using FeltNest.Drawing;
using FeltNest.Drawing.Writers;
using FeltNest.Geometry;
using FeltNest.Report;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Tests.Rolls.Orders;
using Xunit;

namespace FeltNest.Tests.Report;

public sealed class OrderPageTests
{
    private static OrderPlan Large { get; } = FirstFitPlanner.Run(OrderCases.Workshop(1, 100, 200));

    [Fact]
    public void The_page_of_a_hundred_orders_is_small_and_leads_to_the_ticket_of_every_piece()
    {
        byte[] page = OrderPage.Html(Large);
        string text = Encoding.UTF8.GetString(page);

        Assert.True(Large.Cuts.Count > 50);
        Assert.True(page.Length < 1_000_000, $"{page.Length} bytes");
        Assert.All(
            Large.Cuts, cut => Assert.Contains(
                $"<a href=\"tickets.html#t{cut.Number}\">{cut.Number}</a>", text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("EUR")]
    [InlineData("cost")]
    [InlineData("price")]
    [InlineData("gap")]
    public void The_page_for_the_presses_holds_no_money_and_no_bound(string word)
    {
        OrderPlan plan = Large with { Proof = Large.Proof with { CostBound = Large.Cost.Total, CutShort = true } };

        Assert.DoesNotContain(word, Encoding.UTF8.GetString(OrderPage.Html(plan)), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_die_that_is_to_be_made_stands_before_the_work()
    {
        CutDie made = OrderCases.Die("D9", "ball", 20, 200, 250, strikes: 0) with { MakePrice = 10, LifeStrikes = 100 };
        string text = Encoding.UTF8.GetString(OrderPage.Html(FirstFitPlanner.Run(One(made))));
        int first = text.IndexOf("Make this die first: <b>D9</b>", StringComparison.Ordinal);

        Assert.InRange(first, 1, text.IndexOf("<h2>Work", StringComparison.Ordinal));
    }

    [Fact]
    public void A_work_table_has_at_most_fifty_rows_and_is_of_one_press_and_one_day()
    {
        string text = Encoding.UTF8.GetString(OrderPage.Html(Large));
        string[] tables = [.. Regex.Matches(text, "<details.*?</details>", RegexOptions.Singleline).Select(m => m.Value)];

        Assert.Equal(Large.Cuts.Count, tables.Sum(Rows));
        Assert.All(tables, table => Assert.InRange(Rows(table), 1, 50));
        Assert.All(WorkDay.Of(Large), day => Assert.Single(day.Cuts.Select(c => c.Press.Name).Distinct()));
    }

    [Fact]
    public void The_tickets_stand_by_press_and_day_each_once_and_the_index_leads_to_them()
    {
        Dictionary<int, string> tickets = Large.Cuts.ToDictionary(c => c.Number, c => $"<svg class=\"ticket\" id=\"t{c.Number}\" />");
        string text = Encoding.UTF8.GetString(TicketsPage.Html(Large, string.Empty, string.Empty, tickets));

        foreach (OrderCut cut in Large.Cuts)
        {
            Assert.Single(Regex.Matches(text, $"<svg class=\"ticket\" id=\"t{cut.Number}\" "));
            Assert.Contains($"<a href=\"#t{cut.Number}\">{cut.Number} {cut.Order.Name}</a>", text, StringComparison.Ordinal);
        }

        Assert.All(WorkDay.Of(Large), day => Assert.Contains($"<section id=\"{day.Id}\">", text, StringComparison.Ordinal));
        Assert.DoesNotContain("<script", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_all_tickets_share_is_written_once_and_text_stays_text()
    {
        InlineSvg page = new([SheetOf("one"), SheetOf("two & more")]);
        string all = page.Shared + page.Of(0, "t1", "ticket") + page.Of(1, "t2", "ticket");

        Assert.Single(Regex.Matches(all, ">Cautions<"));
        Assert.Single(Regex.Matches(all, ">one<"));
        Assert.Single(Regex.Matches(all, ">two &amp; more<"));
        Assert.Equal(2, Regex.Count(all, "<use href=\"#same\"/>"));
    }

    [Fact]
    public void A_circle_is_two_arcs_of_its_radius()
    {
        InlineSvg page = new([SheetOf("one") with { Marks = [new PathMark([Chain.Circle(new Point2(10, 20), 5)], null, Colour.Of(0))] }]);

        // The height of the sheet is 297: y = 20 stands at 277 from above.
        Assert.Contains("d=\"M15 277A5 5 0 0 0 5 277A5 5 0 0 0 15 277Z\"", page.Of(0, "t1", "ticket"), StringComparison.Ordinal);
    }

    private static int Rows(string table) => Regex.Count(table, "<tr><td");

    private static Sheet SheetOf(string words) => new()
    {
        Title = "Ticket",
        Description = "A ticket.",
        WidthMm = 210,
        HeightMm = 297,
        Symbols = [],
        Marks = [Text("Cautions", 10), Text(words, 20)],
    };

    private static TextMark Text(string words, double y) =>
        new() { Text = words, At = new Point2(20, y), HeightMm = 3, Colour = Colour.Of(0) };

    private static OrderRequest One(CutDie die) => new()
    {
        Orders = [OrderCases.Order("O", "ball", 100)],
        Rolls = [OrderCases.Roll("R1", 9, 1)],
        Offers = [],
        Dies = [die],
        Presses = [OrderCases.FreePress],
        Rules = OrderCases.Bare,
    };
}
