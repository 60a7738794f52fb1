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
        double line = LineMm(roll, divisor);
        int lines = Lines(roll, divisor);
        double width = (2 * Margin) + Math.Max(200, Math.Min(LineLength, roll.LengthMm * scale));
        string? narrow = RollRoom.Warning(plan);
        double title = TitleRoom + (narrow is null ? 0 : NarrowBand.Height + 3);
        double height = (2 * Margin) + title + (lines * LineHeight(roll, divisor)) + KeyRoom;

        IReadOnlyList<LayoutPart> parts = plan.Request.Layout.Parts;
        Symbol[] good =
        [
            .. parts.Select((p, i) => new Symbol($"good-{i}", [new PathMark([Outline(p, scale)], new Pen(0.1, Ink.Soft), Ink.Classes[0])])),
        ];
        Symbol[] lost =
        [
            .. parts.Select((p, i) => new Symbol($"lost-{i}", [new PathMark([Outline(p, scale)], new Pen(0.2, Ink.Dark), Ink.Classes[1])])),
        ];
        List<Mark> marks = [new GroupMark("title", [.. Title(plan, divisor, width, height - Margin)])];
        if (narrow is not null)
        {
            double top = height - Margin - TitleRoom + 3;
            marks.Add(
                NarrowBand.Draw(narrow, new Box { MinX = Margin, MinY = top - NarrowBand.Height, MaxX = width - Margin, MaxY = top }));
        }

        for (int i = 0; i < lines; i++)
        {
            Point2 corner = new(Margin, height - Margin - title - ((i + 1) * LineHeight(roll, divisor)) + RollStrip.Below);
            marks.AddRange(new RollStrip(plan, scale, i * line, Math.Min(roll.LengthMm, (i + 1) * line), corner).Draw(good, lost));
        }

        marks.Add(new GroupMark("key", [.. Key(plan, new Point2(Margin, Margin + KeyRoom - 8))]));
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"{plan.Strikes.Count} strikes on {roll.LengthMm / 1000:0.##} m of roll {roll.Name}: {plan.GoodPanels} good panels; lost "
                + $"panels, {roll.Faults.Count} faults and {roll.JointsMm.Count} joints are marked. The roll is folded into {lines} "
                + $"lines.");
        return new Sheet
        {
            Title = $"Map of roll {roll.Name}",
            Description = words,
            WidthMm = width,
            HeightMm = height,
            Symbols = [.. good, .. lost],
            Marks = marks,
        };
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
        Colour fault = Colour.Of(0xB3261E);
        double x = at.X;
        foreach ((Mark[] sign, string words) in new (Mark[], string)[]
        {
            ([
                new PathMark(
                    [Chain.Rectangle(new Box { MinX = x, MinY = at.Y, MaxX = x + 5, MaxY = at.Y + 3 })], Ink.Faint, Ink.Classes[0]),
            ], "good panel"),
            ([
                new PathMark(
                    [Chain.Rectangle(new Box { MinX = x + 34, MinY = at.Y, MaxX = x + 39, MaxY = at.Y + 3 })], Ink.Narrow, Ink.Classes[1]),
            ], "lost panel"),
            ([
                new PathMark([Chain.Circle(new Point2(x + 69, at.Y + 1.5), 1.4)], new Pen(0.3, fault)),
                new PathMark([Chain.Circle(new Point2(x + 69, at.Y + 1.5), 0.4)], null, fault),
            ], "fault (ring: smaller than drawn)"),
            ([
                new PathMark([Chain.Open(new Point2(x + 138, at.Y - 0.5), new Point2(x + 138, at.Y + 3.5))], new Pen(0.7, fault, 1.5, 0.6)),
            ], "roll splice"),
        })
        {
            foreach (Mark mark in sign)
            {
                yield return mark;
            }

            yield return new TextMark
            {
                Text = words,
                At = new Point2(x + words switch { "good panel" => 7, "lost panel" => 41, "roll splice" => 140, _ => 72 }, at.Y + 0.2),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
            };
        }

        string counts = string.Create(
            CultureInfo.InvariantCulture,
            $"lost: {plan.LostPanels(LossCause.Fault)} at faults, {plan.LostPanels(LossCause.Joint)} at joints, "
                + $"{plan.LostPanels(LossCause.Width)} outside the usable width, {plan.LostPanels(LossCause.RollEnd)} past the end");
        yield return new TextMark { Text = counts, At = new Point2(x, at.Y - 6), HeightMm = Ink.Note, Colour = Ink.Dark };
        yield return new TextMark
        {
            Text = $"numbers: every fifth strike, and the first of each run one feed apart (longer tick)"
                + $"{(plan.Request.FromMm > 0 ? "; tinted: cut before" : string.Empty)}",
            At = new Point2(
            x, at.Y - 11),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        for (int i = 0; i < SafetyWords.Brief.Count; i++)
        {
            yield return new TextMark
            {
                Text = SafetyWords.Brief[i],
                At = new Point2(x, at.Y - 17 - (i * 4.2)),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
            };
        }
    }
}
