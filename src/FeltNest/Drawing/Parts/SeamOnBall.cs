using FeltNest.Geometry;
using FeltNest.Seam;

namespace FeltNest.Drawing.Parts;

/// <summary>A ball with its seam seen from a side: what lies in front drawn full, what lies behind thin and dashed.</summary>
internal static class SeamOnBall
{
    // Places of the seam: a degree apart, which no print shows as corners.
    private const int Places = 360;

    private static readonly Pen Front = new(0.5, Colour.Of(0x5E7A22));
    private static readonly Pen Behind = new(0.2, Ink.Soft, 1, 1);

    /// <summary>Draws a ball.</summary>
    /// <param name="seam">The seam.</param>
    /// <param name="side">From where it is seen.</param>
    /// <param name="at">Its middle on the sheet, mm.</param>
    /// <param name="radius">Its radius on the sheet, mm.</param>
    public static IEnumerable<Mark> Draw(SeamCurve seam, BallSide side, Point2 at, double radius)
    {
        SpherePoint[] places = [.. Enumerable.Range(0, Places).Select(i => seam.At(2 * Math.PI * i / Places).Point)];
        yield return new PathMark([Chain.Circle(at, radius)], Ink.Narrow);
        foreach ((bool near, Pen pen) in new[] { (false, Behind), (true, Front) })
        {
            yield return new PathMark(
                [.. side.Lines(places, near).Select(line => Chain.Open([.. line.Select(p => at + (p * radius))]))], pen);
        }
    }
}
