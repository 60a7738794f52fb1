using FeltNest.Die;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using static FeltNest.Drawing.Sheets.Felts.FeltTestPage;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Felts;

/// <summary>The first sheet for the tests of felt: what to cut out of the lot, drawn at one tenth, and how each test is made.</summary>
internal static class FeltCuttingSheet
{
    // The piece of the lot, mm, and the scale of its drawing.
    private const double Long = 1500;
    private const double Wide = 1000;
    private const double Scale = 0.1;

    // Strip with the felt in both jaws, its width, and the room between pieces, mm.
    private const double Strip = 300;
    private const double StripWide = 50;
    private const double Room = 12;

    // Strips a direction; wrapped strips each way; squares.
    private const int Strips = 5;
    private const int Wraps = 3;
    private const int Squares = 3;

    private static readonly Pen Cut = new(0.3, Ink.Dark);
    private static readonly Pen Marked = new(0.18, Ink.Soft, 1.5, 1);

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(FeltTestPlan plan)
    {
        Point2 corner = new(Margin + 8, Top - 10 - (Wide * Scale));
        double below = corner.Y - 14;
        string[] how = [.. How(plan)];
        double safe = below - TextBlock.Height(how, Width - (2 * Margin)) - 4;
        return Of(
            "Felt tests: what to cut", "pieces to cut out of one lot of felt, and how each test is made",
            Invariant($"for a core of {plan.CoreDiameterMm:0.##} mm with cement and felt of {plan.ThicknessMm:0.##} mm;  lot __________  ")
                + "date __________",
            [
                new GroupMark("piece", [.. Piece(corner)]),
                new GroupMark("squares", [.. SquarePieces(corner)]),
                new GroupMark("strips", [.. StripPieces(corner)]),
                new GroupMark("wraps-and-discs", [.. SmallPieces(corner, plan)]),
                new GroupMark("how", [.. TextBlock.Draw(new Point2(Margin, below), Width - (2 * Margin), how)]),
                new GroupMark(
                    "cautions", [.. TextBlock.Draw(new Point2(Margin, safe), Width - (2 * Margin), SafetyWords.FeltTests)]),
            ]);
    }

    private static IEnumerable<Mark> Piece(Point2 corner)
    {
        Point2 far = corner + (new Point2(Long, Wide) * Scale);
        yield return new PathMark([Rectangle(corner, 0, 0, Long, Wide)], Marked);
        foreach (Mark mark in Arrows.Line(new Point2(corner.X, far.Y + 4), new Point2(corner.X + 40, far.Y + 4), Ink.Narrow, 2.5))
        {
            yield return mark;
        }

        yield return Words("warp, along the roll;  drawn 1 : 10, nap upwards", new Point2(corner.X + 43, far.Y + 3));
        foreach (Mark mark in Dimension.Level(corner, new Point2(far.X, corner.Y), corner.Y - 5, Invariant($"{Long:0}"), Ink.Note)
            .Concat(Dimension.Upright(corner, new Point2(corner.X, far.Y), corner.X - 5, Invariant($"{Wide:0}"), Ink.Note)))
        {
            yield return mark;
        }
    }

    private static IEnumerable<Mark> SquarePieces(Point2 corner)
    {
        const double side = FeltTestPlan.SquareMm;
        const double inset = (side - FeltTestPlan.MarksMm) / 2;
        for (int i = 0; i < Squares; i++)
        {
            double x = i * side;
            double y = Wide - side;
            yield return new PathMark([Rectangle(corner, x, y, side, side)], Cut);
            yield return new PathMark([Rectangle(corner, x + inset, y + inset, FeltTestPlan.MarksMm, FeltTestPlan.MarksMm)], Marked);
            yield return At(corner, x + (side / 2), y + (side / 2), Invariant($"square S{i + 1}"));
            yield return At(corner, x + (side / 2), y + (side / 2) - 45, Invariant($"{side:0} x {side:0}"));
            yield return At(corner, x + (side / 2), y + (side / 2) - 90, Invariant($"marks {FeltTestPlan.MarksMm:0} apart"));
        }
    }

    private static IEnumerable<Mark> StripPieces(Point2 corner)
    {
        const double step = StripWide + Room;
        double weft = Strip + (2 * Room);
        double bias = weft + (Strips * step) + Room;

        // The five bias strips lie side by side, turned by 45 degrees: their block is so wide and so high.
        double half = Math.Sqrt(0.5);
        double block = (Strip + (Strips * step)) * half;
        for (int i = 0; i < Strips; i++)
        {
            double up = Room + (i * step);
            yield return new PathMark([Rectangle(corner, Room, up, Strip, StripWide)], Cut);
            yield return At(corner, Room + (Strip / 2), up + 12, Invariant($"warp W{i + 1}"));
            double along = weft + (i * step);
            yield return new PathMark([Rectangle(corner, along, Room, StripWide, Strip)], Cut);
            yield return At(corner, along + (StripWide / 2), Room + (Strip / 2), Invariant($"F{i + 1}"));
            Point2 start = new(bias + (Strips * step * half) - (i * step * half), Room + (i * step * half));
            Point2 way = new(half, half);
            Point2 side = way.Left;
            Point2[] corners =
            [
                start, start + (way * Strip), start + (way * Strip) + (side * StripWide), start + (side * StripWide),
            ];
            yield return new PathMark([Chain.Ring([.. corners.Select(p => corner + (p * Scale))])], Cut);
            Point2 middle = start + (way * (Strip / 2)) + (side * (StripWide / 2));
            yield return At(corner, middle.X, middle.Y - 12, Invariant($"B{i + 1}"));
        }

        yield return At(corner, weft + (Strips * step / 2), Strip + 40, "weft");
        yield return At(corner, bias + 60, block - 20, "bias, 45 degrees");
    }

    private static IEnumerable<Mark> SmallPieces(Point2 corner, FeltTestPlan plan)
    {
        const double step = FeltTestPlan.WrapWidthMm + Room;
        const double from = 1130;
        double high = Wide - FeltTestPlan.SquareMm - 20;
        double length = Math.Min(plan.WrapLengthMm, Long - from - Room);
        for (int i = 0; i < 2 * Wraps; i++)
        {
            yield return new PathMark([Rectangle(corner, from, high - ((i + 1) * step), length, FeltTestPlan.WrapWidthMm)], Cut);
        }

        yield return At(corner, from + (length / 2), high - (2 * Wraps * step) - 40, "wraps N1 to N6");
        yield return At(corner, from + (length / 2), high - (2 * Wraps * step) - 75, "three along, three across");
        double x = from;
        foreach ((double diameter, _) in plan.Discs.Take(4))
        {
            yield return new PathMark([Chain.Circle(corner + (new Point2(x + (diameter / 2), 150) * Scale), diameter / 2 * Scale)], Cut);
            x += diameter + Room;
        }

        yield return At(corner, from + (length / 2), 70, "discs, three of each");
        yield return At(corner, from + (length / 2), 35, "size of sheet 2");
    }

    private static IEnumerable<string> How(FeltTestPlan plan)
    {
        yield return "Let the felt lie 24 h in the room's standard air (ISO 139), unrolled. Stay 50 mm off the selvedges. No two warp "
            + "strips from "
            + "the same warp threads.";
        yield return "1  Strips, five each at 0, 90 and 45 degrees (ISO 13934-1 woven felt, ISO 9073-3 needled felt; ASTM D5035 names "
            + "felted "
            + "fabrics, not for stretch above 11 %): 50 mm wide, 200 mm between the jaws, 100 mm/min. Pretension 2 N up to 200 g/m2, 5 "
            + "N up to "
            + "500, 10 N above: extension counts from there. Read the force at 1 to 8 %, that is at 2, 4, ... 16 mm. The standards want "
            + "force "
            + "at break; stiffness in your own range is read off the same curve. On warp strips read the narrowing in the middle too.";
        yield return Invariant(
            $"2  Wraps: strips {FeltTestPlan.WrapWidthMm:0} mm wide and {plan.WrapLengthMm:0} mm long. Lay one slack round a ")
            + "cemented core, no pull, cut it back until its ends just meet, lay it flat and measure it to 0.2 mm: 1 mm is 0.05 in the "
            + "result. "
            + "On a bar write core cylinder: its axis does not curve the strip sideways.";
        yield return "3  Discs: press each with its middle first on a cemented core, as the shop presses a panel, from small to large. "
            + "After the "
            + "cement holds, note flat or puckered. Three discs a size tell little: see the report.";
        yield return Invariant(
            $"4  Squares (ISO 3759 and 5077): three of {FeltTestPlan.SquareMm:0} mm, marks at least {FeltTestPlan.MarksMm:0} mm ")
            + "apart and 50 mm from the edge. Measure along warp and weft, take them through glue water, cure and steam as a cover, "
            + "measure again.";
        yield return "5  Thickness at five places (ISO 9073-2 for needled felt; state the pressure), and mass of three pieces of known "
            + "size.";
        yield return "6  Compression along the felt, where the tester can: short strips on edge, stacked and held from buckling. Write "
            + "force for "
            + "one ply and extension below 0. It is told apart and not used for panels.";
    }

    private static Chain Rectangle(Point2 corner, double x, double y, double along, double up)
    {
        Point2 low = corner + (new Point2(x, y) * Scale);
        Point2 size = new Point2(along, up) * Scale;
        return Chain.Ring([low, low + new Point2(size.X, 0), low + size, low + new Point2(0, size.Y)]);
    }

    private static TextMark At(Point2 corner, double x, double y, string text) =>
        Words(text, corner + (new Point2(x, y) * Scale), anchor: TextAnchor.Middle);
}
