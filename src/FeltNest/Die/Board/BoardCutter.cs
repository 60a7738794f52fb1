using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Geometry;
using FeltNest.Rolls;
using static FeltNest.InvariantText;

namespace FeltNest.Die.Board;

/// <summary>Makes what a laser cuts and engraves of a die's board.</summary>
internal sealed class BoardCutter
{
    // Screws along a side stand no further apart than this, mm.
    private const double ScrewEvery = 300;

    // Letters of cavity numbers want so much room round their middle, over their height and for each letter.
    private const double LetterWide = 0.95;

    private readonly DieDesign design;
    private readonly BoardLaser laser;
    private readonly double length;
    private readonly double width;
    private readonly List<BoardLine> lines = [];
    private readonly List<BoardHole> holes = [];
    private readonly List<BoardLabel> labels = [];
    private readonly List<string> leftOut = [];
    private IReadOnlyList<double> splits = [];
    private bool alongX = true;
    private SlotPlaces slots = null!;

    private BoardCutter(DieDesign design, BoardLaser laser)
    {
        (this.design, this.laser) = (design, laser);
        (length, width) = (design.Gang.BoardLengthMm, design.Gang.BoardWidthMm);
    }

    /// <summary>The board, or null where the order does not say how it is cut.</summary>
    public static BoardCut? Of(DieDesign design) =>
        design.Request.Order.Board.Laser is { } laser ? new BoardCutter(design, laser).Make() : null;

    private BoardCut Make()
    {
        SlotOutlines outlines = new(design, laser.SlotMm ?? design.Request.Order.Rule.ThicknessMm, laser.KerfMm);
        IReadOnlyList<ArcVertex>[] whole = [.. outlines.Of([], true).Select(s => s.Line)];
        slots = new SlotPlaces(whole);
        if (BoardSplit.Of(length, width, laser, slots.Crossings) is { } split)
        {
            (splits, alongX) = split;
        }
        else
        {
            leftOut.Add(Invariant(
                $"the board of {length:0.#} x {width:0.#} mm goes in no pieces on a bed of {laser.BedLengthMm:0.#} x "
                    + $"{laser.BedWidthMm:0.#} mm"));
        }

        foreach ((int piece, IReadOnlyList<ArcVertex> line) in outlines.Of(splits, alongX))
        {
            lines.Add(new BoardLine(BoardCut.Slot, Apart(line, piece), true));
        }

        Outside();
        Dowels();
        Rim();
        Cavities();
        Words();
        double apart = splits.Count * BoardCut.ApartMm;
        return new BoardCut
        {
            Lines = lines,
            Holes = holes,
            Labels = labels,
            Splits = splits,
            SplitsAlongX = alongX,
            LengthMm = length + (alongX ? apart : 0),
            WidthMm = width + (alongX ? 0 : apart),
            LeftOut = leftOut,
        };
    }

    private double Along(Point2 p) => alongX ? p.X : p.Y;

    private int Piece(Point2 p) => splits.Count(s => Along(p) > s);

    private Point2 Apart(Point2 p, int piece) => p + (piece * BoardCut.ApartMm * (alongX ? new Point2(1, 0) : new Point2(0, 1)));

    private IReadOnlyList<ArcVertex> Apart(IReadOnlyList<ArcVertex> line, int piece) =>
        [.. line.Select(v => Apart(v.Point, piece) is var p ? new ArcVertex(p.X, p.Y, v.Turn) : v)];

    // The beam runs outside the board by half its width.
    private void Outside()
    {
        double k = laser.KerfMm / 2;
        double[] ends = [0, .. splits, alongX ? length : width];
        for (int piece = 0; piece + 1 < ends.Length; piece++)
        {
            Point2 low = alongX ? new Point2(ends[piece] - k, -k) : new Point2(-k, ends[piece] - k);
            Point2 high = alongX ? new Point2(ends[piece + 1] + k, width + k) : new Point2(length + k, ends[piece + 1] + k);
            lines.Add(new BoardLine(
                BoardCut.Outside,
                Apart([new(low.X, low.Y, 0), new(high.X, low.Y, 0), new(high.X, high.Y, 0), new(low.X, high.Y, 0)], piece), true));
        }
    }

    // Dowels lie in the middle of the board's thickness, three diameters deep in either piece, clear of every slot.
    private void Dowels()
    {
        double deep = 3 * laser.DowelMm;
        double across = alongX ? width : length;
        foreach ((int piece, double at) in splits.Index())
        {
            double[] free =
            [
                .. Enumerable.Range(0, (int)across).Select(y => (double)y).Where(y =>
                    y > laser.DowelMm + BoardCut.ClearMm && y < across - laser.DowelMm - BoardCut.ClearMm
                    && slots.Clear(Place(at - deep, y), Place(at + deep, y), (laser.DowelMm / 2) + BoardCut.ClearMm)),
            ];
            double[] taken =
                free.Length == 0 ? [] : [free[0], .. free[^1] - free[0] > 4 * laser.DowelMm ? [free[^1]] : Array.Empty<double>()];
            if (taken.Length < 2)
            {
                leftOut.Add(Invariant($"the split at {at:0.#} mm has no room for two dowels of {laser.DowelMm:0.#} mm clear of the slots"));
            }

            foreach (double y in taken)
            {
                lines.Add(Straight(BoardCut.Dowel, Apart(Place(at - deep, y), piece), Apart(Place(at, y), piece)));
                lines.Add(Straight(BoardCut.Dowel, Apart(Place(at, y), piece + 1), Apart(Place(at + deep, y), piece + 1)));
            }
        }
    }

    private Point2 Place(double along, double across) => alongX ? new Point2(along, across) : new Point2(across, along);

    private static BoardLine Straight(string layer, Point2 a, Point2 b) => new(layer, [new(a.X, a.Y, 0), new(b.X, b.Y, 0)], false);

    // Pins on the centre line of the board's longer way, screws round its rim.
    private void Rim()
    {
        double land = design.Request.Order.Board.LandMm / 2;
        bool lies = length >= width;
        Hole(BoardCut.Pin, lies ? new Point2(land, width / 2) : new Point2(length / 2, land), laser.PinMm, "pin");
        Hole(BoardCut.Pin, lies ? new Point2(length - land, width / 2) : new Point2(length / 2, width - land), laser.PinMm, "pin");
        int along = Steps(length);
        int across = Steps(width);
        for (int i = 0; i <= along; i++)
        {
            double x = land + ((length - (2 * land)) * i / along);
            Hole(BoardCut.Screw, new Point2(x, land), laser.ScrewMm, "screw");
            Hole(BoardCut.Screw, new Point2(x, width - land), laser.ScrewMm, "screw");
        }

        for (int i = 1; i < across; i++)
        {
            double y = land + ((width - (2 * land)) * i / across);
            Hole(BoardCut.Screw, new Point2(land, y), laser.ScrewMm, "screw");
            Hole(BoardCut.Screw, new Point2(length - land, y), laser.ScrewMm, "screw");
        }
    }

    // An odd number of steps leaves the middle of a side to pins and words.
    private static int Steps(double side) => (int)Math.Ceiling(side / ScrewEvery) is var steps && steps % 2 == 1 ? steps : steps + 1;

    private void Hole(string layer, Point2 at, double diameter, string name)
    {
        if (diameter <= 0)
        {
            return;
        }

        double room = (diameter / 2) + BoardCut.ClearMm;
        bool inside = at.X >= room && at.Y >= room && at.X <= length - room && at.Y <= width - room;
        bool whole = splits.All(s => Math.Abs(Along(at) - s) >= room);
        if (inside && whole && slots.Clear(at, at, room) && holes.All(h => Away(h, at) >= room))
        {
            holes.Add(new BoardHole(layer, Apart(at, Piece(at)), diameter - laser.KerfMm));
            return;
        }

        leftOut.Add(Invariant($"{name} of {diameter:0.##} mm at ({at.X:0.#}, {at.Y:0.#}) has no room"));
    }

    private double Away(BoardHole hole, Point2 at) => (hole.At - Apart(at, Piece(at))).Length - ((hole.DiameterMm + laser.KerfMm) / 2);

    // A number and air holes in every cavity, at the same places of each part.
    private void Cavities()
    {
        foreach (IGrouping<int, DieCavity> of in design.Gang.Cavities.GroupBy(c => c.Placed.Part))
        {
            string longest = of.Select(Number).MaxBy(n => n.Length)!;
            double wide = laser.LettersMm * LetterWide * longest.Length;
            double word = Math.Sqrt((wide * wide) + (laser.LettersMm * laser.LettersMm)) / 2;
            InnerPlaces inner = new(design.Edges[of.Key]!, Math.Max(design.Request.Order.Rule.BodyInPanelMm, 0) + BoardCut.ClearMm);
            Point2? number = inner.Next(word);
            Point2[] air = [.. Enumerable.Range(0, laser.AirHoles).Select(_ => inner.Next(laser.AirHoleMm / 2)).OfType<Point2>()];
            if (number is null || air.Length < laser.AirHoles)
            {
                leftOut.Add(Invariant(
                    $"cavities of \"{design.Request.Layout.Parts[of.Key].Name}\" have room for {air.Length} of {laser.AirHoles} air holes"
                        + $"{(number is null ? " and for no number" : string.Empty)}"));
            }

            foreach (DieCavity cavity in of)
            {
                foreach (Point2 at in air)
                {
                    Hole(BoardCut.Air, Seen(cavity, at), laser.AirHoleMm, $"air hole of cavity {cavity.Number}");
                }

                if (number is { } middle)
                {
                    Label(Number(cavity), Seen(cavity, middle), wide, laser.LettersMm);
                }
            }
        }
    }

    private string Number(DieCavity cavity) => Invariant($"{cavity.Number}{design.Letter(cavity.Placed.Part)}");

    private Point2 Seen(DieCavity cavity, Point2 at)
    {
        Point2 p = at.Turned(double.DegreesToRadians(cavity.Placed.AngleDeg)) + new Point2(cavity.Placed.XMm, cavity.Placed.YMm);
        return design.Request.Order.DieView ? new Point2(length - p.X, p.Y) : p;
    }

    private void Label(string text, Point2 at, double wide, double high)
    {
        double reach = wide / 2;
        bool whole = splits.All(s => Math.Abs(Along(at) - s) >= reach);
        Point2 half = new(reach, 0);
        if (whole
            && slots.Clear(at - half, at + half, (high / 2) + 0.5)
            && holes.All(h => Away(h, Nearest(h, at, reach)) > (high / 2) + 0.5))
        {
            labels.Add(new BoardLabel { Text = text, Middle = Apart(at, Piece(at)), WideMm = wide, HighMm = high });
            return;
        }

        leftOut.Add(Invariant($"\"{text}\" at ({at.X:0.#}, {at.Y:0.#}) has no room to be engraved"));
    }

    // The place of a word's middle line that is nearest to a hole.
    private Point2 Nearest(BoardHole hole, Point2 at, double reach)
    {
        Point2 by = Apart(at, Piece(at)) - at;
        return at with { X = Math.Clamp(hole.At.X - by.X, at.X - reach, at.X + reach) };
    }

    // Name, revision and date on the lower land, feed and nap on the upper one, the origin in its corner.
    private void Words()
    {
        DieOrder order = design.Request.Order;
        double land = order.Board.LandMm;
        double high = Math.Min(laser.LettersMm, land / 3);
        double step = Math.Min((length - land) / Steps(length), (length - land - laser.PinMm + laser.ScrewMm) / 2);
        double wide = step - laser.ScrewMm - (4 * BoardCut.ClearMm);
        Point2 low = new((land / 2) + (step / 2), land / 2);
        string revision = order.Title.Revision is { } r ? $" REV {r}" : string.Empty;
        string date = order.Title.DateOfIssue is { } day ? $" {day}" : string.Empty;
        string nap = order.Nap is { } way ? $"{order.SeenSign(way == NapDirection.Forward)}X" : "?";
        Label($"{order.Name}{revision}{date}", low, wide, high);
        Label($"FEED {order.SeenSign(true)}X  NAP {nap}", low with { Y = width - (land / 2) }, wide, high);
        double mark = Math.Min(8, land / 3);
        lines.Add(new BoardLine(BoardCut.Engrave, [new(1.5, mark, 0), new(1.5, 1.5, 0), new(mark, 1.5, 0)], false));
    }
}
