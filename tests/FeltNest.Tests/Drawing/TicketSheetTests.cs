using FeltNest.Die;
using FeltNest.Drawing;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Drawing.Sheets.Rolls;
using FeltNest.Geometry;
using FeltNest.Layout.Limits;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;
using FeltNest.Tests.Rolls;
using FeltNest.Tests.Rolls.Orders;
using Xunit;

namespace FeltNest.Tests.Drawing;

/// <summary>The ticket of a cutting room on its A4 sheet.</summary>
public sealed class TicketSheetTests
{
    // The box goes from 20 to 200 mm across the sheet; words begin 2 mm inside it.
    [Fact]
    public void Every_caution_stays_inside_its_box() =>
        Assert.All(SafetyWords.Ticket, line => Assert.InRange(StrokeFont.Width(line, Ink.Note), 100, 176));

    [Fact]
    public void The_ticket_of_a_piece_says_its_order_days_lengths_and_what_lies_in_it()
    {
        IReadOnlyList<string> words = [.. SheetWords.Of(TicketSheet.Draw(Piece, Work)).Select(w => w.Text)];

        Assert.Contains("Cutting ticket 7", words);
        Assert.Contains("2026-03-06", words);
        Assert.Contains("2026-03-03 09:30", words);

        // 101 squares from 20 m on: 100 x 12 + 10 and the gap of 2 is 1.21 m; the roll ends at 50.
        Assert.Contains("1.21 m: 20.00 to 21.21 m", words);
        Assert.Contains("30.00 m, then 28.79 m", words);
        Assert.Contains("700 to 720 mm from the lower selvedge", words);
        Assert.Equal(["splice", "0.30", "20.30", "all", "clear 20"], Row(words, "splice"));
        Assert.Equal(["fault", "0.60", "20.60", "10", "8 x 8"], Row(words, "fault"));
    }

    [Fact]
    public void The_ticket_of_a_turned_roll_says_so()
    {
        TicketOrder turned = Work with { Cut = Work.Cut with { Roll = Work.Cut.Roll with { Turned = true } } };
        string Words(TicketOrder order) => string.Join("|", SheetWords.Of(TicketSheet.Draw(Piece, order)).Select(w => w.Text));

        Assert.Contains("TURN|END FOR END before cutting", Words(turned), StringComparison.Ordinal);
        Assert.DoesNotContain("TURN", Words(Work), StringComparison.Ordinal);
    }

    [Fact]
    public void A_fault_outside_the_piece_is_not_on_its_ticket()
    {
        RollPlan plan = Piece with { Request = Piece.Request with { Roll = Piece.Request.Roll with { Splices = [], Faults = [] } } };
        FeltRoll roll = plan.Request.Roll with { Faults = [RollFault.Disc(19_000, 10, 4)] };

        Assert.DoesNotContain(
            "19.00", SheetWords.Of(TicketSheet.Draw(plan with { Request = plan.Request with { Roll = roll } }, Work)).Select(w => w.Text));
    }

    // The fault takes one square of the strikes it touches: with discs of 4 about 20 600 that is one strike or two.
    [Fact]
    public void Strikes_that_lose_panels_are_named_with_the_cause()
    {
        RollPlan plan = StrikePlanner.Run(Piece.Request with { Layout = RollCases.TwoRows, Roll = WideRoll });
        PlannedStrike lossy = Assert.Single(plan.Strikes, s => s.Lost.Count > 0);
        IReadOnlyList<string> words = [.. SheetWords.Of(TicketSheet.Draw(plan)).Select(w => w.Text)];

        int at = words.ToList().LastIndexOf("fault");
        Assert.Equal(
            [FormattableString.Invariant($"{plan.Strikes.ToList().IndexOf(lossy) + 1}"), "1", "fault"],
            [words[at - 3], words[at - 1], words[at]]);
    }

    // The row about 10 mm of 32 loses a square at the fault, 0.606 m into a piece of which the strip is 180 mm; small things are drawn a
    // little larger than they are.
    [Fact]
    public void A_lost_panel_is_black_where_it_lies_in_the_piece()
    {
        RollPlan plan = StrikePlanner.Run(Piece.Request with { Layout = RollCases.TwoRows, Roll = WideRoll });
        GroupMark strip = Assert.IsType<GroupMark>(
            Assert.Single(TicketSheet.Draw(plan).Marks, mark => mark is GroupMark { Id: "piece" }));
        PathMark[] fills = [.. strip.Marks.OfType<PathMark>().Where(mark => mark is { Fill: not null, Pen: null })];
        (double minX, double minY, double maxX, double maxY) = Extent(fills[0]);
        (double lostMinX, double lostMinY, double lostMaxX, double lostMaxY) = Extent(Assert.Single(fills[1..]));
        double piece = plan.Strikes[^1].XMm + plan.Pattern.LengthMm - 20_000;

        Assert.Equal(606 / piece, ((lostMinX + lostMaxX) / 2 - minX) / (maxX - minX), 0.01);
        Assert.Equal(10 / 32.0, ((lostMinY + lostMaxY) / 2 - minY) / (maxY - minY), 0.001);
        Assert.InRange(fills[1].Fill!.Value.Red, 0, 40);
        Assert.InRange(fills[0].Fill!.Value.Red, 240, 255);
    }

    // More faults than the list holds: it says how many more, and every one is ringed in the strip.
    [Fact]
    public void Faults_beyond_the_list_are_counted_and_ringed()
    {
        FeltRoll roll = WideRoll with
        {
            LengthMm = 50_000,
            Faults = [.. Enumerable.Range(0, 60).Select(i => RollFault.Disc(20_100 + (140 * i), 10, 4))],
        };
        Sheet sheet = TicketSheet.Draw(StrikePlanner.Run(Piece.Request with { Layout = RollCases.TwoRows, Roll = roll }));
        GroupMark strip = Assert.IsType<GroupMark>(Assert.Single(sheet.Marks, mark => mark is GroupMark { Id: "piece" }));
        string[] words = [.. SheetWords.Of(sheet).Select(w => w.Text)];
        int listed = words.Count(w => w == "8 x 8");

        Assert.InRange(listed, 1, 59);
        Assert.Contains($"and {60 - listed} more faults", words);
        Assert.Equal(
            60, strip.Marks.OfType<PathMark>().Count(mark => mark is { Fill: null, Chains: [{ Closed: true, Vertices.Count: 2 }] }));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(200)]
    public void No_third_of_the_sheet_is_empty_and_nothing_leaves_it(int faults)
    {
        FeltRoll roll = WideRoll with
        {
            LengthMm = 50_000,
            Faults = [.. Enumerable.Range(0, faults).Select(i => RollFault.Disc(20_100 + (140 * i), 10, 4))],
        };
        RollPlan plan = StrikePlanner.Run(Piece.Request with { Layout = RollCases.TwoRows, Roll = roll });
        IReadOnlyList<TextMark> words = SheetWords.Of(TicketSheet.Draw(plan));
        double[] heights = [10, .. words.Select(w => w.At.Y).Order(), 287];

        Assert.InRange(heights.Zip(heights.Skip(1), (low, high) => high - low).Max(), 0, 75);
        Assert.All(words, w => Assert.InRange(w.At.Y, 10, 284));
        Assert.All(words, w => Assert.InRange(Begin(w), 19, 200));
        Assert.All(words, w => Assert.InRange(Begin(w) + StrokeFont.Width(w.Text, w.HeightMm), 19, 201));
    }

    // Five lines of forty boxes at the most: 81 strikes have a box each, 2000 share theirs by tens.
    [Theory]
    [InlineData(81, 81)]
    [InlineData(2000, 200)]
    public void Every_strike_has_a_box_to_tick_or_its_share_of_one(int strikes, int boxes)
    {
        RollPlan plan = StrikePlanner.Run(new RollRequest
        {
            Layout = RollCases.Squares,
            Roll = RollCases.Roll(12 * strikes, 20),
            RepeatsPerStrike = 1,
            GuidePlayMm = 0,
            FromMm = 0,
        });
        Assert.Equal(strikes, plan.Strikes.Count);

        Mark[] drawn = [.. new TicketBoxes(plan, 60).Draw(100)];
        Assert.Equal(boxes, drawn.OfType<PathMark>().Count());
        Assert.Equal($"{strikes}", drawn.OfType<TextMark>().Last().Text);
    }

    private static (double MinX, double MinY, double MaxX, double MaxY) Extent(PathMark mark)
    {
        IReadOnlyList<ArcVertex> corners = Assert.Single(mark.Chains).Vertices;
        return (corners.Min(v => v.X), corners.Min(v => v.Y), corners.Max(v => v.X), corners.Max(v => v.Y));
    }

    private static double Begin(TextMark words) => words.At.X - (StrokeFont.Width(words.Text, words.HeightMm) * words.Anchor switch
    {
        TextAnchor.Start => 0,
        TextAnchor.Middle => 0.5,
        _ => 1,
    });

    private static string[] Row(IReadOnlyList<string> words, string name)
    {
        int at = words.ToList().IndexOf(name);
        return [.. words.Skip(at).Take(5)];
    }

    private static FeltRoll WideRoll { get; } = RollCases.Roll(22_000, 32, RollFault.Disc(20_606, 10, 4));

    private static RollPlan Piece { get; } = StrikePlanner.Run(new RollRequest
    {
        Layout = RollCases.Squares with
        {
            Rules = RollCases.Squares.Rules with { Forbidden = [new ForbiddenStrip { YFromMm = 700, YToMm = 720 }] },
        },
        Roll = RollCases.Roll(21_212, 20, RollFault.Disc(20_600, 10, 4)) with
        {
            Splices = [new RollSplice { XMm = 20_300, ClearMm = 20 }],
        },
        RepeatsPerStrike = 1,
        GuidePlayMm = 0,
        FromMm = 20_000,
    });

    private static TicketOrder Work { get; } = new()
    {
        Number = "7",
        Start = new DateTime(2026, 3, 3, 9, 30, 0),
        Cut = new OrderCut
        {
            Number = 7,
            Order = OrderCases.Order("K1", "T2", 50, dueDay: 4),
            Roll = OrderCases.Roll("R", 50, 1, width: 20),
            Die = OrderCases.Die("D1", "T2", 1, 12, 10, gap: 2, width: 20),
            Press = OrderCases.FreePress,
            Strikes = 101,
            GoodBalls = 50,
            FromM = 20,
            StartHour = 9.5,
            EndHour = 10,
        },
    };
}
