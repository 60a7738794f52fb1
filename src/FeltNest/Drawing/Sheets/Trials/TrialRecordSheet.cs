using System.Globalization;
using FeltNest.Ball;
using FeltNest.Die;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Trial;
using FeltNest.Seam;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Trials;

/// <summary>The sheet on which a trial wrap is recorded: numbered places on the ball and on the flat panel, and a table to fill
/// in.</summary>
internal static class TrialRecordSheet
{
    // A4 upright; margin, radius of the balls, and the table's row, mm.
    private const double Width = 210;
    private const double Height = 297;
    private const double Margin = 12;
    private const double BallRadius = 24;
    private const double RowStep = 6;

    // Balls that the table has columns for.
    private const int Balls = 5;

    private static readonly double[] Columns = [12, 38, 26];

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(BallSpec ball, FlatPanel panel)
    {
        SeamCurve seam = SeamCurve.For(ball.Seam, ball.FittedRadiusMm);
        const double balls = Height - Margin - 24 - BallRadius;
        const double flat = balls - BallRadius - 44;
        return new Sheet
        {
            Title = $"Trial wrap of {ball.Name}: record",
            Description = "numbered places round the seam, on the ball and on the flat panel, with a table to fill in",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                new GroupMark("title", [.. Title(ball)]),
                new GroupMark("balls", [.. BallViews(seam, balls)]),
                new GroupMark("panel", [.. Flat(panel, new Point2(Margin + 48, flat))]),
                new GroupMark("how", [.. TextBlock.Draw(new Point2(Margin + 100, flat + 34), Width - (2 * Margin) - 100, How(ball))]),
                new GroupMark("table", [.. Table(ball, seam, flat - 38)]),
                new GroupMark("trial", [Words(SafetyWords.Trial, new Point2(Margin, Margin - 6), Ink.Note)]),
            ],
        };
    }

    private static IEnumerable<Mark> Title(BallSpec ball)
    {
        const double top = Height - Margin;
        yield return Words(
            StrokeFont.Fitted($"Trial wrap: {ball.Name}", Ink.Title, Width - (2 * Margin)), new Point2(Margin, top - Ink.Title), Ink.Title);
        yield return Words(
            Invariant(
                $"gap aimed at {ball.Seam.SeamGapMm:0.##} mm      date ______________   wrapped by ______________   felt lot "
                    + $"______________"),
            new Point2(Margin, top - 12), Ink.Note);
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }

    private static IEnumerable<Mark> BallViews(SeamCurve seam, double y)
    {
        (string Words, BallSide Side)[] sides =
        [
            ("seen on the waist of panel A", new BallSide(new SpherePoint(0, 0, 1), new SpherePoint(1, 0, 0))),
            ("seen on the waist of panel B", new BallSide(new SpherePoint(0, 0, -1), new SpherePoint(0, 1, 0))),
            ("seen on the seam, A on the left", new BallSide(new SpherePoint(1, -1, 0), new SpherePoint(0, 0, -1))),
        ];
        for (int i = 0; i < sides.Length; i++)
        {
            Point2 centre = new((Width / 2) + ((i - 1) * 64), y);
            foreach (Mark mark in NumberedBall.Draw(seam, sides[i].Side, centre, BallRadius))
            {
                yield return mark;
            }

            yield return Words(sides[i].Words, centre - new Point2(0, BallRadius + 6), Ink.Note) with { Anchor = TextAnchor.Middle };
        }
    }

    // The panel with its numbers as panel A outside its edge, and as panel B inside.
    private static IEnumerable<Mark> Flat(FlatPanel panel, Point2 at)
    {
        double scale = Math.Min(1, 84 / panel.LengthMm);
        IReadOnlyList<EdgePoint> edge = panel.EdgeMap;
        Point2[] line = [.. edge.Select(p => at + (new Point2(p.U, p.V) * scale))];
        yield return new PathMark([Chain.Ring(line)], Ink.Wide);
        int step = edge.Count / TrialPlaces.Count;
        for (int i = 0; i < TrialPlaces.Count; i++)
        {
            int here = i * step;
            Point2 along = line[(here + 1) % line.Length] - line[(here + line.Length - 1) % line.Length];
            Point2 outward = along.Left * (-1 / along.Length);
            int mate = (TrialPlaces.Count + (TrialPlaces.Count / 4) - i) % TrialPlaces.Count;
            yield return new PathMark([Chain.Circle(line[here], 0.8)], null, Ink.Dark);
            yield return Number(i + 1, line[here] + (outward * 3), Ink.Dark);
            yield return Number(mate + 1, line[here] - (outward * 3), Colour.Of(0x9C4A0B));
        }

        yield return Words("flat panel, numbers of A outside, of B inside", at - new Point2(0, 33), Ink.Note) with
        {
            Anchor = TextAnchor.Middle,
        };
    }

    private static TextMark Number(int number, Point2 at, Colour colour) => new()
    {
        Text = number.ToString(CultureInfo.InvariantCulture),
        At = at - new Point2(0, Ink.Note / 2),
        HeightMm = Ink.Note,
        Colour = colour,
        Anchor = TextAnchor.Middle,
    };

    private static string[] How(BallSpec ball) =>
    [
        "1. Mark one panel A, the other B. Number the seam from the waist of A on, counter-clockwise round A. Use the mm of the table.",
        "2. Read the gap across the seam with a feeler or a loupe, mm; a lap below 0. At least eight places a ball, with 1, 5, 9, 13.",
        Invariant(
            $"3. Lay a thin tape across the waists over the felt, from the middle of the seam to the middle: "
                + $"{TrialPlaces.OuterWaistMm(ball):0.0} mm ")
            + "is wanted. Gaps alone do not tell where the seam lies.",
        "4. Three balls or more, wrapped by the usual hand, tell the panel from the wrapping.",
        "5. Write a list with the columns ball, place, gapMm, waistMm (at 1 or 9 for A, at 5 or 13 for B).",
    ];

    private static IEnumerable<Mark> Table(BallSpec ball, SeamCurve seam, double top)
    {
        IReadOnlyList<double> lengths = TrialPlaces.Lengths(seam);
        string[][] rows =
        [
            ["place", "where", "mm along seam", .. Enumerable.Range(1, Balls).Select(i => $"ball {i}: gap")],
            .. Enumerable.Range(1, TrialPlaces.Count).Select(place => new[]
            {
                Invariant($"{place}"), TrialPlaces.Words(place), Invariant($"{lengths[place - 1] * ball.FinishedDiameterMm / 2:0.0}"),
            }),
            ["", "waist of A", "mm"], ["", "waist of B", "mm"],
        ];
        double wide = (Width - (2 * Margin) - Columns.Sum()) / Balls;
        return BlankTable.Draw(new Point2(Margin, top), [.. Columns, .. Enumerable.Repeat(wide, Balls)], RowStep, rows);
    }

    private static TextMark Words(string text, Point2 at, double height) => new()
    {
        Text = text,
        At = at,
        HeightMm = height,
        Colour = Ink.Dark,
    };
}
