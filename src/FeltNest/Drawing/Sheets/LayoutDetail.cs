using System.Globalization;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Drawing.Sheets;

/// <summary>A panel and its nearest neighbour at a larger scale, with the tilt to the warp and the gap where it is least.</summary>
internal sealed class LayoutDetail
{
    // Scales of ISO 5455, enlargements too for small parts.
    private static readonly (double Scale, string Words)[] Scales =
        [(5, "5:1"), (2, "2:1"), (1, "1:1"), (0.5, "1:2"), (0.2, "1:5"), (0.1, "1:10"), (0.05, "1:20"), (0.02, "1:50"), (0.01, "1:100")];

    // Height of the heading and of the window, and cloth shown around the panel at least: mm on paper.
    private const double HeadHigh = 5;
    private const double WindowHigh = 84;
    private const double Rim = 4;

    // Corners of an outline looked at to find where the gap is least: enough for a picture, the check measures every one.
    private const int MostCorners = 500;

    // Gaps that differ by less than this, mm, are the same gap on a picture.
    private const double SameGap = 0.01;

    private readonly RollLayout layout;
    private readonly ClothView view;
    private readonly PlacedPanel own;
    private readonly bool found;
    private readonly Point2 from;
    private readonly Point2 to;

    /// <summary>The detail of a layout: the panel of its first repeat nearest the middle of its band, which has neighbours on all sides
    /// where any has.</summary>
    public LayoutDetail(RollLayout layout, ClothView view)
    {
        this.layout = layout;
        this.view = view;
        LayoutRepeat repeat = layout.Bands[0].Repeat;
        own = repeat.Panels.MinBy(p => Math.Abs(p.YMm - ((layout.Bands[0].YFromMm + layout.Bands[0].YToMm) / 2)))!;
        List<(double Distance, Point2 A, Point2 B)> contacts = [];
        double best = double.PositiveInfinity;
        Point2[] mine = Corners(own);
        foreach (PlacedPanel candidate in Neighbours(repeat))
        {
            (double Distance, Point2 A, Point2 B) contact = Nearest(mine, Corners(candidate), best + SameGap);
            contacts.Add(contact);
            best = Math.Min(best, contact.Distance);
        }

        // Of places as near as the nearest the highest one: the tilt is written at the right.
        contacts.RemoveAll(contact => !(contact.Distance <= best + SameGap));
        found = contacts.Count > 0;
        (_, from, to) = found ? contacts.MaxBy(contact => contact.B.Y) : default;
    }

    /// <summary>Height the detail takes, mm.</summary>
    public static double Height => HeadHigh + WindowHigh + 8;

    // Long because it lists the marks of one detail in the order they are drawn.
    /// <summary>The marks, upper left corner at a place: the panel in the middle of a window, its neighbours cut off at the window's
    /// sides.</summary>
    public IEnumerable<Mark> Draw(Point2 topLeft, double width)
    {
        Point2[] mine = Corners(own);
        Point2 low = new(mine.Min(p => p.X), mine.Min(p => p.Y));
        Point2 high = new(mine.Max(p => p.X), mine.Max(p => p.Y));
        Point2 middle = (low + high) * 0.5;
        (double scale, string words) = Array.Find(
            Scales, s => (high.X - low.X) * s.Scale <= width - (2 * Rim) && (high.Y - low.Y) * s.Scale <= WindowHigh - (2 * Rim));
        if (scale == 0)
        {
            (scale, words) = Scales[^1];
        }

        Box window = new()
        {
            MinX = topLeft.X,
            MinY = topLeft.Y - HeadHigh - WindowHigh,
            MaxX = topLeft.X + width,
            MaxY = topLeft.Y - HeadHigh,
        };
        Point2 centre = new((window.MinX + window.MaxX) / 2, (window.MinY + window.MaxY) / 2);
        Point2 Paper(Point2 p) => centre + ((p - middle) * scale);

        yield return new TextMark
        {
            Text = $"Detail, SCALE {words}: tilt to the warp, gap",
            At = topLeft + new Point2(0, -Ink.Note),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        };
        Point2 place = Paper(new Point2(own.XMm, own.YMm));
        yield return new GroupMark(
            "detail-window",
            [
                .. Neighbours(layout.Bands[0].Repeat).Select(p => Drawn(p, Paper(new Point2(p.XMm, p.YMm)), scale, Ink.Copy)),
                Drawn(own, place, scale, Ink.Classes[view.ClassIndex(own) % Ink.Classes.Length]),
                .. Tilt(place, layout.Parts[own.Part].Outline.MaxX * scale, window),
                .. found ? Gap(Paper(from), Paper(to), window) : [],
            ],
            window);
        yield return new PathMark([Chain.Rectangle(window)], Ink.Narrow);
    }

    private PathMark Drawn(PlacedPanel p, Point2 place, double scale, Colour fill) =>
        new([ClothView.ChainOf(layout.Parts[p.Part]).Placed(scale, p.AngleDeg * Math.PI / 180, place)], Ink.Narrow, fill);

    // The panel's axis against the warp, as an angle of less than a half-turn; beyond a right angle the arc is drawn on the near side, with
    // both ways to say it.
    private IEnumerable<Mark> Tilt(Point2 centre, double reach, Box window)
    {
        double tilt = ((own.AngleDeg % 180) + 180) % 180;
        double shown = tilt > 90 ? tilt - 180 : tilt;
        double radians = shown * Math.PI / 180;
        string Degrees(double value) => value.ToString("0.00", CultureInfo.InvariantCulture) + "\u00B0";
        string words = tilt > 90 ? $"{Degrees(tilt)} = {Degrees(shown)}" : Degrees(tilt);
        // A flat tilt is measured as far out as its number still fits, where the number does not lie on the axis.
        double room = window.MaxX - centre.X - StrokeFont.Width(words, Ink.Note) - 7;
        double radius = Math.Min((Math.Abs(Math.Sin(radians)) > 0.3 ? 0.55 : 1.05) * reach, room);
        Point2 along = new Point2(reach, 0).Turned(radians);
        yield return new PathMark([Chain.Open(centre - along, centre + along)], Ink.Centre);
        yield return new PathMark([Chain.Open(centre, centre + new Point2(radius + 3, 0))], Ink.Narrow);
        // An arc too short for its head is left out; the number says enough.
        if (radius * Math.Abs(radians) > 2)
        {
            Point2 start = centre + new Point2(radius, 0);
            Point2 end = centre + new Point2(radius, 0).Turned(radians);
            Point2 back = new Point2(1, 0).Turned(radians - (Math.Sign(radians) * Math.PI / 2));
            yield return new PathMark(
                [new Chain([new ArcVertex(start.X, start.Y, radians), new ArcVertex(end.X, end.Y, 0)], false)], Ink.Narrow);
            yield return Arrows.Head(end + back, end, 2, Ink.Dark);
        }

        Point2 label = centre + new Point2(radius + 4.5, 0) + new Point2(0, -Ink.Note / 2);
        foreach (Mark mark in Patched(new TextMark { Text = words, At = label, HeightMm = Ink.Note, Colour = Ink.Dark }))
        {
            yield return mark;
        }
    }

    private IEnumerable<Mark> Gap(Point2 a, Point2 b, Box window)
    {
        Point2 way = b - a;
        Point2 unit = way.Length > 1e-6 ? way * (1 / way.Length) : new Point2(0, 1);
        const double tail = 6;
        const double head = 2;
        if (layout.GapMm > 0)
        {
            yield return new PathMark([Chain.Open(a - (unit * tail), b + (unit * tail))], Ink.Narrow);
            yield return Arrows.Head(a - (unit * tail), a, head, Ink.Dark);
            yield return Arrows.Head(b + (unit * tail), b, head, Ink.Dark);
        }

        string words = layout.GapMm > 0 ? $"gap {layout.GapMm.ToString("0.##", CultureInfo.InvariantCulture)}" : "common cut";
        TextMark outer = LabelBeyond(b, unit, tail, words);
        TextMark inner = LabelBeyond(a, unit * -1, tail, words);
        foreach (Mark mark in Patched(Inside(Patch(outer), window) ? outer : inner))
        {
            yield return mark;
        }
    }

    private static TextMark LabelBeyond(Point2 end, Point2 unit, double tail, string words)
    {
        Point2 at = end + (unit * (tail + 1.5));
        TextAnchor anchor;
        if (unit.X < -0.3)
        {
            anchor = TextAnchor.End;
        }
        else if (unit.X > 0.3)
        {
            anchor = TextAnchor.Start;
        }
        else
        {
            anchor = TextAnchor.Middle;
        }

        return new TextMark
        {
            Text = words,
            At = at + new Point2(0, Drop(unit.Y)),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
            Anchor = anchor,
        };
    }

    // How far the base line of a label stands below the end of its line: below a line that runs down, beside one that runs level.
    private static double Drop(double rise)
    {
        if (rise < -0.3)
        {
            return -Ink.Note;
        }

        return rise < 0.3 ? -Ink.Note / 2 : 0;
    }

    // A label on a patch of its own, so that no line runs through it.
    private static IEnumerable<Mark> Patched(TextMark label)
    {
        yield return new PathMark([Chain.Rectangle(Patch(label))], null, Colour.Of(0xFFFFFF));
        yield return label;
    }

    private static Box Patch(TextMark label)
    {
        const double rim = 0.7;
        double width = StrokeFont.Width(label.Text, label.HeightMm);
        double left = label.At.X - (label.Anchor switch { TextAnchor.Start => 0, TextAnchor.End => width, _ => width / 2 });
        return new Box
        {
            MinX = left - rim,
            MinY = label.At.Y - rim,
            MaxX = left + width + rim,
            MaxY = label.At.Y + label.HeightMm + rim,
        };
    }

    private static bool Inside(Box box, Box window) =>
        box.MinX > window.MinX && box.MaxX < window.MaxX && box.MinY > window.MinY && box.MaxY < window.MaxY;

    private IEnumerable<PlacedPanel> Neighbours(LayoutRepeat repeat)
    {
        foreach (PlacedPanel p in repeat.Panels)
        {
            double shift = Math.Round((own.XMm - p.XMm) / repeat.LengthMm) * repeat.LengthMm;
            double reach = (Reach(own) + Reach(p) + layout.GapMm) / repeat.LengthMm;
            for (int k = -(int)Math.Ceiling(reach); k <= Math.Ceiling(reach); k++)
            {
                PlacedPanel copy = p with { XMm = p.XMm + shift + (k * repeat.LengthMm) };
                if (copy != own && new Point2(copy.XMm - own.XMm, copy.YMm - own.YMm).Length < Reach(own) + Reach(p) + layout.GapMm)
                {
                    yield return copy;
                }
            }
        }
    }

    private double Reach(PlacedPanel p) => ClothView.Reach(layout.Parts[p.Part]);

    private Point2[] Corners(PlacedPanel p)
    {
        IReadOnlyList<Point2> points = layout.Parts[p.Part].Outline.Points;
        int stride = 1 + (points.Count / MostCorners);
        return [.. points.Where((_, i) => i % stride == 0).Select(q => q.Turned(p.AngleDeg * Math.PI / 180) + new Point2(p.XMm, p.YMm))];
    }

    // Nearest places of two closed polygons: from each corner of one to each side of the other, both ways.
    private static (double Distance, Point2 A, Point2 B) Nearest(Point2[] one, Point2[] two, double worthwhile)
    {
        (double distance, Point2 a, Point2 b) = FromCorners(one, two, worthwhile);
        (double back, Point2 c, Point2 d) = FromCorners(two, one, Math.Min(distance, worthwhile));
        return back < distance ? (back, d, c) : (distance, a, b);
    }

    private static (double Distance, Point2 Corner, Point2 OnSide) FromCorners(Point2[] corners, Point2[] ring, double worthwhile)
    {
        double best = worthwhile;
        (double, Point2, Point2) nearest = (double.PositiveInfinity, default, default);
        double minX = ring.Min(p => p.X);
        double maxX = ring.Max(p => p.X);
        double minY = ring.Min(p => p.Y);
        double maxY = ring.Max(p => p.Y);
        foreach (Point2 p in corners)
        {
            if (p.X < minX - best || p.X > maxX + best || p.Y < minY - best || p.Y > maxY + best)
            {
                continue;
            }

            for (int i = 0; i < ring.Length; i++)
            {
                Point2 a = ring[i];
                Point2 side = ring[(i + 1) % ring.Length] - a;
                Point2 foot = a + (side * Math.Clamp((p - a).Dot(side) / side.Dot(side), 0, 1));
                double distance = (p - foot).Length;
                if (distance < best)
                {
                    best = distance;
                    nearest = (distance, p, foot);
                }
            }
        }

        return nearest;
    }
}
