using FeltNest.Die;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Plan.Chain;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The cutting ticket of a roll on A4: what to cut, the runs of strikes, blanks for what came out, and the cautions.</summary>
internal static class TicketSheet
{
    // A4 with a binding margin on the left (ISO 5457:1999, from memory), and the step from line to line of a table: mm.
    private const double Width = 210;
    private const double Height = 297;
    private const double Left = 20;
    private const double Right = 200;
    private const double Top = 287;
    private const double Step = 6;

    // Runs listed: more are in the strike list, and the sheet says so.
    private const int MostRuns = 14;

    // Where the columns of the table of runs end, mm.
    private static readonly double[] Columns = [Left + 24, Left + 62, Left + 96, Left + 130, Left + 154, Right];

    /// <summary>Draws the sheet.</summary>
    /// <param name="plan">The strikes.</param>
    /// <param name="cut">The piece of work they are of, where they belong to a plan of orders.</param>
    public static Sheet Draw(RollPlan plan, OrderCut? cut = null)
    {
        List<Mark> marks = [.. Head(plan)];
        string? narrow = RollRoom.Warning(plan);
        double y = Top - 26;
        if (narrow is not null)
        {
            y -= NarrowBand.Height;
            marks.Add(NarrowBand.Draw(narrow, new Box { MinX = Left, MinY = y + 1, MaxX = Right, MaxY = y + NarrowBand.Height }));
        }

        (y, IEnumerable<Mark> facts) = Facts(plan, cut, y);
        marks.AddRange(facts);
        (y, IEnumerable<Mark> runs) = Runs(plan, MostRuns - (cut is null ? 0 : 4) - (narrow is null ? 0 : 3), y - 7);
        marks.AddRange(runs);
        marks.AddRange(Blanks(y - 9));
        marks.AddRange(Safety());
        FeltRoll roll = plan.Request.Roll;
        return new Sheet
        {
            Title = $"Cutting ticket of roll {roll.Name}",
            Description = Invariant($"{plan.Strikes.Count} strikes, {plan.GoodPanels} good panels expected; blanks for what came out."),
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks = marks,
        };
    }

    private static IEnumerable<Mark> Head(RollPlan plan)
    {
        yield return new TextMark
        {
            Text = "Cutting ticket",
            At = new Point2(Left, Top - 7),
            HeightMm = 7,
            Colour = Ink.Dark,
        };
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"roll {plan.Request.Roll.Name}", Ink.Title, 90),
            At = new Point2(Right, Top - 7),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
            Anchor = TextAnchor.End,
        };
        string expected = Invariant($"{plan.GoodPanels} good panels expected, {plan.Balls} balls, in {plan.Strikes.Count} strikes");
        yield return new TextMark
        {
            Text = expected,
            At = new Point2(Left, Top - 17),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        yield return Rule(Top - 21, Ink.Wide);
    }

    private static (double Y, IEnumerable<Mark> Marks) Facts(RollPlan plan, OrderCut? cut, double y)
    {
        List<Mark> marks = [];
        foreach ((string name, string value) in FactLines(plan, cut))
        {
            y -= Step;
            marks.Add(new TextMark { Text = name, At = new Point2(Left, y), HeightMm = Ink.Note, Colour = Ink.Soft });
            marks.Add(new TextMark
            {
                Text = StrokeFont.Fitted(value, Ink.Label, 142),
                At = new Point2(Left + 36, y),
                HeightMm = Ink.Label,
                Colour = Ink.Dark,
            });
        }

        marks.AddRange(Directions(plan.Request.Roll, y));
        marks.Add(Blank("die, revision", Left, 80, y - 8));
        return (y - 11, marks);
    }

    private static (string Name, string Value)[] FactLines(RollPlan plan, OrderCut? cut)
    {
        FeltRoll roll = plan.Request.Roll;
        RollLayout layout = plan.Request.Layout;
        string nap =
            roll.Nap switch { NapDirection.Forward => "with the feed", NapDirection.Backward => "against the feed", _ => "not stated" };
        return
        [
            .. cut is null ? [] : new[]
            {
                ("order", Invariant($"{cut.Order.Name}: {cut.GoodBalls} good balls after losses; no {cut.Number} of the list")),
                ("press, die", Invariant($"{cut.Press.Name}, die {cut.Die.Name}, {cut.Strikes} strikes")),
            },
            ("ball", layout.Parts[0].Ball ?? layout.Parts[0].Name),
            ("felt", roll.Felt ?? "not stated"),
            ("lot", roll.Lot ?? "not stated"),
            ("layout", Invariant($"{layout.Parts[0].Name}, made for {layout.RollWidthMm:0.#} mm, gap {layout.GapMm:0.##} mm")),
            ("roll", Invariant(
                $"{Length(roll, cut)}, {roll.LeastWidthMm:0.#} to {roll.MostWidthMm:0.#} mm wide"
                    + $"{(cut is null ? $", {Faults(plan)}" : string.Empty)}")),
            cut is null
                ? ("usable roll starts at", Invariant($"{plan.Request.FromMm / 1000:0.###} m"))
                : ("cut", Invariant($"from {plan.Request.FromMm / 1000:0.###} to {cut.ToM:0.00} m of the roll")),
            .. cut is null ? [] : new[] { ("in this piece", Faults(plan)) },
            ("one strike", Invariant($"{plan.Pattern.Panels.Count} panels ({Repeats(plan)}), {plan.Pattern.LengthMm:0.#} mm long")),
            ("feed", Invariant($"{plan.Pattern.FeedMm:0.000} mm from strike to strike in a run")),
            ("plies", "1 (faults of other plies lie elsewhere)"),
            ("face, nap", $"nap side up; nap {nap}{(layout.Rules.OneWay ? " (one-way layout)" : string.Empty)}"),
        ];
    }

    // The arrows stand at the right of the nap's line: feed, and nap where it is known.
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

    private static TextMark ArrowName(string name, Point2 at) => new()
    {
        Text = name,
        At = at,
        HeightMm = Ink.Note,
        Colour = Ink.Dark,
    };

    private static (double Y, IEnumerable<Mark> Marks) Runs(RollPlan plan, int most, double y)
    {
        IReadOnlyList<StrikeRun> runs = StrikeRun.Of(plan);
        List<Mark> marks =
        [
            .. Row(y, Ink.Soft, "strikes", "first begins at mm", "advance to it mm", "across mm", "good", "lost"),
            Rule(y - 1.6, Ink.Narrow),
        ];
        foreach (StrikeRun run in runs.Take(most))
        {
            y -= 5;
            string numbers = run.Count == 1 ? Invariant($"{run.First}") : Invariant($"{run.First} - {run.First + run.Count - 1}");
            marks.AddRange(
                Row(
                    y, Ink.Dark, numbers, Invariant($"{run.XMm:0.00}"), Invariant($"{run.AdvanceMm:0.00}"),
                    Invariant($"{run.ShiftYMm:+0.##;-0.##;0}"),
                    Invariant($"{run.GoodPanels}"), Invariant($"{run.LostPanels}")));
        }

        if (runs.Count > most)
        {
            y -= 5;
            marks.Add(
                new TextMark
                {
                    Text = Invariant($"and {runs.Count - most} more runs: this ticket goes with the strike list roll.csv"),
                    At = new Point2(Left, y),
                    HeightMm = Ink.Note,
                    Colour = Ink.Dark,
                });
        }

        return (y, marks);
    }

    // One line of the table of runs, each cell ending at its column.
    private static IEnumerable<Mark> Row(double y, Colour colour, params string[] cells) =>
        cells.Select((cell, i) => (Mark)new TextMark
        {
            Text = cell,
            At = new Point2(Columns[i], y),
            HeightMm = Ink.Note,
            Colour = colour,
            Anchor = TextAnchor.End,
        });

    private static IEnumerable<Mark> Blanks(double y)
    {
        yield return Rule(y + 4, Ink.Wide);
        yield return new TextMark
        {
            Text = "As cut",
            At = new Point2(Left, y - 1),
            HeightMm = Ink.Label,
            Colour = Ink.Dark,
        };
        yield return Blank("metres used", Left, 56, y - 10);
        yield return Blank("at ends, m", Left + 62, 56, y - 10);
        yield return Blank("width, mm", Left + 124, 56, y - 10);
        yield return Blank("good panels", Left, 42, y - 19);
        yield return Blank("faulty", Left + 46, 38, y - 19);
        yield return Blank("rejected", Left + 88, 44, y - 19);
        yield return Blank("unpaired", Left + 136, 44, y - 19);
        yield return Blank("faults met, where", Left, 180, y - 28);
        yield return Blank("operator", Left, 60, y - 37);
        yield return Blank("supervisor", Left + 66, 64, y - 37);
        yield return Blank("date", Left + 136, 44, y - 37);
    }

    private static IEnumerable<Mark> Safety()
    {
        double y = 10 + (SafetyWords.Ticket.Count * 4.2);
        yield return new TextMark
        {
            Text = "Cautions",
            At = new Point2(Left, y + 6),
            HeightMm = Ink.Label,
            Colour = Ink.Dark,
        };
        yield return new PathMark([Chain.Rectangle(new Box { MinX = Left, MinY = 11, MaxX = Right, MaxY = y + 4 })], Ink.Wide);
        for (int i = 0; i < SafetyWords.Ticket.Count; i++)
        {
            yield return new TextMark
            {
                Text = SafetyWords.Ticket[i],
                At = new Point2(Left + 2, y - (i * 4.2)),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
            };
        }
    }

    // Of a roll that is partly cut both lengths: what is left, and from which metre on.
    private static string Length(FeltRoll roll, OrderCut? cut)
    {
        if (cut is null)
        {
            return Invariant($"{roll.LengthMm / 1000:0.##} m");
        }

        if (cut.Roll.BeginM > 0)
        {
            return Invariant($"{cut.Roll.LengthM:0.##} m left, from {cut.Roll.BeginM:0.##} to {cut.Roll.EndM:0.##} m");
        }

        return Invariant($"{cut.Roll.LengthM:0.##} m");
    }

    // What lies in the cloth that is to be cut.
    private static string Faults(RollPlan plan)
    {
        double from = plan.Request.FromMm;
        int faults = plan.Request.Roll.Faults.Count(f => f.XMm + f.LengthMm >= from);
        int joints = plan.Request.Roll.Splices.Count(s => s.XMm >= from);
        return Invariant($"faults {faults}, splices {joints}");
    }

    private static string Repeats(RollPlan plan) => plan.Pattern.Repeats == 1 ? "one repeat" : $"{plan.Pattern.Repeats} repeats";

    private static PathMark Rule(double y, Pen pen) => new PathMark([Chain.Open(new Point2(Left, y), new Point2(Right, y))], pen);

    // A name and a line to write on.
    private static GroupMark Blank(string name, double x, double width, double y) => new(
        $"blank-{name.Replace(", ", "-", StringComparison.Ordinal).Replace(' ', '-')}",
        [
            new TextMark { Text = name, At = new Point2(x, y), HeightMm = Ink.Note, Colour = Ink.Soft },
            new PathMark(
                [Chain.Open(new Point2(x + StrokeFont.Width(name, Ink.Note) + 2, y - 1), new Point2(x + width, y - 1))], Ink.Narrow),
        ]);
}
