using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Check;
using FeltNest.Die.Proof;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>A die as it was made: each cavity where it belongs, an arrow to where it is, drawn larger, and the verdict.</summary>
internal static class MadeDieSheet
{
    private const double Width = 297;
    private const double Height = 210;
    private const double Left = 20;
    private const double Right = 287;
    private const int MostBends = 7;

    private static readonly Colour Out = Colour.Of(0xB2402A);

    private static readonly string[] Caution =
    [
        "The verdict is a matter of shape and place alone. Angles to set are a proposal: bend a test piece first.",
    ];

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(MadeDie made, StatedDie die)
    {
        Dictionary<int, IReadOnlyList<ArcVertex>> edges = die.Edges.ToDictionary(pair => pair.Key, pair => pair.Value.Vertices);
        DrawingScale scale = DrawingScale.Fitting(die.BoardLengthMm, die.BoardWidthMm, Right - Left, 92, 1);
        Point2 corner = new(
            ((Left + Right) / 2) - (die.BoardLengthMm * scale.Factor / 2), 78 + ((92 - (die.BoardWidthMm * scale.Factor)) / 2));

        // Arrows are so many times larger than the error that one as long as the tolerance takes about 8 mm of paper.
        double factor = Math.Max(1, Math.Round(8 / Math.Max(made.PositionMm, 0.05)));
        return new Sheet
        {
            Title = $"{made.Name}: die as made",
            Description = $"Cavities in their places, how far each is off, and the verdict: {ConformityWords.Of(made.Verdict)}.",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                .. Head(made),
                new PathMark(
                    [
                        Chain.Rectangle(new Box
                        {
                            MinX = corner.X,
                            MinY = corner.Y,
                            MaxX = corner.X + (die.BoardLengthMm * scale.Factor),
                            MaxY = corner.Y + (die.BoardWidthMm * scale.Factor),
                        }),
                    ], Ink.Narrow),
                .. die.Cavities.SelectMany((placed, i) => Cavity(
                    edges[placed.Part], placed, i + 1, made.Cavities.FirstOrDefault(c => c.Number == i + 1),
                    p => corner + (p * scale.Factor), scale.Factor, factor)),
                .. FigureTable.Draw(new Point2(Left, 70), 112, Figures(made, scale, factor)),
                .. Bends(made),
                .. TextBlock.Draw(new Point2(Left, 34), Right - Left, [.. Caution, .. SafetyWords.Brief]),
            ],
        };
    }

    private static IEnumerable<Mark> Head(MadeDie made)
    {
        yield return new TextMark
        {
            Text = ConformityWords.Of(made.Verdict),
            At = new Point2(Left, Height - 20),
            HeightMm = 7,
            Colour = made.Verdict == Conformity.Conforms ? Ink.Dark : Ink.Classes[1],
        };
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"{made.Name}: die as made", Ink.Title, Right - Left),
            At = new Point2(Left, Height - 29),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
    }

    private static IEnumerable<Mark> Cavity(
        IReadOnlyList<ArcVertex> edge, PlacedPanel placed, int number, MadeCavity? made, Func<Point2, Point2> paper, double scale,
        double factor)
    {
        Chain drawn =
            new Chain(edge, true).Placed(scale, double.DegreesToRadians(placed.AngleDeg), paper(new Point2(placed.XMm, placed.YMm)));
        bool bad = made is not null && (made.Position == Conformity.DoesNotConform || made.Edge.Verdict == Conformity.DoesNotConform);
        Pen pen = made is null ? new Pen(0.25, Ink.Soft, 2, 1) : new Pen(0.35, bad ? Out : Ink.Dark);
        yield return new PathMark([drawn], pen);
        Point2 middle = paper(made?.Wanted ?? new Point2(placed.XMm, placed.YMm));
        yield return new TextMark
        {
            Text = number.ToString(CultureInfo.InvariantCulture),
            At = middle + new Point2(1.2, 1.2),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        if (made is not null)
        {
            yield return new PathMark([Chain.Circle(middle, 0.4)], null, pen.Colour);
            yield return new PathMark([Chain.Open(middle, middle + (made.OffMm * factor))], new Pen(0.5, pen.Colour));
        }
    }

    private static IReadOnlyList<(string Name, string Value)> Figures(MadeDie made, DrawingScale scale, double factor) =>
    [
        (
            "widest zone of an edge",
            $"{F(made.Worst.Edge.ZoneMm)} mm, cavity {made.Worst.Number}; {F(made.Rule.ToleranceMm)} allowed"),
        (
            "farthest off its place",
            $"{F(made.Farthest.OffMm.Length)} mm, cavity {made.Farthest.Number}; {F(made.PositionMm / 2)} allowed"),
        ("mean off the edges, set back next", $"{F(made.MeanOffMm, "+0.000;-0.000")} mm"),
        ("cavities measured", $"{made.Cavities.Count} of {made.Cavities.Count + made.NotMeasured.Count}"),
        (
            "uncertainty, k = 2",
            made.Rule.UncertaintyMm is { } expanded ? $"{F(expanded)} mm" : "unknown: no proof by ISO 14253-1"),
        ("drawn", $"SCALE {scale.Words}, errors {F(factor, "0")} times as large"),
        ("seen from", made.Mirrored ? "the other side, turned over here" : "the nap side"),
    ];

    private static IEnumerable<Mark> Bends(MadeDie made)
    {
        if (made.Bends.Count == 0)
        {
            return [];
        }

        return CellTable.Draw(
            new Point2(Left + 122, 70),
            [("bend", 16), ("at mm", 30), ("wanted deg", 26), ("got deg", 22), ("opened %", 22), ("set deg", 22)],
            made.Bends.Take(MostBends).Select(b => (string[])
            [
                $"{b.Part + 1}.{b.Bend.Number}", $"{F(b.Bend.Place.X, "0")}, {F(b.Bend.Place.Y, "0")}", F(b.Bend.WantedDeg, "0.00"),
                F(b.Bend.GotDeg, "0.00"), F(100 * b.Bend.OpenedShare, "0.00"), F(b.Bend.SetDeg, "0.00"),
            ]));
    }

    private static string F(double value, string format = "0.###") =>
        (Math.Round(value, 3) + 0.0).ToString(format, CultureInfo.InvariantCulture);
}
