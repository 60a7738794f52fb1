using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Plan.Chain;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The map of a roll, folded into lines: cloth, strikes with lost panels marked, faults and joints, true to scale.</summary>
internal sealed class RollMapSheet
{
    // Scales that may be used, as the number a real length is divided by: those of ISO 5455 and some between, as a map is read by its
    // metres and a page is to be filled.
    private static readonly int[] Scales = [1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 300, 400, 500];

    // In print, the smallest scale at which panels are still seen, at which a longer roll takes pages, and most pages it takes.
    private const int LeastSeen = 75;
    private const int UsualSeen = 50;
    private const int MostPages = 20;

    // Paper where none is asked for: A3 lying; its margins, room for the title and for the key of every page, mm. A usual roll is one page.
    private const string Usual = "A3";
    private const double Margin = PaperSize.MarginMm;
    private const double TitleRoom = 20;
    private const double KeyRoom = 38;

    // Panels on paper are drawn with corners no nearer than this, mm: finer is not seen.
    private const double CornerStep = 0.12;

    private readonly RollPlan plan;
    private readonly PaperSize paper;
    private readonly string? narrow;
    private readonly double title;
    private readonly int divisor;
    private readonly int onPage;
    private readonly int pages;
    private readonly Symbol[] good;
    private readonly Symbol[] lost;

    private RollMapSheet(RollPlan plan, PaperSize paper, bool print)
    {
        (this.plan, this.paper) = (plan, paper);
        narrow = RollRoom.Warning(plan);
        title = TitleRoom + (narrow is null ? 0 : NarrowBand.Height + 3);
        divisor = print ? PrintScale() : OnePage(Scales[^1]);
        divisor = divisor == 0 ? Scales[^1] : divisor;
        (onPage, pages) = (OnPage(divisor), PagesAt(divisor));
        good = Panels(plan, "good", 1.0 / divisor, new Pen(0.12, Ink.Dark), PartMarks.ToneOf);
        lost = Panels(plan, "lost", 1.0 / divisor, new Pen(0.12, Ink.Dark), _ => PartMarks.Lost);
    }

    private double Room => paper.HeightMm - (2 * Margin) - title - KeyRoom;

    // The largest scale at which the roll is one page, no smaller than another; else 0.
    private int OnePage(int least) =>
        Array.Find(Scales, d => d <= least && Lines(d) * LineHeight(plan.Request.Roll, d) <= Room);

    // One page where panels are seen on it, else as many pages as that takes, within reason.
    private int PrintScale() => OnePage(LeastSeen) is > 0 and int one
        ? one
        : Array.Find(Scales, d => d >= UsualSeen && PagesAt(d) <= MostPages);

    private int OnPage(int scale) => Math.Max(1, (int)(Room / LineHeight(plan.Request.Roll, scale)));

    private int PagesAt(int scale) => (Lines(scale) + OnPage(scale) - 1) / OnPage(scale);

    private double LineLength => paper.WidthMm - (2 * Margin);

    /// <summary>Draws the sheet: one page where the roll has room on it at some scale, else pages one below the other.</summary>
    public static Sheet Draw(RollPlan plan, string paper = Usual)
    {
        RollMapSheet map = new(plan, PaperSize.Of(paper), print: false);
        return map.Of(
            map.pages * map.paper.HeightMm,
            Enumerable.Range(0, map.pages).SelectMany(page => map.Page(page, (map.pages - page) * map.paper.HeightMm)));
    }

    /// <summary>The pages of the map, each a sheet of paper.</summary>
    /// <param name="plan">The strikes.</param>
    /// <param name="paper">Size of the paper: <c>A3</c>, <c>A4</c>.</param>
    public static IReadOnlyList<Sheet> Pages(RollPlan plan, string paper)
    {
        RollMapSheet map = new(plan, PaperSize.Of(paper), print: true);
        return [.. Enumerable.Range(0, map.pages).Select(page => map.Of(map.paper.HeightMm, map.Page(page, map.paper.HeightMm)))];
    }

    private Sheet Of(double heightMm, IEnumerable<Mark> marks) => new()
    {
        Title = $"Map of roll {plan.Request.Roll.Name}",
        Description = Words(plan, Lines(divisor)),
        WidthMm = paper.WidthMm,
        HeightMm = heightMm,
        Symbols = [.. good, .. lost],
        Marks = [.. marks],
    };

    // A page below the height of its upper edge.
    private IEnumerable<Mark> Page(int page, double height)
    {
        double top = height - Margin;
        RollStrip[] strips = [.. Strips(page * onPage, top - title)];
        string words = pages == 1
            ? string.Empty
            : Invariant($", page {page + 1} of {pages}: {strips[0].FromMm / 1000:0.##} to {strips[^1].ToMm / 1000:0.##} m");
        return Frame(top, pages == 1 ? string.Empty : $"-{page + 1}", words).Concat(strips.SelectMany(strip => strip.Draw(good, lost)));
    }

    // Title, warning and key of a page.
    private IEnumerable<Mark> Frame(double top, string page, string words)
    {
        yield return new GroupMark($"title{page}", [.. Title(plan, divisor, words, paper.WidthMm, top)]);
        if (narrow is not null)
        {
            double below = top - TitleRoom + 3;
            yield return NarrowBand.Draw(
                narrow,
                new Box { MinX = Margin, MinY = below - NarrowBand.Height, MaxX = paper.WidthMm - Margin, MaxY = below }, page);
        }

        yield return new GroupMark(
            $"key{page}", [.. RollMapKey.Draw(plan, new Point2(Margin, top - paper.HeightMm + (2 * Margin) + KeyRoom - 8))]);
    }

    // Each part as it lies on the map, good or lost.
    private static Symbol[] Panels(RollPlan plan, string kind, double scale, Pen pen, Func<int, Colour> tone) =>
    [
        .. plan.Request.Layout.Parts.Select((p, i) => new Symbol($"{kind}-{i}", [new PathMark([Outline(p, scale)], pen, tone(i))])),
    ];

    // The lines of cloth, one below the other from the top of their room.
    private IEnumerable<RollStrip> Strips(int first, double top)
    {
        FeltRoll roll = plan.Request.Roll;
        double line = LineMm(divisor);
        return Enumerable.Range(first, Math.Min(onPage, Lines(divisor) - first)).Select(i => new RollStrip(
            plan, 1.0 / divisor, i * line, Math.Min(roll.LengthMm, (i + 1) * line),
            new Point2(Margin, top - ((i - first + 1) * LineHeight(roll, divisor)) + RollStrip.Below)));
    }

    private static string Words(RollPlan plan, int lines)
    {
        FeltRoll roll = plan.Request.Roll;
        return Invariant(
            $"{plan.Strikes.Count} strikes on {roll.LengthMm / 1000:0.##} m of roll {roll.Name}: {plan.GoodPanels} good panels; lost "
                + $"panels, {roll.Faults.Count} faults and {roll.Splices.Count} splices are marked. The roll is folded into {lines} "
                + $"lines.");
    }

    // Whole metres a line where that leaves something to see, so that the fold is found with a tape.
    private double LineMm(int scale)
    {
        FeltRoll roll = plan.Request.Roll;
        double most = LineLength * scale;
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

    private int Lines(int scale) => (int)Math.Ceiling((plan.Request.Roll.LengthMm / LineMm(scale)) - 1e-9);

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

    private static IEnumerable<Mark> Title(RollPlan plan, int divisor, string part, double width, double top)
    {
        double room = width - (2 * Margin);
        string name = Invariant($"Roll {plan.Request.Roll.Name}{part}: {plan.Strikes.Count} strikes, {plan.GoodPanels} good panels")
            + (part.Length == 0 ? Invariant($", {plan.Balls} balls") : string.Empty);
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
}
