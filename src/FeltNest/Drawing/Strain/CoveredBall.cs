using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Seam;

namespace FeltNest.Drawing.Strain;

/// <summary>The covered ball from one side, in parallel projection: both panels with their strain in bands, the warp as fine lines, the
/// seam. Only the half that faces the viewer is drawn.</summary>
internal static class CoveredBall
{
    // Lines of the warp stand so far apart on the flat panel, mm.
    private const double WarpStep = 5;

    private static readonly Pen Seam = new(0.7, Ink.Dark);
    private static readonly Pen Warp = new(0.13, Ink.Dark);

    /// <summary>The marks of the view.</summary>
    /// <param name="mesh">Strain of one panel; the other one is the same part.</param>
    /// <param name="side">From where it is seen, in the frame of the first panel.</param>
    /// <param name="pick">The strain that is shown.</param>
    /// <param name="scale">Its colours.</param>
    /// <param name="warpAngle">Angle of the warp in the panel's frame, radians; null where any serves.</param>
    /// <param name="at">Centre on the sheet.</param>
    /// <param name="radius">Radius on the sheet, mm.</param>
    public static IEnumerable<Mark> Draw(
        StrainMesh mesh, BallSide side, Func<StrainSample, double> pick, StrainScale scale, double? warpAngle, Point2 at, double radius)
    {
        yield return new PathMark([Chain.Circle(at, radius)], null, Ink.Copy);
        foreach (Func<SpherePoint, SpherePoint> panel in new Func<SpherePoint, SpherePoint>[] { p => p, Other })
        {
            FacingMesh facing = new(mesh, p => side.Seen(panel(p)));
            Point2[] places = [.. facing.Places.Select(p => at + (p * radius))];
            foreach (Mark band in StrainMap.Bands(places, facing.Values(pick), facing.Triangles, scale))
            {
                yield return band;
            }

            if (warpAngle is { } angle && WarpLines(facing, places, angle) is { Count: > 0 } lines)
            {
                yield return new PathMark(lines, Warp);
            }
        }

        SpherePoint[] seam = [.. mesh.Edge.Select(node => mesh.Nodes[node].Fitted)];
        yield return new PathMark(
            [.. side.Lines(seam, near: true).Select(line => Chain.Open([.. line.Select(p => at + (p * radius))]))], Seam);
        yield return new PathMark([Chain.Circle(at, radius)], Ink.Wide);
    }

    // The second panel is the first one turned half round the axis (1, -1, 0), as the seam is.
    private static SpherePoint Other(SpherePoint p) => new(-p.Y, -p.X, -p.Z);

    private static List<Chain> WarpLines(FacingMesh facing, Point2[] places, double angle)
    {
        Point2 across = new Point2(0, 1).Turned(angle);
        double[] offsets = facing.Values(sample => (sample.Place.X * across.X) + (sample.Place.Y * across.Y));
        int first = (int)Math.Floor(offsets.DefaultIfEmpty(0).Min() / WarpStep);
        int last = (int)Math.Ceiling(offsets.DefaultIfEmpty(0).Max() / WarpStep);

        // Half a step off the middle, so that no node lies on a line.
        return [.. Enumerable.Range(first, last - first + 1)
            .SelectMany(k => LevelLines.Of(places, offsets, facing.Triangles, (k + 0.5) * WarpStep))];
    }
}
