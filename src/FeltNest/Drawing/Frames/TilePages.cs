using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Frames;

/// <summary>A drawing true to size on pages that a printer takes, to be laid together: each page overlaps its neighbours, has match marks
/// at the joins, its name by row and column, and a bar to lay a rule against. Pages with nothing on them are left out.</summary>
internal sealed class TilePages
{
    /// <summary>Overlap of neighbours, mm.</summary>
    public const double OverlapMm = 10;

    /// <summary>Length of the bar, mm.</summary>
    public const double BarMm = 100;

    // Margin, room of the bar and the words below the picture, size of a match mark, and most pages: more are a wall and no template. mm.
    private const double Margin = PaperSize.MarginMm;
    private const double Foot = 20;
    private const double MarkMm = 2.5;
    private const int MostPages = 500;

    private static readonly Pen Join = new(0.18, Ink.Soft, 4, 2);

    private readonly string title;
    private readonly PaperSize paper;
    private readonly Box extent;
    private readonly IReadOnlyList<TileLine> lines;
    private readonly int rows;
    private readonly int columns;

    private TilePages(string title, string paper, Box extent, IReadOnlyList<TileLine> lines)
    {
        (this.title, this.paper, this.extent, this.lines) = (title, PaperSize.Of(paper), extent, lines);
        (rows, columns) = (Count(extent.Height, Picture.Height), Count(extent.Width, Picture.Width));
    }

    /// <summary>The pages, row by row from the top, each row from the left.</summary>
    /// <param name="title">What is drawn.</param>
    /// <param name="paper">Size of the paper: <c>A3</c>, <c>A4</c>.</param>
    /// <param name="extent">What is to be shown, mm.</param>
    /// <param name="lines">The lines.</param>
    public static IReadOnlyList<Sheet> Draw(string title, string paper, Box extent, IReadOnlyList<TileLine> lines)
    {
        TilePages tiles = new(title, paper, extent, lines);
        return (long)tiles.rows * tiles.columns <= MostPages ? tiles.Pages() : [tiles.TooMany()];
    }

    // Where the picture stands on the paper.
    private Box Picture => new()
    {
        MinX = Margin,
        MinY = Margin + Foot,
        MaxX = paper.WidthMm - Margin,
        MaxY = paper.HeightMm - Margin,
    };

    private static int Count(double whole, double page) => Math.Max(1, (int)Math.Ceiling((whole - OverlapMm) / (page - OverlapMm)));

    // What of the drawing stands on a page.
    private Box Window(int row, int column)
    {
        double left = extent.MinX + (column * (Picture.Width - OverlapMm));
        double top = extent.MaxY - (row * (Picture.Height - OverlapMm));
        return new Box { MinX = left, MinY = top - Picture.Height, MaxX = left + Picture.Width, MaxY = top };
    }

    private List<Sheet> Pages()
    {
        HashSet<(int Row, int Column)> kept =
        [
            .. Enumerable.Range(0, rows).SelectMany(row => Enumerable.Range(0, columns).Select(column => (row, column)))
                .Where(place => lines.Any(line => line.Reaches(Window(place.row, place.column)))),
        ];
        return [.. kept.Order().Select((place, i) => Page(place.Row, place.Column, kept, Invariant($"page {i + 1} of {kept.Count}")))];
    }

    private Sheet Page(int row, int column, HashSet<(int Row, int Column)> kept, string page)
    {
        Box window = Window(row, column);
        Point2 by = new(Picture.MinX - window.MinX, Picture.MinY - window.MinY);
        PathMark[] drawn =
        [
            .. lines.Where(line => line.Reaches(window)).Select(line => new PathMark([line.Chain.Placed(1, 0, by)], line.Pen)),
        ];
        string name = Invariant($"Row {row + 1} of {rows}, column {column + 1} of {columns}");
        return Of(
            $"{title}: {name}",
            [
                new GroupMark("picture", drawn, Picture),
                new PathMark([Chain.Rectangle(Picture)], Ink.Faint),
                new GroupMark("joins", [.. Joins(row, column, kept, by)]),
                new GroupMark("foot", [.. FootMarks(name, page)]),
            ]);
    }

    private Sheet Of(string name, IReadOnlyList<Mark> marks) => new()
    {
        Title = name,
        Description = "True to size: pages to be laid together by their match marks.",
        WidthMm = paper.WidthMm,
        HeightMm = paper.HeightMm,
        Symbols = [],
        Marks = marks,
    };

    // The line in the middle of each overlap with a neighbour that is there, a quarter and three quarters along it a match mark: on both
    // pages at the same places of the drawing.
    private IEnumerable<Mark> Joins(int row, int column, HashSet<(int Row, int Column)> kept, Point2 by)
    {
        foreach ((int down, int right) in ((int, int)[])[(-1, 0), (1, 0), (0, -1), (0, 1)])
        {
            if (!kept.Contains((row + down, column + right)))
            {
                continue;
            }

            (Box own, Box other) = (Window(row, column), Window(row + down, column + right));
            Box both = new()
            {
                MinX = Math.Max(own.MinX, other.MinX),
                MinY = Math.Max(own.MinY, other.MinY),
                MaxX = Math.Min(own.MaxX, other.MaxX),
                MaxY = Math.Min(own.MaxY, other.MaxY),
            };
            Point2 middle = new Point2((both.MinX + both.MaxX) / 2, (both.MinY + both.MaxY) / 2) + by;
            Point2 half = right == 0 ? new Point2(both.Width / 2, 0) : new Point2(0, both.Height / 2);
            yield return new PathMark([Chain.Open(middle - half, middle + half)], Join);
            foreach (Point2 at in new[] { middle - (half * 0.5), middle + (half * 0.5) })
            {
                yield return new PathMark([Chain.Circle(at, MarkMm), Cross(at, true), Cross(at, false)], Ink.Narrow);
            }

            yield return To(Invariant($"row {row + 1 + down}, column {column + 1 + right}"), middle, right != 0);
        }
    }

    private static Chain Cross(Point2 at, bool level)
    {
        Point2 arm = level ? new Point2(MarkMm * 1.6, 0) : new Point2(0, MarkMm * 1.6);
        return Chain.Open(at - arm, at + arm);
    }

    // Which page comes there, along the join.
    private static TextMark To(string name, Point2 middle, bool upright) => new()
    {
        Text = name,
        At = middle + (upright ? new Point2(-1, 0) : new Point2(0, 1)),
        HeightMm = Ink.Note,
        Colour = Ink.Soft,
        Anchor = TextAnchor.Middle,
        Angle = upright ? Math.PI / 2 : 0,
    };

    private IEnumerable<Mark> FootMarks(string name, string page)
    {
        foreach (Mark mark in ScaleBar.Draw(new Point2(Margin + 1, Margin + 8), BarMm, 1))
        {
            yield return mark;
        }

        const double beside = 122;
        double room = paper.WidthMm - (2 * Margin) - beside;
        (string Words, double High, double Left)[] words =
        [
            (name, Ink.Label, beside), ($"SCALE 1:1, {page}", Ink.Note, beside), (title, Ink.Note, beside),
            ("Print at 100 %: the bar must measure 100 mm, or do not use this sheet.", Ink.Note, 0),
        ];
        for (int i = 0; i < words.Length; i++)
        {
            yield return new TextMark
            {
                Text = StrokeFont.Fitted(words[i].Words, words[i].High, words[i].Left == 0 ? beside : room),
                At = new Point2(Margin + words[i].Left, Margin + 13 - (words[i].Left == 0 ? 11 : 5.5 * i)),
                HeightMm = words[i].High,
                Colour = Ink.Dark,
            };
        }
    }

    private Sheet TooMany() => Of(
        $"{title}: too large for pages",
        [
            new TextMark
            {
                Text = Invariant($"{title}: {(long)rows * columns} pages true to size are too many: at most {MostPages} are drawn."),
                At = new Point2(Margin, paper.HeightMm - (2 * Margin)),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
            },
        ]);
}
