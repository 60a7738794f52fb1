using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Rolls;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>The whole gang: board, cavities with numbers and coordinates, how it is struck, force and safety.</summary>
internal static class GangSheet
{
    // Room left of the board for its width, and below it for its length, arrows, words and the check bar, mm of paper.
    private const double RoomLeft = 18;
    private const double RoomBelow = 54;

    // A warning stands above arrows and words, mm of paper.
    private const double WarningFrom = 46;

    // Rows of coordinates side by side.
    private const int TableColumns = 2;

    /// <summary>Draws the sheet as number <paramref name="number"/> of <paramref name="count"/>.</summary>
    public static Sheet Draw(DieDesign design, int number, int count)
    {
        DieOrder order = design.Request.Order;
        DieGang gang = design.Gang;
        (PaperSize size, DrawingScale scale, bool turned) = Chosen(design);
        List<Mark> marks =
            DieParts.Base(size, order, new SheetPlace { Number = number, Count = count, Scale = scale.Words, Part = "Gang die" });
        Point2 top = DieParts.ColumnTop(size);
        double left = size.Space.MinX + DieParts.Rim;
        double right = top.X - DieParts.Rim;
        (IEnumerable<Mark> safety, double safetyHigh) = DieParts.Safety(new Point2(top.X, DieParts.TitleTop(size)), DieParts.Column);
        marks.AddRange(safety);
        List<(string, string)> figures = Figures(design);
        marks.AddRange(FigureTable.Draw(top, DieParts.Column - 2, figures));
        double tableTop = top.Y - FigureTable.Height(figures) - 5;
        marks.AddRange(Coordinates(design, new Point2(top.X, tableTop), tableTop - DieParts.TitleTop(size) - safetyHigh - 4));

        double wide = (turned ? gang.BoardWidthMm : gang.BoardLengthMm) * scale.Factor;
        double high = (turned ? gang.BoardLengthMm : gang.BoardWidthMm) * scale.Factor;
        double below = Below(design, size);
        double over = GangDimensions.OverhangMm(gang) * scale.Factor;
        double overLeft = order.DieView && !turned ? over : 0;
        double overRight = turned ? 0 : over - overLeft;
        double overUp = turned ? over : 0;
        Point2 corner = new(
            left + RoomLeft + overLeft + ((right - left - RoomLeft - GangDimensions.RoomAside - overLeft - overRight - wide) / 2),
            size.Space.MinY + below + ((size.Space.Height - below - GangDimensions.RoomAbove - overUp - high) / 2));
        Point2 Seen(Point2 p) => order.DieView ? new Point2(gang.BoardLengthMm - p.X, p.Y) : p;
        Point2 Paper(Point2 die) =>
            Seen(die) is var p && turned
                ? corner + (new Point2(gang.BoardWidthMm - p.Y, p.X) * scale.Factor)
                : corner + (Seen(die) * scale.Factor);
        marks.Add(
            new PathMark(
                [Chain.Rectangle(new Box { MinX = corner.X, MinY = corner.Y, MaxX = corner.X + wide, MaxY = corner.Y + high })], Ink.Wide));
        foreach (DieCavity cavity in gang.Cavities)
        {
            marks.AddRange(Cavity(design, cavity, Paper));
        }

        Point2 load = Paper(gang.LoadCentre);
        marks.Add(
            new PathMark(
                [
                    Chain.Open(load - new Point2(4, 0), load + new Point2(4, 0)),
                    Chain.Open(load - new Point2(0, 4), load + new Point2(0, 4)),
                ], new Pen(0.5, Ink.Classes[1])));
        marks.AddRange(
            BoardDimensions(
                order, corner, wide, high, turned ? gang.BoardWidthMm : gang.BoardLengthMm,
                turned ? gang.BoardLengthMm : gang.BoardWidthMm));
        marks.AddRange(
            GangDimensions.Draw(
                design, Paper, new Box { MinX = corner.X, MinY = corner.Y, MaxX = corner.X + wide, MaxY = corner.Y + high }));
        Point2 feed = Paper(new(1, 0)) - Paper(default);
        Point2 origin = Paper(new(order.DieView ? gang.BoardLengthMm : 0, 0));
        marks.Add(
            new PathMark([Chain.Rectangle(new Box
            {
                MinX = origin.X - 1.5,
                MinY = origin.Y - 1.5,
                MaxX = origin.X + 1.5,
                MaxY = origin.Y + 1.5,
            })], Ink.Narrow, Ink.Dark));
        marks.AddRange(Ways(new Point2(left + 4, size.Space.MinY + 31), feed * (1 / feed.Length), order));
        marks.Add(
            new TextMark
            {
                Text = DieParts.View(order) + "; cross: centre of the load; square: origin of x and y",
                At = new Point2(left, size.Space.MinY + 16.5),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
            });
        if (order.Force.Basis == ForceBasis.Placeholder)
        {
            marks.Add(
                new TextMark
                {
                    Text = "FORCE NOT MEASURED: do not set the press from it",
                    At = new Point2(left, size.Space.MinY + 21),
                    HeightMm = Ink.Label,
                    Colour = Ink.Dark,
                });
        }

        if (design.DoNotRun is { } words)
        {
            marks.AddRange(DieParts.Warning(new Point2(left, size.Space.MinY + WarningFrom), right - left, words, Ink.Title).Marks);
        }

        marks.AddRange(DieParts.Bar(new Point2(left + 2, size.Space.MinY + 9)));
        return new Sheet
        {
            Title = $"{order.Name}: gang die",
            Description = $"Gang of {gang.Cavities.Count} cavities at {scale.Words} with coordinates, strikes, force and safety.",
            WidthMm = size.WidthMm,
            HeightMm = size.HeightMm,
            Symbols = [],
            Marks = marks,
        };
    }

    private static double Below(DieDesign design, PaperSize size) => design.DoNotRun is { } words
        ? RoomBelow + DieParts.Warning(default, DieParts.ColumnTop(size).X - size.Space.MinX - (2 * DieParts.Rim), words, Ink.Title).Height
            + 4 : RoomBelow;

    private static (PaperSize Size, DrawingScale Scale, bool Turned) Chosen(DieDesign design)
    {
        DieGang gang = design.Gang;
        double tables =
            FigureTable.Height(Figures(design)) + CellTable.Height((gang.Cavities.Count + TableColumns - 1) / TableColumns) + 90;
        foreach (double least in new[] { 0.5, 0.2, 0.1, 0.05, 0.02 })
        {
            foreach (PaperSize size in PaperSize.All.Where(s => s.Name != "A4"))
            {
                double room = DieParts.ColumnTop(size).X - size.Space.MinX - (2 * DieParts.Rim) - RoomLeft - GangDimensions.RoomAside;
                double high = size.Space.Height - Below(design, size) - GangDimensions.RoomAbove;
                double along = gang.BoardLengthMm + GangDimensions.OverhangMm(gang);
                DrawingScale flat = DrawingScale.Fitting(along, gang.BoardWidthMm, room, high, 1);
                DrawingScale turned = DrawingScale.Fitting(gang.BoardWidthMm, along, room, high, 1);
                bool upright = turned.Factor > flat.Factor;
                bool enough = Math.Max(flat.Factor, turned.Factor) >= least;
                bool tableFits = tables < size.Space.Height - TitleBlock.Height - TitleBlock.Strip || size.Name is "A0" or "A1";
                if (enough && tableFits && (least > 0.2 ? size.Name is not "A0" : true))
                {
                    return (size, upright ? turned : flat, upright);
                }
            }
        }

        return (PaperSize.Of("A0"), DrawingScale.All[^1], false);
    }

    private static IEnumerable<Mark> Cavity(DieDesign design, DieCavity cavity, Func<Point2, Point2> paper)
    {
        bool mirrored = design.Request.Order.DieView;
        double angle = double.DegreesToRadians(cavity.Placed.AngleDeg);
        Point2 at = new(cavity.Placed.XMm, cavity.Placed.YMm);
        Point2 Place(Point2 own) => paper(own.Turned(angle) + at);
        yield return new PathMark(
            [
                new Chain(
                    [
                        .. design.Edges[cavity.Placed.Part]!.Arcs.Vertices.Select(v =>
                            Place(v.Point) is var p ? new ArcVertex(p.X, p.Y, mirrored ? -v.Turn : v.Turn) : default),
                    ], true),
            ], Ink.Wide);
        Point2 joint = Place(design.Places[cavity.Placed.Part]!.Joint);
        yield return new PathMark([Chain.Circle(joint, 0.8)], Ink.Narrow);

        // A tick at the panel's own origin shows where its coordinates are taken; the number stands beside it.
        Point2 origin = Place(default);
        yield return new PathMark(
            [
                Chain.Open(origin - new Point2(1, 0), origin + new Point2(1, 0)),
                Chain.Open(origin - new Point2(0, 1), origin + new Point2(0, 1)),
            ], Ink.Narrow);
        yield return new TextMark
        {
            Text = Name(design, cavity),
            At = origin + new Point2(1.5, -Ink.Note / 2),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        };
    }

    private static IEnumerable<Mark> BoardDimensions(
        DieOrder order, Point2 corner, double wide, double high, double realWide, double realHigh)
    {
        string Words(double real) =>
            GeneralTolerances.Linear(order.Tolerances.General, real) is { } t
                ? $"{real:0} \u00B1{t.ToString("0.##", CultureInfo.InvariantCulture)}"
                : $"{real:0}";
        return
        [
            .. Dimension.Level(corner, corner + new Point2(wide, 0), corner.Y - 10, Words(realWide)),
            .. Dimension.Upright(corner, corner + new Point2(0, high), corner.X - 10, Words(realHigh)),
        ];
    }

    // Arrows of the frame, and of the nap where the shop says how it lies: a layout does not know.
    // From the die's side the felt runs against the drawing's x, and has an arrow of its own.
    private static IEnumerable<Mark> Ways(Point2 at, Point2 feed, DieOrder order)
    {
        bool level = Math.Abs(feed.X) > Math.Abs(feed.Y);
        double step = level ? 46 : 32;
        IEnumerable<Mark> Way(double along, Point2 unit, string word)
        {
            Point2 way = unit * (level ? 16 : 8);
            return DieParts.Arrow(at + new Point2(along + (level ? Math.Max(0, -way.X) : 12), level ? 0 : Math.Max(0, -way.Y)), way, word);
        }

        foreach (Mark mark in order.DieView ? [.. Way(0, -feed, "x"), .. Way(step, feed, "feed, warp")] : Way(0, feed, "x: feed, warp"))
        {
            yield return mark;
        }

        double beside = order.DieView ? (2 * step) + (level ? 8 : 16) : 58;
        foreach (Mark mark in level
            ? DieParts.Arrow(at + new Point2(beside, 0), new Point2(0, 8), "y")
            : DieParts.Arrow(at + new Point2(beside, 1), new Point2(-16, 0), "y"))
        {
            yield return mark;
        }

        if (order.Nap is not { } nap)
        {
            yield return new TextMark
            {
                Text = "nap: not stated",
                At = at + new Point2(beside + 22, -1.2),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
            };
            yield break;
        }

        foreach (Mark mark in Way(beside + (level ? 20 : 10), nap == NapDirection.Forward ? feed : -feed, "nap"))
        {
            yield return mark;
        }
    }

    private static List<(string, string)> Figures(DieDesign design)
    {
        DieGang gang = design.Gang;
        DieOrder order = design.Request.Order;
        List<(string, string)> lines =
        [
            ($"{DieParts.Named(design)}: {gang.Cavities.Count} cavities", string.Empty),
            (
                "feed after the die was struck at every place",
                $"{F(gang.FeedMm, "0.000")} mm ({gang.Repeats} repeat{(gang.Repeats == 1 ? string.Empty : "s")})"),
            (
                "pitch of the layout along x; felt",
                $"{F(gang.FeedMm / gang.Repeats, "0.000")} mm; warp and feed toward {order.SeenSign(true)}x, nap side "
                    + $"{(order.DieView ? "away from" : "towards")} the viewer"),
            ("pitches of rows across", GangDimensions.RowWords(gang)),
            ("nap", Nap(design)),
            ("strikes to one feed", gang.Places.Count == 1
                ? $"1: it spans the {(design.Request.Layout.Bands.Count == 1 ? "usable width" : "band")}"
                : $"{gang.Places.Count}, moved across by {F(gang.Places[1].Y, "0.000")} mm each, along by "
                    + $"{F(order.DieView ? -gang.Places[1].X : gang.Places[1].X, "0.000")}"),
            ("board's lower left corner over the lower selvedge", $"{F(gang.Origin.Y)} mm across"),
            ("cut edges along x across", $"{F(gang.EdgeLengthMm)} x {F(gang.EdgeWidthMm)} mm"),
            (
                "least gap in the die; between strikes, worst case",
                $"{DieParts.Mm(design.LeastGapMm)} mm; {DieParts.Mm(design.Joint.NominalMm)}, {DieParts.Mm(design.Joint.WorstMm)} mm"),
            (
                "least gap to strikes beside; to bands beside; worst",
                $"{WithWorst(design.Joint.AcrossMm, design.Joint.AcrossWorstMm)}; "
                    + $"{WithWorst(design.Joint.BandMm, design.Joint.BandWorstMm)}"),
            ("least radius of the edge", $"{DieParts.Mm(design.LeastRadiusMm)} mm"),
            (
                "rule",
                $"{F(order.Rule.Points, "0.#")} pt ({F(order.Rule.ThicknessMm, "0.##")} x {F(order.Rule.HeightMm, "0.#")} mm), "
                    + $"{F(design.RuleLengthMm / 1000, "0.000")} m by its middle"
                    + $"{(gang.Common.SharedMm > 0 ? $", {F(gang.Common.SharedMm / 1000, "0.000")} common" : string.Empty)}"),
            ("cutting edge", $"{F(design.EdgeLengthMm / 1000, "0.000")} m"),
            ("board, about", $"{order.Board.Material}, {F(order.Board.ThicknessMm, "0.#")} mm; die {F(design.MassKg, "0.0")} kg"),
            (
                "load centre x, y; load centre to bed centre",
                $"{F(LoadCentreX(order, gang), "0.0")}, {F(gang.LoadCentre.Y, "0.0")}; {OffBed(design)}"),
        ];
        lines.AddRange(Force(design));
        return lines;
    }

    private static double LoadCentreX(DieOrder order, DieGang gang) =>
        order.DieView ? gang.BoardLengthMm - gang.LoadCentre.X : gang.LoadCentre.X;

    private static string OffBed(DieDesign design)
    {
        if (design.Request.Press is null)
        {
            return "no press given";
        }

        Point2 off = design.Gang.LoadOffBed;
        double x = Math.Round(design.Request.Order.DieView ? -off.X : off.X, 1) + 0.0;
        return $"{F(x, "0.0")}, {F(Math.Round(off.Y, 1) + 0.0, "0.0")} mm";
    }

    // Where no strike stands beside, or no band, there is no gap.
    private static string WithWorst(double gapMm, double worstMm) =>
        double.IsFinite(gapMm) ? $"{DieParts.Mm(gapMm)}, {DieParts.Mm(worstMm)} mm" : "none";

    // A lay that goes one way needs the nap; any other is only told it.
    private static string Nap(DieDesign design)
    {
        if (design.Request.Order.Nap is not null)
        {
            return DieParts.Nap(design.Request.Order);
        }

        if (design.Request.Layout.Rules.OneWay)
        {
            return "not stated: a one-way layout, so ask before striking";
        }

        return DieParts.Nap(design.Request.Order);
    }

    /// <summary>Lines on the force.</summary>
    internal static IEnumerable<(string, string)> Force(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        bool measured = order.Force.Basis == ForceBasis.Measured;
        string figure = $"{F(design.Force.Kn, "0.0")} kN ({F(design.Force.TonnesForce, "0.0")} t)";
        yield return measured
            ? ("force of a strike (measured N/mm)", figure)
            : ("FORCE NOT MEASURED: do not set the press from this", $"{figure}, placeholder");
        yield return design.Request.Press is not { } press ? ("press", "none given") : measured
            ? (
                $"share of press {press.Name}, {F(press.RatedForceKn, "0.#")} kN (allowed {F(press.AllowedSharePercent, "0.#")} %)",
                $"{F(design.PressSharePercent!.Value, "0.0")} %")
            : ($"press {press.Name}, {F(press.RatedForceKn, "0.#")} kN", "not assessed: force not measured");
    }

    private static List<Mark> Coordinates(DieDesign design, Point2 top, double room)
    {
        (string, double)[] columns = [("no.", 11), ("x", 24), ("y", 24), ("angle", 27)];
        int most = Math.Max(1, (int)((room - 2) / CellTable.RowStep) - 1);
        int all = design.Gang.Cavities.Count;
        int rows = Math.Min(most, (all + TableColumns - 1) / TableColumns);
        List<Mark> marks = [];
        for (int c = 0; c < TableColumns; c++)
        {
            DieCavity[] part = [.. design.Gang.Cavities.Skip(c * rows).Take(rows)];
            if (part.Length > 0)
            {
                marks.AddRange(CellTable.Draw(top
                    + new Point2(c * 92, 0), columns,
                    part.Select((d, i) => c == TableColumns - 1 && i == rows - 1 && all > rows * TableColumns
                    ? ["...", $"{all - (rows * TableColumns) + 1} more:", "see", "die.json"]
                    : Row(design, d))));
            }
        }

        return marks;
    }

    // What the drawing shows: from the die's side x runs from the other end of the board and angles change sign.
    private static string[] Row(DieDesign design, DieCavity cavity)
    {
        bool mirrored = design.Request.Order.DieView;
        return
        [
            Name(design, cavity), F(mirrored ? design.Gang.BoardLengthMm - cavity.Placed.XMm : cavity.Placed.XMm, "0.000"),
            F(cavity.Placed.YMm, "0.000"),
            F(mirrored ? -cavity.Placed.AngleDeg : cavity.Placed.AngleDeg, "0.000") + "\u00B0",
        ];
    }

    // The number, with the letter of its part where there are several.
    private static string Name(DieDesign design, DieCavity cavity) => F(cavity.Number, "0") + design.Letter(cavity.Placed.Part);

    private static string F(double value, string format = "0.00") => value.ToString(format, CultureInfo.InvariantCulture);
}
