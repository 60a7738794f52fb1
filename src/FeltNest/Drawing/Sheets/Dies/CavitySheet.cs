using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>One cavity with its dimensions, joint, bridges and the table of its arcs.</summary>
internal static class CavitySheet
{
    // Room around the outline for dimensions, mm of paper.
    private const double DimensionRoom = 34;

    /// <summary>Draws the sheet of a part as number <paramref name="number"/> of <paramref name="count"/>.</summary>
    public static Sheet Draw(DieDesign design, int part, int number, int count)
    {
        DieOrder order = design.Request.Order;
        DieEdge edge = design.Edges[part]!;
        Box extent = DieParts.Extent(edge);
        (PaperSize size, DrawingScale scale) = Chosen(extent, CellTable.Height(edge.Pieces.Count));
        SheetPlace place = new()
        {
            Number = number,
            Count = count,
            Scale = scale.Words,
            Part = DieParts.OfPart(design, part, "One cavity"),
        };
        Point2 top = DieParts.ColumnTop(size);
        double left = size.Space.MinX + DieParts.Rim;
        double right = top.X - DieParts.Rim;
        (IEnumerable<Mark> safety, double safetyHigh) = DieParts.BriefSafety(new Point2(left, size.Space.MinY + 4), right - left);
        Point2 centre = new((left + right) / 2, size.Space.MaxY - DimensionRoom - (extent.MaxY * scale.Factor));
        Point2 Paper(Point2 p) => ((order.DieView ? new Point2(-p.X, p.Y) : p) * scale.Factor) + centre;
        double y = Paper(new(0, extent.MinY)).Y - 20;
        List<Mark> marks =
        [
            .. DieParts.Base(size, order, place),
            .. Arcs(top, edge, DieParts.TitleTop(size), order.DieView ? -1 : 1),
            .. safety,
            .. Outline(design, part, extent, Paper),
            .. Figures(design, part, extent, new Point2(left, y), right - left),
            .. DieParts.Bar(new Point2(left + 2, size.Space.MinY + safetyHigh + 14)),
        ];
        return new Sheet
        {
            Title = $"{order.Name}: {DieParts.OfPart(design, part, "one cavity")}",
            Description = $"Cutting edge of one cavity at {scale.Words} with dimensions and the table of its {edge.Pieces.Count} arcs.",
            WidthMm = size.WidthMm,
            HeightMm = size.HeightMm,
            Symbols = [],
            Marks = marks,
        };
    }

    private static IEnumerable<Mark> Outline(DieDesign design, int part, Box extent, Func<Point2, Point2> paper)
    {
        DieOrder order = design.Request.Order;
        DieEdge edge = design.Edges[part]!;
        return
        [
            new PathMark([DieParts.Seen(edge, order, paper)], Ink.Wide),
            .. Axes(edge, extent, paper),
            .. Dimensions(edge, extent, paper),
            .. Profile(order, edge, paper),
            .. OnEdge(design, edge, design.Places[part]!, paper),
        ];
    }

    private static (PaperSize Size, DrawingScale Scale) Chosen(Box extent, double table)
    {
        foreach (double most in new[] { 1.0, 0.5, 0.2, 0.1 })
        {
            foreach (PaperSize size in PaperSize.All.Where(s => s.Name != "A4"))
            {
                double room = DieParts.ColumnTop(size).X - size.Space.MinX - (2 * DieParts.Rim) - 30;
                double high = size.Space.Height - (2 * DimensionRoom) - 90;
                DrawingScale scale = DrawingScale.Fitting(extent.Width, extent.Height, room, high, 1);
                bool tableFits = table < size.Space.Height - TitleBlock.Height - TitleBlock.Strip - 8 || size.Name == "A0";
                if (scale.Factor >= most && tableFits)
                {
                    return (size, scale);
                }
            }
        }

        PaperSize largest = PaperSize.Of("A0");
        return (largest, DrawingScale.Fitting(
            extent.Width, extent.Height, DieParts.ColumnTop(largest).X - 100, largest.Space.Height - 200, 1));
    }

    private static IEnumerable<Mark> Arcs(Point2 top, DieEdge edge, double bottom, double side)
    {
        (string, double)[] columns =
        [
            ("arc", 11), ("from x", 25), ("from y", 25), ("centre x", 29), ("centre y", 29), ("radius", 29), ("sweep", 28),
        ];
        IReadOnlyList<EdgePiece> pieces = edge.Pieces;
        int most = Math.Max(1, (int)((top.Y - bottom - 8) / CellTable.RowStep) - 1);

        // The table says what the drawing shows: from the die's side x and the sense of the sweep change sign.
        string[] Row(EdgePiece p, int i) => p.Turn == 0
            ? [$"{i + 1}", F(side * p.Start.X), F(p.Start.Y), "-", "-", "straight", "-"]
            :
            [
                $"{i + 1}", F(side * p.Start.X), F(p.Start.Y), F(side * p.Centre.X), F(p.Centre.Y), F(p.RadiusMm),
                $"{F(side * p.Turn * 180 / Math.PI)}\u00B0",
            ];
        IEnumerable<string[]> rows = pieces.Take(pieces.Count > most ? most - 1 : most).Select(Row);
        return CellTable.Draw(
            top, columns,
            pieces.Count > most
                ? rows.Append([
                    string.Empty, string.Empty, string.Empty, string.Empty, string.Empty, $"and {pieces.Count - most + 1} more:", "see DXF",
                ])
                : rows);
    }

    // Axes only outside and a little inside, so that no number stands on them.
    private static IEnumerable<Mark> Axes(DieEdge edge, Box extent, Func<Point2, Point2> paper)
    {
        const double past = 4;
        double inside = Math.Min(12, extent.Width / 8);
        (double low, double high) = DieParts.Waist(edge) ?? (extent.MinY, extent.MaxY);
        yield return new PathMark(
            [
                Chain.Open(paper(new(extent.MinX - past, 0)), paper(new(extent.MinX + inside, 0))),
                Chain.Open(paper(new(extent.MaxX - inside, 0)), paper(new(extent.MaxX + past, 0))),
                Chain.Open(paper(new(0, extent.MinY - past)), paper(new(0, low))),
                Chain.Open(paper(new(0, high)), paper(new(0, extent.MaxY + past))),
            ],
            Ink.Centre);
    }

    private static IEnumerable<Mark> Dimensions(DieEdge edge, Box extent, Func<Point2, Point2> paper)
    {
        Point2 low = paper(new(extent.MinX, extent.MinY));
        Point2 high = paper(new(extent.MaxX, extent.MaxY));
        (double minX, double maxX) = (Math.Min(low.X, high.X), Math.Max(low.X, high.X));
        foreach (Mark mark in Dimension.Level(
            new(minX, paper(new(extent.MinX, 0)).Y), new(maxX, paper(new(extent.MaxX, 0)).Y), high.Y + 18, $"({F(extent.Width)})"))
        {
            yield return mark;
        }

        // The greatest width is measured beside the outline, so far off that a number too long for its line stands clear of the length's
        // extension line.
        string width = $"({F(extent.Height)})";
        double letters = StrokeFont.Width(width, Ink.Label);
        double beside = high.Y - low.Y < letters + 6 ? letters + 7 : 12;
        foreach (Mark mark in Dimension.Upright(new(maxX - 20, low.Y), new(maxX - 20, high.Y), maxX + beside, width))
        {
            yield return mark;
        }

        if (DieParts.Waist(edge) is { } waist && waist.High - waist.Low < extent.Height - 0.01)
        {
            Point2 a = paper(new(0, waist.Low));
            Point2 b = paper(new(0, waist.High));
            foreach (Mark mark in Dimension.Upright(a, b, a.X, $"({F(waist.High - waist.Low)})"))
            {
                yield return mark;
            }
        }
    }

    // The tolerance of the edge: its leader comes from above to the upper left of the outline, where no other dimension stands; beside an
    // outline too narrow for that, from the left.
    private static IEnumerable<Mark> Profile(DieOrder order, DieEdge edge, Func<Point2, Point2> paper)
    {
        const double above = 9;
        const double share = 0.4;
        const double aside = 12;
        string tolerance = order.Tolerances.EdgeProfileMm.ToString("0.0##", CultureInfo.InvariantCulture);
        // Inside the pieces: at a corner a leader would point to neither side.
        Point2[] places = [.. edge.Pieces.SelectMany(p => Enumerable.Range(0, 8).Select(k => paper(p.At((k + 0.5) / 8))))];
        double minX = places.Min(p => p.X);
        double wide = places.Max(p => p.X) - minX;
        double high = places.Max(p => p.Y);
        if ((wide * (1 - share)) - 4 < ToleranceFrame.Reach(tolerance))
        {
            Point2 side = places.OrderBy(p => Math.Round(p.X, 3)).ThenBy(p => Math.Abs(p.Y - ((places.Min(q => q.Y) + high) / 2))).First();
            return ToleranceFrame.ProfileOfLine(side, side + new Point2(-aside, 0), true, tolerance);
        }

        Point2 tip =
            places.Where(p => p.X <= minX + (share * wide)).OrderByDescending(p => Math.Round(p.Y, 3)).ThenByDescending(p => p.X).First();
        return ToleranceFrame.ProfileOfLine(tip, new Point2(tip.X, high + above), false, tolerance);
    }

    private static IEnumerable<Mark> OnEdge(DieDesign design, DieEdge edge, RulePlaces places, Func<Point2, Point2> paper) =>
    [
        .. LeastRadius(edge, paper),
        .. Bridges(places, design.Request.Order.Board.BridgeMm / 2, paper),
        new PathMark([Chain.Circle(paper(places.Joint), 1.6)], Ink.Narrow),
    ];

    // From inside the outline where it bulges out, from outside where it is hollow: the number stands clear of the dimensions either way.
    private static IEnumerable<Mark> LeastRadius(DieEdge edge, Func<Point2, Point2> paper)
    {
        EdgePiece tight = Tightest(edge, paper);
        if (!double.IsFinite(tight.RadiusMm))
        {
            yield break;
        }

        Point2 tip = paper(tight.Middle);
        Point2 middle = paper(tight.Centre);
        Point2 way = (tip - middle) * (1 / (tip - middle).Length);
        Point2 outer = tip - (way * 9);
        bool leftward = outer.X < tip.X;
        yield return new PathMark([Chain.Open(outer, tip)], Ink.Narrow);
        yield return Arrows.Head(outer, tip, 2.5, Ink.Dark);
        yield return new TextMark
        {
            Text = $"R {F(tight.RadiusMm)} least",
            At = outer + new Point2(leftward ? -2 : 2, 1.2),
            HeightMm = Ink.Label,
            Colour = Ink.Dark,
            Anchor = leftward ? TextAnchor.End : TextAnchor.Start,
        };
    }

    // Of equal ones the lowest on the sheet: above the outline the tolerance has its place.
    private static EdgePiece Tightest(DieEdge edge, Func<Point2, Point2> paper)
    {
        double least = edge.Pieces.Min(p => p.RadiusMm);
        return edge.Pieces
            .Where(p => p.RadiusMm <= least * (1 + 1e-9))
            .OrderBy(p => Math.Round(paper(p.Middle).Y, 3))
            .ThenByDescending(p => paper(p.Middle).X)
            .First();
    }

    private static IEnumerable<Mark> Bridges(RulePlaces places, double half, Func<Point2, Point2> paper)
    {
        foreach ((Point2 place, Point2 direction) in places.Bridges)
        {
            Point2 across = direction.Left * 2.5;
            yield return new PathMark(
                [
                    Chain.Open(paper(place + (direction * half) + across), paper(place + (direction * half) - across)),
                    Chain.Open(paper(place - (direction * half) + across), paper(place - (direction * half) - across)),
                ], Ink.Narrow);
        }
    }

    private static IEnumerable<Mark> Figures(DieDesign design, int part, Box extent, Point2 top, double width)
    {
        (DieEdge edge, RulePlaces places) = (design.Edges[part]!, design.Places[part]!);
        DieOrder order = design.Request.Order;
        double half = (width - 8) / 2;
        (string, string)[] one =
        [
            ("Edge", string.Empty), ("dimensioned line", "cutting edge"), ("bevel", DieParts.Bevel(order.Rule.Bevel)),
            ("profile of the edge (ISO 1101)", $"\u00B1{Mm(order.Tolerances.EdgeProfileMm / 2, "0.###")} mm all round, no datum"),
            ("arcs, off the true outline at most", $"{edge.Pieces.Count}, {Mm(edge.DeviationMm, "0.000")} mm"),
            ("length of cutting edge", $"{F(edge.Arcs.Perimeter)} mm"),
            ("length of rule, middle of its body", $"{F(design.RingMm(part))} mm"), ("area", $"{F(edge.Arcs.Area)} mm2"),
            ("corners (rule mitred)", $"{edge.Corners.Count}"),
            ("equal on both sides of", edge.Mirrors switch
            {
                EdgeMirrors.Both => "both axes",
                EdgeMirrors.AboutX => "the x axis",
                EdgeMirrors.AboutY => "the y axis",
                _ => edge.HalfTurn ? "no axis; a half-turn" : "no axis",
            }),
        ];
        (string, string)[] two =
        [
            ("Marks on the outline", string.Empty),
            ("ring: rule joint, at x, y", $"{F(order.DieView ? -places.Joint.X : places.Joint.X)}, {F(places.Joint.Y)}"),
            ("radius of the edge there", double.IsFinite(places.JointRadiusMm) ? $"{Mm(places.JointRadiusMm, "0.0")} mm" : "straight"),
            ("pairs of ticks: bridges", $"{places.Bridges.Count} of {Mm(order.Board.BridgeMm, "0.#")} mm"),
            ("least inside bend of the rule", $"{Mm(order.Rule.LeastBendMm)} mm"),
            ("warp to the x axis of the panel", Warp(design, part)), ("seen", order.DieView ? "die view" : "panel view, nap side"),
            ("dimensions in ( )", "for reference: the table holds"),
        ];
        return [.. FigureTable.Draw(top, half, one), .. FigureTable.Draw(top + new Point2(half + 8, 0), half, two)];
    }

    private static string Warp(DieDesign design, int part)
    {
        double angle = design.Gang.Cavities.First(c => c.Placed.Part == part).Placed.AngleDeg;
        double seen = Math.Round(design.Request.Order.DieView ? angle : -angle, 2) + 0.0;
        return string.Create(CultureInfo.InvariantCulture, $"{seen:0.00}\u00B0 in the gang");
    }

    private static string Mm(double value, string format = "0.00") => DieParts.Mm(value, format);

    private static string F(double value) => (Math.Round(value, 3) + 0.0).ToString("0.000", CultureInfo.InvariantCulture);
}
