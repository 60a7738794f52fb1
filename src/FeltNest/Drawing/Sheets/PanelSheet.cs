using System.Globalization;
using FeltNest.Ball;
using FeltNest.Die;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Drawing.Strain;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Budget;
using FeltNest.Panel.Thickness;
using FeltNest.Seam;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of a flat panel: outline with main dimensions, strain maps, the risk of puckers, the ball from three sides, key
/// figures; the panel true to size.</summary>
internal static class PanelSheet
{
    // The sheet is at least as wide as an upright A4; margin, room for the dimension left of the panel and for its extension, mm.
    private const double LeastWidth = 210;
    private const double Margin = 10;
    private const double LeftRoom = 16;
    private const double RightRoom = 6;

    // Heights of the blocks besides the panels themselves, mm.
    private const double TitleBlock = 17;
    private const double DimensionBlock = 22;
    private const double MapTitle = 6;
    private const double MapGap = 4;
    private const double BarBlock = 17;
    private const double ScaleBlock = 10;
    private const double BallRadius = 27;
    private const double BallBlock = (2 * BallRadius) + 18;

    private const double TrialBlock = 8;

    // Long because it lists the parts of the sheet in the order they are drawn.
    /// <summary>Draws the sheet.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="budget">The budget of its seam gap; null where none was made.</param>
    public static Sheet Draw(BallSpec ball, FlatPanel panel, GapBudget? budget = null)
    {
        Outline outline = panel.Outline;
        double width = Math.Max(LeastWidth, outline.MaxX - outline.MinX + LeftRoom + RightRoom + (2 * Margin));
        double high = outline.MaxY - outline.MinY;
        IReadOnlyList<(string, string)>[] figures = PanelFigures.Columns(ball, panel, MassBudget.Of(ball, panel.AreaMm2), budget);
        StrainMesh map = new(panel.Field);
        LayerMaps layers = new(panel, map, ThroughThickness.Of(ball, panel), Margin);
        double height = (2 * Margin) + TitleBlock + (high + DimensionBlock) + ScaleBlock + (2 * (high + MapTitle + MapGap)) + BarBlock
            + layers.RiskHeight + layers.LayerHeight + BallBlock + figures.Max(FigureTable.Height) + TrialBlock;

        List<Mark> marks = [];
        Cursor cursor = new(height - Margin);
        double centreX =
            Margin + LeftRoom - outline.MinX + ((width - (2 * Margin) - LeftRoom - RightRoom - (outline.MaxX - outline.MinX)) / 2);
        marks.Add(new GroupMark("title", [.. Title(ball, panel, cursor.Take(TitleBlock), width)]));
        double top = cursor.Take(high + DimensionBlock);
        marks.Add(new GroupMark("outline", [.. OutlineView(panel, new Point2(centreX, top - 4 - outline.MaxY))]));
        top = cursor.Take(ScaleBlock);
        marks.Add(new GroupMark("scale-bar",
        [
            .. ScaleBar.Draw(new Point2(Margin + 4, top - 7), 100, 1),
            .. WarpView(ball, new Point2(Margin + 126, top - 7)),
        ]));

        StrainScale scale =
            StrainScale.Reaching(panel.Field.Samples.Max(s => Math.Max(Math.Abs(s.MajorPercent), Math.Abs(s.MinorPercent))));
        marks.Add(
            MapView(
                "greater-strain", "Greater principal strain of the neutral layer", panel, map, scale, s => s.MajorPercent,
                cursor.Take(high + MapTitle + MapGap),
                centreX));
        marks.Add(
            MapView(
                "lesser-strain", "Lesser principal strain of the neutral layer, across the greater one", panel, map, scale,
                s => s.MinorPercent,
                cursor.Take(high + MapTitle + MapGap), centreX));
        top = cursor.Take(BarBlock);
        const double barWidth = 150;
        marks.Add(new GroupMark("strain-bar", [.. StrainMap.Bar(scale, new Point2((width - barWidth) / 2, top - 9), barWidth)]));

        marks.Add(new GroupMark("risk", [.. layers.Risk(cursor.Take(layers.RiskHeight), width)]));
        marks.Add(new GroupMark("layers", [.. layers.Layers(cursor.Take(layers.LayerHeight), width)]));
        marks.Add(new GroupMark("ball", [.. BallViews(ball, StrainMesh.Coarse(panel.Field), scale, cursor.Take(BallBlock), width)]));

        double column = (width - (2 * Margin) - 8) / 2;
        marks.Add(new GroupMark("figures",
        [
            .. FigureTable.Draw(new Point2(Margin, cursor.Y), column, figures[0]),
            .. FigureTable.Draw(new Point2(width - Margin - column, cursor.Y), column, figures[1]),
        ]));
        marks.Add(new GroupMark("trial", [Trial(new Point2(Margin, Margin))]));
        string shape = string.Create(
            CultureInfo.InvariantCulture, $"{panel.LengthMm:0.00} mm long, {panel.WidthMm:0.00} mm wide, waist {panel.WaistMm:0.00} mm");
        return new Sheet
        {
            Title = $"Flat panel of {ball.Name}",
            Description = $"Cut outline true to size, {shape}, with maps of the greater and the lesser principal strain of the neutral "
                + "layer and of the felt's faces, of the risk of puckers, and the ball from three sides.",
            WidthMm = width,
            HeightMm = height,
            Symbols = [],
            Marks = marks,
        };
    }

    // On the waist of one panel, on its tip, and between: there the two panels meet.
    private static IEnumerable<Mark> BallViews(BallSpec ball, StrainMesh mesh, StrainScale scale, double top, double width)
    {
        (string Words, BallSide Side)[] sides =
        [
            ("on a waist", new BallSide(new SpherePoint(0, 0, 1), new SpherePoint(1, 0, 0))),
            ("on a tip", new BallSide(new SpherePoint(1, 0, 0), new SpherePoint(0, 1, 0))),
            ("on the seam", new BallSide(new SpherePoint(1, -1, 0.6), new SpherePoint(1, 1, 0))),
        ];
        double? warp = ball.Panel.WarpAngleDeg is { } design ? -double.DegreesToRadians(design) : null;
        string lines = warp is null ? string.Empty : ", fine lines: warp";
        yield return Words(
            $"The ball from three sides: greater principal strain of the neutral layer{lines}", new Point2(width / 2, top - Ink.Note - 1));
        for (int i = 0; i < sides.Length; i++)
        {
            Point2 centre = new((width / 2) + ((i - 1) * ((2 * BallRadius) + 8)), top - 6 - BallRadius);
            yield return new GroupMark(
                $"ball-{i + 1}",
                [.. CoveredBall.Draw(mesh, sides[i].Side, s => s.MajorPercent, scale, warp, centre, BallRadius)]);
            yield return Words(sides[i].Words, centre - new Point2(0, BallRadius + Ink.Note + 2));
        }
    }

    private static TextMark Words(string text, Point2 at) =>
        new() { Text = text, At = at, HeightMm = Ink.Note, Colour = Ink.Dark, Anchor = TextAnchor.Middle };

    private static TextMark Trial(Point2 at) =>
        new() { Text = SafetyWords.Trial, At = at, HeightMm = Ink.Note, Colour = Ink.Dark };

    private static IEnumerable<Mark> Title(BallSpec ball, FlatPanel panel, double top, double width)
    {
        double room = width - (2 * Margin);
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"Flat panel: {ball.Name}", Ink.Title, room),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        string edge = ball.Panel.Flattening == FlatteningMethod.Elastic ? $", edge {EnumWord.Of(ball.Panel.Edge)}" : string.Empty;
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"seen from the nap side   SCALE 1:1   mm   {EnumWord.Of(ball.Panel.Flattening)}{edge}   seam "
                + $"{EnumWord.Of(ball.Seam.Curve)}, waist {panel.Sphere.WaistMm:0.##}");
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(words, Ink.Note, room),
            At = new Point2(Margin, top - 12),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(width - Margin, top - 15))], Ink.Wide);
    }

    private static IEnumerable<Mark> OutlineView(FlatPanel panel, Point2 at)
    {
        Outline outline = panel.Outline;
        yield return new PathMark([new Chain(panel.Arcs.Vertices, true).Placed(1, 0, at)], Ink.Wide, Ink.Copy);
        // The centre line leaves out the place of the waist's number.
        yield return new PathMark(
            [
                Chain.Open(at + new Point2(outline.MinX - 4, 0), at + new Point2(-6, 0)),
                Chain.Open(at + new Point2(1, 0), at + new Point2(outline.MaxX + 4, 0)),
            ], Ink.Centre);
        Point2 left = Extreme(outline, p => -p.X);
        Point2 right = Extreme(outline, p => p.X);
        Point2 low = Extreme(outline, p => -p.Y);
        Point2 high = Extreme(outline, p => p.Y);
        string Mm(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);

        foreach (Mark mark in Dimension.Level(at + left, at + right, at.Y + outline.MinY - 10, Mm(panel.LengthMm)))
        {
            yield return mark;
        }

        foreach (Mark mark in Dimension.Upright(at + low, at + high, at.X + outline.MinX - 9, Mm(panel.WidthMm)))
        {
            yield return mark;
        }

        foreach (Mark mark in Dimension.Upright(
            at + new Point2(0, -panel.WaistMm / 2), at + new Point2(0, panel.WaistMm / 2), at.X, Mm(panel.WaistMm)))
        {
            yield return mark;
        }
    }

    // The warp in the panel's frame: a panel laid at the design angle has +x of the roll at minus that angle.
    private static IEnumerable<Mark> WarpView(BallSpec ball, Point2 at)
    {
        if (ball.Panel.WarpAngleDeg is not { } design)
        {
            yield return new TextMark { Text = "warp: any direction", At = at, HeightMm = Ink.Note, Colour = Ink.Dark };
            yield break;
        }

        // At any angle the arrow keeps clear of the map's title below it.
        const double half = 7;
        const double rise = 4;
        Point2 way = new Point2(half, 0).Turned(-design * Math.PI / 180);
        Point2 middle = at + new Point2(half, rise);
        foreach (Mark mark in Arrows.Line(middle - way, middle + way, Ink.Wide, 3, both: true))
        {
            yield return mark;
        }

        yield return new TextMark
        {
            Text = string.Create(CultureInfo.InvariantCulture, $"warp; panel laid at {design:0.##}\u00B0 to it"),
            At = at + new Point2((2 * half) + 4, 0),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        };
    }

    private static GroupMark MapView(
        string id, string words, FlatPanel panel, StrainMesh map, StrainScale scale, Func<StrainSample, double> pick, double top,
        double centreX)
    {
        StrainSample most = panel.Field.Samples.MaxBy(pick);
        StrainSample least = panel.Field.Samples.MinBy(pick);
        string range = string.Create(
            CultureInfo.InvariantCulture, $"{words}: {pick(least):+0.0;-0.0;0.0} % (square) to {pick(most):+0.0;-0.0;0.0} % (ring)");
        Point2 at = new(centreX, top - MapTitle - panel.Outline.MaxY);
        const double mark = 1.1;
        Pen ring = new(0.3, Ink.Dark);
        return new GroupMark(id,
        [
            new TextMark
            {
                Text = range,
                At = new Point2(centreX, top - Ink.Note - 1),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
                Anchor = TextAnchor.Middle,
            },
            .. StrainMap.Bands(map, pick, scale, at),
            new PathMark([new Chain(panel.Arcs.Vertices, true).Placed(1, 0, at)], Ink.Narrow),
            new PathMark([Chain.Circle(at + most.Place, mark)], ring, Ink.Cloth),
            new PathMark([Chain.Rectangle(Around(at + least.Place, mark))], ring, Ink.Cloth),
        ]);
    }

    private static Box Around(Point2 p, double half) =>
        new() { MinX = p.X - half, MinY = p.Y - half, MaxX = p.X + half, MaxY = p.Y + half };

    private static Point2 Extreme(Outline outline, Func<Point2, double> direction) => outline.Points.MaxBy(direction);

    // Goes down the sheet block by block.
    private sealed class Cursor(double top)
    {
        public double Y { get; private set; } = top;

        public double Take(double height)
        {
            double at = Y;
            Y -= height;
            return at;
        }
    }
}
