using System.Globalization;
using FeltNest.Die;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Plan.Chain;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The map of a roll, folded into lines: cloth, strikes with lost panels marked, faults and joints, true to scale.</summary>
internal static class RollMapSheet
{
    // Scales of ISO 5455 that may be used, as the number a real length is divided by.
    private static readonly int[] Scales = [1, 2, 5, 10, 20, 50, 100, 200, 500];

    // Paper: margins, room for the title and for the key, length of a line of cloth, and the greatest height of all lines together, mm. An
    // A3 sheet holds the map of a usual roll.
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double KeyRoom = 36;
    private const double LineLength = 390;
    private const double MostHigh = 420;

    // Panels on paper are drawn with corners no nearer than this, mm: finer is not seen.
    private const double CornerStep = 0.12;

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(RollPlan plan)
    {
        FeltRoll roll = plan.Request.Roll;
        int divisor = Array.Find(Scales, d => Lines(roll, d) * LineHeight(roll, d) <= MostHigh);
        divisor = divisor == 0 ? Scales[^1] : divisor;
        double scale = 1.0 / divisor;
        int lines = Lines(roll, divisor);
        double width = (2 * Margin) + Math.Max(200, Math.Min(LineLength, roll.LengthMm * scale));
        string? narrow = RollRoom.Warning(plan);
        double title = TitleRoom + (narrow is null ? 0 : NarrowBand.Height + 3);
        double height = (2 * Margin) + title + (lines * LineHeight(roll, divisor)) + KeyRoom;
        Symbol[] good = Panels(plan, "good", scale, new Pen(0.1, Ink.Soft), Ink.Classes[0]);
        Symbol[] lost = Panels(plan, "lost", scale, new Pen(0.2, Ink.Dark), Ink.Classes[1]);
        List<Mark> marks = [new GroupMark("title", [.. Title(plan, divisor, width, height - Margin)])];
        if (narrow is not null)
        {
            double top = height - Margin - TitleRoom + 3;
            marks.Add(
                NarrowBand.Draw(narrow, new Box { MinX = Margin, MinY = top - NarrowBand.Height, MaxX = width - Margin, MaxY = top }));
        }

        marks.AddRange(Strips(plan, divisor, height - Margin - title).SelectMany(strip => strip.Draw(good, lost)));
        marks.Add(new GroupMark("key", [.. Key(plan, new Point2(Margin, Margin + KeyRoom - 8))]));
        return new Sheet
        {
            Title = $"Map of roll {roll.Name}",
            Description = Words(plan, lines),
            WidthMm = width,
            HeightMm = height,
            Symbols = [.. good, .. lost],
            Marks = marks,
        };
    }

    // Each part as it lies on the map, good or lost.
    private static Symbol[] Panels(RollPlan plan, string kind, double scale, Pen pen, Colour fill) =>
    [
        .. plan.Request.Layout.Parts.Select((p, i) => new Symbol($"{kind}-{i}", [new PathMark([Outline(p, scale)], pen, fill)])),
    ];

    // The lines of cloth, one below the other from the top of their room.
    private static IEnumerable<RollStrip> Strips(RollPlan plan, int divisor, double top)
    {
        FeltRoll roll = plan.Request.Roll;
        double line = LineMm(roll, divisor);
        return Enumerable.Range(0, Lines(roll, divisor)).Select(i => new RollStrip(
            plan, 1.0 / divisor, i * line, Math.Min(roll.LengthMm, (i + 1) * line),
            new Point2(Margin, top - ((i + 1) * LineHeight(roll, divisor)) + RollStrip.Below)));
    }

    private static string Words(RollPlan plan, int lines)
    {
        FeltRoll roll = plan.Request.Roll;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{plan.Strikes.Count} strikes on {roll.LengthMm / 1000:0.##} m of roll {roll.Name}: {plan.GoodPanels} good panels; lost "
                + $"panels, {roll.Faults.Count} faults and {roll.Splices.Count} splices are marked. The roll is folded into {lines} "
                + $"lines.");
    }

    // Whole metres a line where that leaves something to see, so that the fold is found with a tape.
    private static double LineMm(FeltRoll roll, int divisor)
    {
        double most = LineLength * divisor;
        if (roll.LengthMm <= most)
        {
            return roll.LengthMm;
        }

        if (most >= 1000)
        {
            return Math.Floor(most / 1000) * 1000;
        }

        return most;
    }

    private static int Lines(FeltRoll roll, int divisor) => (int)Math.Ceiling((roll.LengthMm / LineMm(roll, divisor)) - 1e-9);

    private static double LineHeight(FeltRoll roll, int divisor) => (roll.MostWidthMm / divisor) + RollStrip.Above + RollStrip.Below;

    private static Chain Outline(LayoutPart part, double scale)
    {
        List<Point2> kept = [];
        foreach (Point2 corner in part.Outline.Points.Select(p => p * scale))
        {
            if (kept.Count == 0 || (corner - kept[^1]).Length >= CornerStep)
            {
                kept.Add(corner);
            }
        }

        return kept.Count >= 3 ? Chain.Ring(kept) : Chain.Ring(part.Outline.Points.Select(p => p * scale));
    }

    private static IEnumerable<Mark> Title(RollPlan plan, int divisor, double width, double top)
    {
        double room = width - (2 * Margin);
        string name = string.Create(
            CultureInfo.InvariantCulture,
            $"Roll {plan.Request.Roll.Name}: {plan.Strikes.Count} strikes, {plan.GoodPanels} good panels, {plan.Balls} balls");
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(name, Ink.Title, room),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        string words = $"{plan.Request.Layout.Parts[0].Name}   seen from the nap side   SCALE 1:{divisor}   lines follow each other as "
            + $"the lines of a page; feed to the right";
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(words, Ink.Note, room),
            At = new Point2(Margin, top - 11),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 14), new Point2(width - Margin, top - 14))], Ink.Wide);
    }

    private static IEnumerable<Mark> Key(RollPlan plan, Point2 at)
    {
        string counts = string.Create(
            CultureInfo.InvariantCulture,
            $"lost: {plan.LostPanels(LossCause.Fault)} at faults, {plan.LostPanels(LossCause.Joint)} at splices, "
                + $"{plan.LostPanels(LossCause.Width)} outside the usable width, {plan.LostPanels(LossCause.RollEnd)} past the end");
        string numbers = $"numbers: every fifth strike, and the first of each run one feed apart (longer tick)"
            + $"{(plan.Request.FromMm > 0 ? "; tinted: cut before" : string.Empty)}";
        return
        [
            .. Signs(at),
            Note(counts, at - new Point2(0, 6), Ink.Dark),
            Note(numbers, at - new Point2(0, 11), Ink.Soft),
            .. SafetyWords.Brief.Select((words, i) => Note(words, new Point2(at.X, at.Y - 17 - (i * 4.2)), Ink.Dark)),
        ];
    }

    // What the signs of the map mean, in one line.
    private static IEnumerable<Mark> Signs(Point2 at)
    {
        Colour fault = Colour.Of(0xB3261E);
        Point2 ring = at + new Point2(69, 1.5);
        double splice = at.X + 138;
        Chain Swatch(double from) => Chain.Rectangle(new Box { MinX = from, MinY = at.Y, MaxX = from + 5, MaxY = at.Y + 3 });
        TextMark Name(string words, double from) => Note(words, at + new Point2(from, 0.2), Ink.Dark);
        return
        [
            new PathMark([Swatch(at.X)], Ink.Faint, Ink.Classes[0]),
            Name("good panel", 7),
            new PathMark([Swatch(at.X + 34)], Ink.Narrow, Ink.Classes[1]),
            Name("lost panel", 41),
            new PathMark([Chain.Circle(ring, 1.4)], new Pen(0.3, fault)),
            new PathMark([Chain.Circle(ring, 0.4)], null, fault),
            Name("fault (ring: smaller than drawn)", 72),
            new PathMark([Chain.Open(new Point2(splice, at.Y - 0.5), new Point2(splice, at.Y + 3.5))], new Pen(0.7, fault, 1.5, 0.6)),
            Name("roll splice", 140),
        ];
    }

    private static TextMark Note(string words, Point2 at, Colour colour) => new()
    {
        Text = words,
        At = at,
        HeightMm = Ink.Note,
        Colour = colour,
    };
}
