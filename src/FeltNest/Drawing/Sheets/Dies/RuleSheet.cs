using FeltNest.Die;
using FeltNest.Die.Bend;
using FeltNest.Die.Order;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>The pieces of rule of one part for the bench: lengths, bend after bend along the flat piece, notches, ends, boxes to
/// tick.</summary>
internal static class RuleSheet
{
    // Height of a drawn flat piece with its numbers, of its body, and of a notch: mm on paper.
    private const double Room = 19;
    private const double Body = 6;
    private const double Notch = 2.6;

    // Pieces drawn at most; all stand in the table.
    private const int Drawn = 6;

    // A box to tick, mm.
    private const double BoxMm = 3;

    private static readonly (string Name, double Width)[] Columns =
    [
        ("no", 8), ("from", 17), ("to", 17), ("angle", 15), ("toward", 15), ("inside R", 17), ("form to", 16), ("form R", 17),
        ("done", 12),
    ];

    private static readonly double Wide = Columns.Sum(c => c.Width) + 6;

    private static readonly string[] Steps =
    [
        "length cut", "ends cut", "notched", "bent", "laid on the 1:1 sheet", "set in the board", "joint closed", "height all round",
    ];

    /// <summary>Draws the sheet of a part as number <paramref name="number"/> of <paramref name="count"/>.</summary>
    public static Sheet Draw(DieDesign design, int part, int number, int count)
    {
        DieOrder order = design.Request.Order;
        RuleStrip[] strips = [.. design.Strips.Where(s => s.Part == part)];
        List<string[]> rows = [.. strips.SelectMany(s => Rows(design, s))];
        double top = Math.Min(Drawn, strips.Length) * Room;
        PaperSize size = PaperSize.All.Where(s => s.Name != "A4").FirstOrDefault(s => Fits(s, top, rows.Count)) ?? PaperSize.Of("A0");
        double left = size.Space.MinX + DieParts.Rim;
        double right = DieParts.ColumnTop(size).X - DieParts.Rim;
        Point2 corner = new(left, size.Space.MaxY - 12);
        (IEnumerable<Mark> caution, double high) =
            DieParts.Boxed(new Point2(left, size.Space.MinY + 4), right - left, string.Empty, RuleWords.Cautions);
        double room = corner.Y - top - size.Space.MinY - high - 10;
        return new Sheet
        {
            Title = $"{order.Name}: {DieParts.OfPart(design, part, "rule")}",
            Description = "Pieces of rule: lengths, bends along the flat piece, notches and ends.",
            WidthMm = size.WidthMm,
            HeightMm = size.HeightMm,
            Symbols = [],
            Marks =
            [
                .. DieParts.Base(
                    size, order,
                    new SheetPlace { Number = number, Count = count, Scale = "-", Part = DieParts.OfPart(design, part, "Rule") }),
                Words(
                    "flat pieces seen from the panel's side, foot down, joint at the left; positions in mm along the neutral line", left,
                    corner.Y + 3),
                .. strips.Take(Drawn).SelectMany((s, i) =>
                    Flat(design, s, new Point2(left, corner.Y - (i * Room)), (right - left - 2) / strips.Max(one => one.BlankMm))),
                .. Table(rows, new Point2(left, corner.Y - top), Math.Max(1, PerBlock(room)), Blocks(right - left)),
                .. caution,
                .. Side(design, part, strips, size),
            ],
        };
    }

    private static int PerBlock(double room) => (int)((room - 6) / CellTable.RowStep) - 1;

    private static int Blocks(double wide) => Math.Max(1, (int)(wide / Wide));

    private static bool Fits(PaperSize size, double top, int rows)
    {
        double wide = DieParts.ColumnTop(size).X - (2 * DieParts.Rim) - size.Space.MinX;
        return wide >= Wide && rows <= Blocks(wide) * PerBlock(size.Space.Height - top - 44);
    }

    // The flat piece to scale along, with its bends numbered and its notches.
    private static IEnumerable<Mark> Flat(DieDesign design, RuleStrip strip, Point2 at, double scale)
    {
        double high = at.Y - 6;
        Point2 Place(double along, double down) => new(at.X + (along * scale), high - down);
        yield return Words(Invariant($"{RuleWords.Name(design, strip)}: {strip.BlankMm:0.00} mm"), at.X, at.Y - 4);
        yield return new PathMark([Chain.Ring(Outline(strip, Place))], Ink.Wide);
        foreach ((int i, RuleBend bend) in strip.Bends.Index())
        {
            yield return new PathMark(
                [
                    Chain.Open(Place(bend.FromMm, 0), Place(bend.FromMm, Body)), Chain.Open(Place(bend.ToMm, 0), Place(bend.ToMm, Body)),
                ], Ink.Faint);
            yield return new PathMark(
                [Chain.Open(Place((bend.FromMm + bend.ToMm) / 2, 0), Place((bend.FromMm + bend.ToMm) / 2, Body))], Ink.Centre);
            if ((bend.ToMm - bend.FromMm) * scale > 3 || i % 2 == 0)
            {
                yield return new TextMark
                {
                    Text = Invariant($"{i + 1}"),
                    At = Place((bend.FromMm + bend.ToMm) / 2, Body + 3.2),
                    HeightMm = 1.8,
                    Colour = Ink.Dark,
                    Anchor = TextAnchor.Middle,
                };
            }
        }
    }

    // Notches are cut from the foot, which is drawn below.
    private static IEnumerable<Point2> Outline(RuleStrip strip, Func<double, double, Point2> place)
    {
        yield return place(0, 0);
        yield return place(0, Body);
        foreach ((double from, double to) in strip.Notches)
        {
            yield return place(from, Body);
            yield return place(from, Body - Notch);
            yield return place(to, Body - Notch);
            yield return place(to, Body);
        }

        yield return place(strip.BlankMm, Body);
        yield return place(strip.BlankMm, 0);
    }

    private static IEnumerable<string[]> Rows(DieDesign design, RuleStrip strip)
    {
        string[] head =
        [
            RuleWords.Name(design, strip), "0.00", F(strip.BlankMm), string.Empty, "length", string.Empty, string.Empty, string.Empty, " ",
        ];
        IEnumerable<(double At, string[] Row)> bends = strip.Bends.Select((b, i) => (b.FromMm, new[]
        {
            Invariant($"{i + 1}"), F(b.FromMm), F(b.ToMm), F(Math.Abs(b.TurnDeg)), b.TurnDeg > 0 ? "panel" : "waste", F(b.InsideRadiusMm),
            b.Setting is { } set ? F(Math.Abs(set.TurnDeg)) : "unknown", Formed(b.Setting), " ",
        }));
        IEnumerable<(double At, string[] Row)> notches = strip.Notches.Select(n => (n.FromMm, new[]
        {
            "n", F(n.FromMm), F(n.ToMm), string.Empty, "notch", string.Empty, string.Empty, string.Empty, " ",
        }));
        return [head, .. bends.Concat(notches).OrderBy(r => r.At).Select(r => r.Row)];
    }

    // A radius that the test bends do not reach is marked.
    private static string Formed(BendSetting? set) => set is null ? "unknown" : F(set.InsideRadiusMm) + (set.Tested ? string.Empty : " *");

    private static IEnumerable<Mark> Table(List<string[]> rows, Point2 corner, int perBlock, int blocks)
    {
        for (int block = 0; block < blocks && block * perBlock < rows.Count; block++)
        {
            Point2 at = corner + new Point2(block * Wide, 0);
            string[][] here = [.. rows.Skip(block * perBlock).Take(perBlock)];
            foreach (Mark mark in CellTable.Draw(at, Columns, here))
            {
                yield return mark;
            }

            for (int i = 0; i < here.Length; i++)
            {
                yield return Tick(at + new Point2(Wide - 6 - BoxMm, -1 - ((i + 2) * CellTable.RowStep)));
            }
        }
    }

    private static PathMark Tick(Point2 lowerLeft) => new(
        [Chain.Rectangle(new Box { MinX = lowerLeft.X, MinY = lowerLeft.Y, MaxX = lowerLeft.X + BoxMm, MaxY = lowerLeft.Y + BoxMm })],
        Ink.Narrow);

    private static IEnumerable<Mark> Side(DieDesign design, int part, RuleStrip[] strips, PaperSize size)
    {
        Point2 top = DieParts.ColumnTop(size);
        IReadOnlyList<(string, string)> figures = Figures(design, part, strips);
        double below = top.Y - FigureTable.Height(figures) - 6;
        return
        [
            .. FigureTable.Draw(top, DieParts.Column - 2, figures),
            .. TextBlock.Draw(new Point2(top.X, below), DieParts.Column - 2, Notes(design)),
            .. Steps.SelectMany((step, i) => Step(
                step,
                new Point2(
                    top.X + (i % 2 * 88),
                    below - TextBlock.Height(Notes(design), DieParts.Column - 2) - 8 - (i / 2 * 6)))),
        ];
    }

    private static IEnumerable<Mark> Step(string words, Point2 at) => [Tick(at), Words(words, at.X + BoxMm + 2, at.Y + 0.3)];

    private static List<(string, string)> Figures(DieDesign design, int part, RuleStrip[] strips)
    {
        DieRule rule = design.Request.Order.Rule;
        return
        [
            ("Rule", string.Empty),
            ("thickness x height", Invariant($"{rule.ThicknessMm:0.##} x {rule.HeightMm:0.##} mm, {rule.Points:0.#} pt")),
            ("bevel", DieParts.Bevel(rule.Bevel)), ("hardness", rule.Hardness),
            ("Lengths, mm: flat; middle of the body in the slot; times", string.Empty),
            .. strips.Take(Drawn).Select(s => (
                $"piece {RuleWords.Name(design, s)}", Invariant($"{s.BlankMm:0.00}; {s.MiddleMm:0.00}; {s.Count}"))),
            .. strips.Length > Drawn ? new[] { ("more pieces", "in rule.csv") } : [],
            ("cutting edge of one cavity", Invariant($"{design.Edges[part]!.Arcs.Perimeter:0.00}")),
            ("Ends, degrees off square", string.Empty),
            .. strips.Take(Drawn).Select(s => ($"piece {RuleWords.Name(design, s)}", RuleWords.Ends(s))),
            ("all bends and corners of a ring", "turn 360 degrees"),
        ];
    }

    private static string[] Notes(DieDesign design) =>
    [
        $"Length of a bend: {RuleWords.Neutral(design.Request.Order.Rule)}.",
        $"Springback: {RuleWords.Known(design.Springback)}.",
        .. design.Springback is null ? Array.Empty<string>() : ["* radius that the test bends do not reach."],
        "Angle, inside R: in the die. Form to, form R: on the bender, before it springs back. n: notch over a bridge, from the foot.",
        "Prove the length on the first ring in its slot before the rest is cut; a butt joint is dressed to fit, never forced.",
    ];

    private static TextMark Words(string text, double x, double y) => new()
    {
        Text = text,
        At = new Point2(x, y),
        HeightMm = Ink.Note,
        Colour = Ink.Dark,
    };

    private static string F(double value) => Invariant($"{value:0.00}");
}
