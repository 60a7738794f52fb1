using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;
using static FeltNest.Drawing.Sheets.Rolls.TicketPage;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>What is to be cut from what: the lines under the head of a ticket.</summary>
internal static class TicketFacts
{
    // Step from line to line, where the second column begins, and the room of a name in each column, mm.
    private const double Step = 5.6;
    private const double Second = 116;
    private const double NameRoom = 27;

    /// <summary>The facts below a height, and where they end.</summary>
    public static (double Y, IReadOnlyList<Mark> Marks) Draw(RollPlan plan, TicketOrder? order, TicketPiece piece, double y)
    {
        List<Mark> marks = [];
        foreach ((string Name, string Value)[] line in Lines(plan, order, piece))
        {
            y -= Step;
            for (int i = 0; i < line.Length; i++)
            {
                double left = i == 0 ? Left : Second;
                double right = i == line.Length - 1 ? Right : Second - 2;
                marks.Add(Words(line[i].Name, new Point2(left, y), Ink.Note, Ink.Soft));
                marks.Add(Fitted(line[i].Value, new Point2(left + NameRoom, y), Ink.Label, right - left - NameRoom));
            }
        }

        marks.AddRange(Directions(plan.Request.Roll, y));
        marks.Add(Blank("die, revision", Left, 80, y - 8));
        return (y - 11, marks);
    }

    // Line by line, a pair of name and value, or two of them side by side where both are short.
    private static (string Name, string Value)[][] Lines(RollPlan plan, TicketOrder? order, TicketPiece piece)
    {
        FeltRoll roll = plan.Request.Roll;
        RollLayout layout = plan.Request.Layout;
        string length = Invariant($"{(piece.ToMm - piece.FromMm) / 1000:0.00} m: {Place(piece.FromMm)} to {Place(piece.ToMm)} m");
        string left = Invariant($"{piece.BeforeMm / 1000:0.00} m, then {piece.AfterMm / 1000:0.00} m");
        string strike = Invariant(
            $"{plan.Pattern.Panels.Count} panels ({Repeats(plan)}), {plan.Pattern.LengthMm:0.#} mm long, one ply");
        string width = Invariant($"{roll.LeastWidthMm:0.#} to {roll.MostWidthMm:0.#} mm");
        string made = Invariant($"{layout.Parts[0].Name}, made for {layout.RollWidthMm:0.#} mm, gap {layout.GapMm:0.##} mm");
        return
        [
            .. order is null ? [] : OfOrder(order),
            .. layout.Parts.Select((part, i) => new[] { (PartName(layout, i), part.Ball ?? part.Name) }),
            [("felt", roll.Felt ?? "not stated"), ("lot", roll.Lot ?? "not stated")],
            [("layout", made)],
            [("this piece", length), ("left of the roll", left)],
            [("one strike", strike)],
            [("feed in a run", Invariant($"{plan.Pattern.FeedMm:0.000} mm")), ("roll width", width)],
            .. layout.Rules.Forbidden.Count == 0 ? [] : new[] { new[] { ("keep clear", Stripes(layout.Rules.Forbidden)) } },
            [("face, nap", $"nap side up; nap {Nap(roll)}{(layout.Rules.OneWay ? " (one-way layout)" : string.Empty)}")],
        ];
    }

    private static (string Name, string Value)[][] OfOrder(TicketOrder order)
    {
        OrderCut cut = order.Cut;
        return
        [
            [("order", cut.Order.Name), ("due", Invariant($"{cut.Order.Due:yyyy-MM-dd}"))],
            [
                ("good balls", Invariant($"{cut.GoodBalls} after losses")),
                ("planned start", Invariant($"{order.Start:yyyy-MM-dd HH:mm}")),
            ],
            .. cut.Die.Shape.AlsoBall is { } also
                ? new[] { new[] { ("besides", Invariant($"{cut.AlsoBalls} balls of {also}, for no order: put by")) } }
                : [],
            [("press", cut.Press.Name), ("die", cut.Die.Name)],
            .. cut.Roll.Turned ? new[] { new[] { ("TURN", "END FOR END before cutting; metres count from what was the end") } } : [],
        ];
    }

    private static string PartName(RollLayout layout, int part) =>
        layout.Parts.Count == 1 ? "ball" : $"ball, mark {PartMarks.NameOf(part)}";

    private static string Stripes(IReadOnlyList<ForbiddenStrip> stripes) =>
        $"{string.Join(", ", stripes.Select(s => Invariant($"{s.YFromMm:0.#} to {s.YToMm:0.#}")))} mm from the lower selvedge";

    private static string Nap(FeltRoll roll) =>
        roll.Nap switch { NapDirection.Forward => "with the feed", NapDirection.Backward => "against the feed", _ => "not stated" };

    private static string Place(double mm) => Invariant($"{mm / 1000:0.00}");

    private static string Repeats(RollPlan plan) => plan.Pattern.Repeats == 1 ? "one repeat" : $"{plan.Pattern.Repeats} repeats";

    // The arrows stand at the right below the nap's line: feed, and nap where it is known.
    private static List<Mark> Directions(FeltRoll roll, double y)
    {
        Point2 along = new(24, 0);
        Point2 feed = new(Right - 36, y - 7);
        List<Mark> marks = [.. Arrows.Line(feed, feed + along, Ink.Wide, 3.5), ArrowName("feed", feed + new Point2(26, -1.2))];
        if (roll.Nap is { } way)
        {
            Point2 start = new(Right - 80, y - 7);
            Point2 end = start + along;
            marks.AddRange(
                way == NapDirection.Forward ? Arrows.Line(start, end, Ink.Narrow, 3.5) : Arrows.Line(end, start, Ink.Narrow, 3.5));
            marks.Add(ArrowName("nap", end + new Point2(2, -1.2)));
        }

        return marks;
    }

    private static TextMark ArrowName(string name, Point2 at) => Words(name, at, Ink.Note, Ink.Dark);
}
