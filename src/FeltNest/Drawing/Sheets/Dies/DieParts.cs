using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Order;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Rolls;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>What the sheets of a die share: frame and title block, the column beside it, safety, scale bar, views of an edge.</summary>
internal static class DieParts
{
    /// <summary>Width of the column of tables above the title block, mm.</summary>
    public const double Column = TitleBlock.Width;

    /// <summary>Room kept from frame and column, mm.</summary>
    public const double Rim = 6;

    // From line to line of a warning, over the height of its letters.
    private const double LineShare = 1.7;

    /// <summary>Frame and title block.</summary>
    public static List<Mark> Base(PaperSize size, DieOrder order, SheetPlace place) =>
        [.. SheetFrame.Draw(size), .. TitleBlock.Draw(new Point2(size.Space.MaxX, size.Space.MinY), order, place)];

    /// <summary>Upper left corner of the column of a lying sheet.</summary>
    public static Point2 ColumnTop(PaperSize size) => new(size.Space.MaxX - Column, size.Space.MaxY - 2);

    /// <summary>Top of title block and strip, mm.</summary>
    public static double TitleTop(PaperSize size) => size.Space.MinY + TitleBlock.Height + TitleBlock.Strip;

    /// <summary>The safety block with its lower left corner at a place.</summary>
    public static (IEnumerable<Mark> Marks, double Height) Safety(Point2 lowerLeft, double width)
    {
        string[] words = [.. SafetyWords.Deferral, .. SafetyWords.Block, .. SafetyWords.Standards];
        return Boxed(lowerLeft, width, "SAFETY", words);
    }

    /// <summary>The short form with its lower left corner at a place.</summary>
    public static (IEnumerable<Mark> Marks, double Height) BriefSafety(Point2 lowerLeft, double width) =>
        Boxed(lowerLeft, width, string.Empty, SafetyWords.Brief);

    /// <summary>Paragraphs in a box with a heading.</summary>
    public static (IEnumerable<Mark> Marks, double Height) Boxed(
        Point2 lowerLeft, double width, string heading, IReadOnlyList<string> words)
    {
        double head = heading.Length > 0 ? 6 : 0;
        double height = TextBlock.Height(words, width - 4) + head + 3;
        Point2 top = lowerLeft + new Point2(2, height - 1);
        IEnumerable<Mark> title = heading.Length > 0 ? [new TextMark
        {
            Text = heading,
            At = top - new Point2(0, 4.5),
            HeightMm = Ink.Label,
            Colour = Ink.Dark,
        }] : [];
        return (
            [
                new PathMark([Chain.Rectangle(new Box
                {
                    MinX = lowerLeft.X,
                    MinY = lowerLeft.Y,
                    MaxX = lowerLeft.X + width,
                    MaxY = lowerLeft.Y + height,
                })], Ink.Wide),
                .. title, .. TextBlock.Draw(top - new Point2(0, head), width - 4, words),
            ],
            height);
    }

    /// <summary>A bar of 100 mm on paper, to lay a rule on.</summary>
    public static IEnumerable<Mark> Bar(Point2 at) =>
        ScaleBar.Draw(at, 100, 1).Append(new TextMark
        {
            Text = "check bar: 100 mm on this sheet",
            At = at + new Point2(0, -4.5),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        });

    /// <summary>The edge moved outwards by so much, mm: pieces keep their centres.</summary>
    public static Chain Offset(DieEdge edge, double outside) => new(
        [.. edge.Pieces.Select(p =>
        {
            Point2 at = p.Start - (p.Direction(0).Left * outside);
            return new ArcVertex(at.X, at.Y, p.Turn);
        })],
        true);

    /// <summary>The edge as it is seen on the sheet: from the die's side its arcs turn the other way.</summary>
    public static Chain Seen(DieEdge edge, DieOrder order, Func<Point2, Point2> place) => new(
        [.. edge.Arcs.Vertices.Select(v =>
        {
            Point2 at = place(v.Point);
            return new ArcVertex(at.X, at.Y, order.DieView ? -v.Turn : v.Turn);
        })],
        true);

    /// <summary>Extent of an edge: lower left and upper right.</summary>
    public static Box Extent(DieEdge edge)
    {
        IReadOnlyList<Point2> points = new Chain(edge.Arcs.Vertices, true).Flattened(1e-3);
        return new Box
        {
            MinX = points.Min(p => p.X),
            MinY = points.Min(p => p.Y),
            MaxX = points.Max(p => p.X),
            MaxY = points.Max(p => p.Y),
        };
    }

    /// <summary>Width of the edge across its middle (at x = 0): the lower and upper place, or null where the line meets it otherwise than
    /// twice.</summary>
    public static (double Low, double High)? Waist(DieEdge edge)
    {
        IReadOnlyList<Point2> points = new Chain(edge.Arcs.Vertices, true).Flattened(1e-4);
        double[] met = [.. Enumerable.Range(0, points.Count)
            .Select(i => (A: points[i], B: points[(i + 1) % points.Count]))
            .Where(s => s.A.X < 0 != s.B.X < 0)
            .Select(s => s.A.Y - (s.A.X * (s.B.Y - s.A.Y) / (s.B.X - s.A.X))).Order()];
        return met.Length == 2 ? (met[0], met[1]) : null;
    }

    /// <summary>An arrow with its word.</summary>
    public static IEnumerable<Mark> Arrow(Point2 from, Point2 way, string word)
    {
        foreach (Mark mark in Arrows.Line(from, from + way, Ink.Narrow, 3))
        {
            yield return mark;
        }

        Point2 at = Math.Abs(way.X) > Math.Abs(way.Y)
            ? new Point2(
                Math.Max(from.X, from.X + way.X) + 2,
                from.Y - 1.2) : new Point2(from.X - (StrokeFont.Width(word, Ink.Note) / 2), Math.Max(from.Y, from.Y + way.Y) + 2);
        yield return new TextMark { Text = word, At = at, HeightMm = Ink.Note, Colour = Ink.Dark };
    }

    /// <summary>Name of a bevel with its side.</summary>
    public static string Bevel(RuleBevel bevel) => bevel switch
    {
        RuleBevel.SideWaste => "side bevel, bevel to the waste",
        RuleBevel.SidePanel => "side bevel, bevel to the panel",
        RuleBevel.LongCentre => "long centre bevel",
        _ => "centre bevel",
    };

    /// <summary>Which side the drawing shows.</summary>
    public static string View(DieOrder order) =>
        order.DieView ? "DIE VIEW: seen from the edges, mirror image of the felt" : "PANEL VIEW: felt seen from the nap side";

    /// <summary>Which way the nap lies, in the x of what is drawn.</summary>
    public static string Nap(DieOrder order) => order.Nap switch
    {
        NapDirection.Forward => $"toward {order.SeenSign(true)}x, with the feed",
        NapDirection.Backward => $"toward {order.SeenSign(false)}x, against the feed",
        _ => "not stated",
    };

    /// <summary>A framed warning in large letters with its lower left corner at a place: what nobody is to overlook.</summary>
    public static (IEnumerable<Mark> Marks, double Height) Warning(Point2 lowerLeft, double width, string words, double letters)
    {
        const double rim = 3;
        double step = LineShare * letters;
        IReadOnlyList<string> lines = TextBlock.Lines(words, width - (2 * rim), letters);
        double height = (lines.Count * step) + (2 * rim);
        return (
            [
                new PathMark(
                    [Chain.Rectangle(new Box
                    {
                        MinX = lowerLeft.X,
                        MinY = lowerLeft.Y,
                        MaxX = lowerLeft.X + width,
                        MaxY = lowerLeft.Y + height,
                    })], new Pen(1, Ink.Dark)),
                .. lines.Select((line, i) =>
                    new TextMark
                    {
                        Text = line,
                        At = lowerLeft + new Point2(rim, height - rim - (1.2 * letters) - (i * step)),
                        HeightMm = letters,
                        Colour = Ink.Dark,
                    }),
            ],
            height);
    }

    /// <summary>A length with its decimals, or a word for none.</summary>
    public static string Mm(double value, string format = "0.00") =>
        double.IsFinite(value) ? value.ToString(format, CultureInfo.InvariantCulture) : "-";

    /// <summary>Words with the part they are about, where the die cuts several.</summary>
    public static string OfPart(DieDesign design, int part, string words) =>
        design.Letter(part) is { Length: > 0 } letter ? $"{words}, part {letter}" : words;

    /// <summary>Name and revision of a die.</summary>
    public static string Named(DieDesign design) =>
        design.Request.Order.Title.Revision is { } r ? $"{design.Request.Order.Name}, revision {r}" : design.Request.Order.Name;
}
