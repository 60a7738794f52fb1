using FeltNest.Drawing.Lettering;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Parts;

/// <summary>Tolerance frame of ISO 1101:2017 (from memory) for the profile of a line, all round an outline and without a datum: it limits
/// the form alone.</summary>
internal static class ToleranceFrame
{
    // The frame is twice as high as its letters; radius of the circle that says "all round"; way from the leader's knee to the frame;
    // length of the arrow: mm.
    private const double Letters = Ink.Label;
    private const double High = 2 * Letters;
    private const double AllRound = 1.2;
    private const double Shelf = 5;
    private const double Head = 2.5;

    /// <summary>Room from the leader's knee to the far side of the frame, mm.</summary>
    public static double Reach(string tolerance) => Shelf + High + Wide(tolerance);

    /// <summary>The frame with its leader.</summary>
    /// <param name="tip">Where the leader points, on the outline.</param>
    /// <param name="knee">Where it bends towards the frame, at the frame's middle height.</param>
    /// <param name="leftward">True where the frame stands left of the knee.</param>
    /// <param name="tolerance">Width of the zone as written.</param>
    public static IEnumerable<Mark> ProfileOfLine(Point2 tip, Point2 knee, bool leftward, string tolerance)
    {
        double side = leftward ? -1 : 1;
        double near = knee.X + (side * Shelf);
        double left = leftward ? near - High - Wide(tolerance) : near;
        double low = knee.Y - (High / 2);
        Box symbol = new() { MinX = left, MinY = low, MaxX = left + High, MaxY = low + High };
        Box value = new() { MinX = left + High, MinY = low, MaxX = left + High + Wide(tolerance), MaxY = low + High };
        yield return new PathMark([Chain.Rectangle(symbol), Chain.Rectangle(value)], Ink.Narrow);

        // The symbol is half a circle, open below.
        const double radius = 0.6 * Letters;
        Point2 middle = new(left + (High / 2), knee.Y - (radius / 2));
        yield return new PathMark(
            [new Chain([new ArcVertex(middle.X + radius, middle.Y, Math.PI), new ArcVertex(middle.X - radius, middle.Y, 0)], false)],
            new Pen(Letters / 10, Ink.Dark));
        yield return new TextMark
        {
            Text = tolerance,
            At = new Point2(value.MinX + (value.Width / 2), knee.Y - (Letters / 2)),
            HeightMm = Letters,
            Colour = Ink.Dark,
            Anchor = TextAnchor.Middle,
        };
        yield return new PathMark([Chain.Open(tip, knee, new Point2(near, knee.Y)), Chain.Circle(knee, AllRound)], Ink.Narrow);
        yield return Arrows.Head(knee, tip, Head, Ink.Dark);
    }

    private static double Wide(string tolerance) => StrokeFont.Width(tolerance, Letters) + Letters;
}
