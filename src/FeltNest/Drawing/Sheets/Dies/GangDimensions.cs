using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>Pitches of a gang as dimension lines: along the roll repeat and feed, across it the pitches of the rows.</summary>
/// <remarks>Equal pitches are written once with their count, as ISO 129-1:2018 allows (from memory). What does not fit between its arrows
/// is left to the table of figures, which names every pitch.</remarks>
internal static class GangDimensions
{
    /// <summary>Room that the lines take beside and above the board, mm.</summary>
    public const double RoomAside = 44;
    public const double RoomAbove = 32;

    // First dimension line off the board, from line to line, and least room of a number that stands beside its line: mm.
    private const double Nearest = 10;
    private const double Step = 10;
    private const double Least = 5;

    // Rows this near across are one row, and pitches this near are alike, mm.
    private const double Same = 5e-4;

    /// <summary>How far the line of the feed reaches beyond the board along the roll, mm.</summary>
    public static double OverhangMm(DieGang gang) =>
        Math.Max(0, Math.Max(First(gang, false).Placed.XMm, First(gang, true).Placed.XMm) + gang.FeedMm - gang.BoardLengthMm);

    /// <summary>The pitches of the rows in words.</summary>
    public static string RowWords(DieGang gang)
    {
        double[] pitches = Pitches(gang);
        int period = Period(pitches);
        string inTurn = period < pitches.Length ? " in turn" : string.Empty;
        return (pitches.Length, period) switch
        {
            (0, _) => "one row",
            (1, 1) => $"{F(pitches[0])} mm",
            (int count, 1) => $"{count} x {F(pitches[0])} mm",
            (_, <= 3) => $"{string.Join(", ", pitches.Take(period).Select(F))} mm{inTurn}",
            (int count, _) => $"{count} unlike ones: see y below",
        };
    }

    /// <summary>The dimension lines of a board drawn in a box.</summary>
    /// <param name="design">The die.</param>
    /// <param name="paper">From the die's frame to the sheet.</param>
    /// <param name="board">The board on the sheet.</param>
    public static IEnumerable<Mark> Draw(DieDesign design, Func<Point2, Point2> paper, Box board)
    {
        DieGang gang = design.Gang;
        Point2 x = paper(new(1, 0)) - paper(default);
        bool level = Math.Abs(x.X) > Math.Abs(x.Y);
        DieCavity start = First(gang, !level);
        Point2 from = new(start.Placed.XMm, start.Placed.YMm);
        Point2 side = paper(Reach(design, start, level ? new(0, 1) : new(0, -1)));
        double repeat = gang.FeedMm / gang.Repeats;
        List<(Point2 To, string Name, double Mm)> along =
        [
            (paper(from + new Point2(gang.FeedMm, 0)), gang.Repeats > 1 ? "feed " : "feed = repeat ", gang.FeedMm),
        ];
        if (gang.Repeats > 1)
        {
            along.Insert(0, (paper(from + new Point2(repeat, 0)), "repeat ", repeat));
        }

        // A number that finds no room along its line stands beside it: such a line goes outermost, so that none crosses its number.
        (Point2 To, string Words, double High, bool Tight)[] lines =
        [
            .. along
                .Select(l => Lettered(l.To, Math.Abs(level ? l.To.X - paper(from).X : l.To.Y - paper(from).Y), l.Name, F(l.Mm)))
                .OrderBy(l => l.Tight),
        ];
        return [.. Along(lines, paper(from), side, level, board), .. Across(design, paper, level, board)];
    }

    // With its name where there is room, in smaller letters or without it where there is less.
    private static (Point2 To, string Words, double High, bool Tight) Lettered(Point2 to, double room, string name, string number)
    {
        foreach ((string words, double high) in new[] { (name + number, Ink.Label), (name + number, Ink.Note), (number, Ink.Note) })
        {
            if (room >= StrokeFont.Width(words, high) + Least)
            {
                return (to, words, high, false);
            }
        }

        return (to, name + number, Ink.Label, true);
    }

    // Lines along the roll stand above a board that lies, right of one that stands; the next strike's place has its extension line from the
    // board's side on.
    private static IEnumerable<Mark> Along(
        IEnumerable<(Point2 To, string Words, double High, bool Tight)> lines, Point2 from, Point2 side, bool level, Box board)
    {
        double off = Nearest;
        foreach ((Point2 to, string words, double high, bool tight) in lines)
        {
            // Beside an upright line the number stands left of it: the line gives way.
            off += tight && !level ? StrokeFont.Width(words, high) : 0;
            foreach (Mark mark in level
                ? Dimension.Level(new(from.X, side.Y), new(to.X, board.MaxY), board.MaxY + off, words, high)
                : Dimension.Upright(new(side.X, from.Y), new(board.MaxX, to.Y), board.MaxX + off, words, high))
            {
                yield return mark;
            }

            off += Step;
        }
    }

    private static IEnumerable<Mark> Across(DieDesign design, Func<Point2, Point2> paper, bool level, Box board)
    {
        double[] rows = Rows(design.Gang);
        double[] pitches = Pitches(design.Gang);
        if (rows.Length < 2)
        {
            yield break;
        }

        RowLines lines = new(design, paper, level, board);
        int period = Period(pitches);
        bool alike = period == 1 && pitches.Length > 1;
        int single = alike ? 0 : Math.Min(period, pitches.Length);
        double widest = pitches.Max(p => StrokeFont.Width(F(p), Ink.Label));
        double room = level ? Least : widest + (2 * Least);
        bool fits = single is > 0 and <= 4 && pitches.Take(single).All(p => p * lines.Scale >= room);
        double off = Nearest + (fits && level ? widest + 5 : 0);
        for (int i = 0; fits && i < single; i++)
        {
            foreach (Mark mark in lines.Between(rows[i], rows[i + 1], off, F(pitches[i])))
            {
                yield return mark;
            }
        }

        if (pitches.Length > 1)
        {
            double total = rows[^1] - rows[0];
            string words = alike ? $"{pitches.Length} x {F(pitches[0])} (= {F(total)})" : $"({F(total)})";
            foreach (Mark mark in lines.Between(rows[0], rows[^1], off + (fits ? Step : 0), words))
            {
                yield return mark;
            }
        }
    }

    // Dimension lines from row to row, beside a board that lies, above one that stands.
    private sealed record RowLines(DieDesign Design, Func<Point2, Point2> Paper, bool Level, Box Board)
    {
        // Mm of paper to a mm across the roll.
        public double Scale => Math.Abs(At(1) - At(0));

        public IEnumerable<Mark> Between(double a, double b, double away, string words) => Level
            ? Dimension.Upright(new(Side(a).X, At(a)), new(Side(b).X, At(b)), Board.MaxX + away, words)
            : Dimension.Level(new(At(a), Side(a).Y), new(At(b), Side(b).Y), Board.MaxY + away, words);

        private double At(double y)
        {
            Point2 at = Paper(new(0, y));
            return Level ? at.Y : at.X;
        }

        // A row is reached from the side of its last cavity.
        private Point2 Side(double y) => Design.Gang.Cavities
            .Where(c => Math.Abs(c.Placed.YMm - y) <= Same)
            .SelectMany(c => new[] { Paper(Reach(Design, c, new(1, 0))), Paper(Reach(Design, c, new(-1, 0))) })
            .MaxBy(p => Level ? p.X : p.Y);
    }

    // The first cavity along the roll of the uppermost or lowest row across.
    private static DieCavity First(DieGang gang, bool lowest)
    {
        double row = lowest ? gang.Cavities.Min(c => c.Placed.YMm) : gang.Cavities.Max(c => c.Placed.YMm);
        return gang.Cavities.Where(c => Math.Abs(c.Placed.YMm - row) <= Same).MinBy(c => c.Placed.XMm);
    }

    // How far a cavity reaches from its own origin towards one side, in the die's frame.
    private static Point2 Reach(DieDesign design, DieCavity cavity, Point2 towards)
    {
        Outline turned = design.Request.Layout.Parts[cavity.Placed.Part].Outline.Turned(double.DegreesToRadians(cavity.Placed.AngleDeg));
        return new Point2(cavity.Placed.XMm, cavity.Placed.YMm) + (towards * turned.Points.Max(p => p.Dot(towards)));
    }

    private static double[] Rows(DieGang gang)
    {
        List<double> rows = [];
        foreach (double y in gang.Cavities.Select(c => c.Placed.YMm).Order())
        {
            if (rows.Count == 0 || y - rows[^1] > Same)
            {
                rows.Add(y);
            }
        }

        return [.. rows];
    }

    private static double[] Pitches(DieGang gang) => Rows(gang) is var rows ? [.. rows.Skip(1).Zip(rows, (b, a) => b - a)] : [];

    // After how many the pitches begin anew.
    private static int Period(double[] pitches) =>
        Enumerable.Range(1, Math.Max(1, pitches.Length))
            .First(m => Enumerable.Range(0, pitches.Length).All(i => Math.Abs(pitches[i] - pitches[i % m]) < Same));

    private static string F(double value) => value.ToString("0.000", CultureInfo.InvariantCulture);
}
