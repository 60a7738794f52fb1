using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Seam;

namespace FeltNest.Drawing.Strain;

/// <summary>The covered ball from one side, in parallel projection: both panels with their strain in bands, the warp as fine lines, the
/// seam. Only the half that faces the viewer is drawn.</summary>
internal sealed class CoveredBall
{
    // Lines of the warp stand so far apart on the flat panel, mm.
    private const double WarpStep = 5;

    private static readonly Pen Seam = new(0.7, Ink.Dark);
    private static readonly Pen Warp = new(0.13, Ink.Dark);

    private readonly StrainMesh mesh;
    private readonly SpherePoint toViewer;
    private readonly SpherePoint right;
    private readonly SpherePoint up;

    /// <summary>A view.</summary>
    /// <param name="mesh">Strain of one panel; the other one is the same part.</param>
    /// <param name="toViewer">Direction to the viewer in the frame of the first panel; need not have length 1.</param>
    /// <param name="right">Direction that points to the right, at right angles to it.</param>
    public CoveredBall(StrainMesh mesh, SpherePoint toViewer, SpherePoint right)
    {
        this.mesh = mesh;
        this.toViewer = 1 / toViewer.Length * toViewer;
        this.right = 1 / right.Length * right;
        up = this.toViewer.Cross(this.right);
    }

    /// <summary>The marks of the view.</summary>
    /// <param name="pick">The strain that is shown.</param>
    /// <param name="scale">Its colours.</param>
    /// <param name="warpAngle">Angle of the warp in the panel's frame, radians; null where any serves.</param>
    /// <param name="at">Centre on the sheet.</param>
    /// <param name="radius">Radius on the sheet, mm.</param>
    public IEnumerable<Mark> Draw(Func<StrainSample, double> pick, StrainScale scale, double? warpAngle, Point2 at, double radius)
    {
        yield return new PathMark([Chain.Circle(at, radius)], null, Ink.Copy);
        foreach (Func<SpherePoint, SpherePoint> panel in new Func<SpherePoint, SpherePoint>[] { p => p, Other })
        {
            FacingMesh facing = new(mesh, p => InView(panel(p)));
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

        yield return new PathMark([.. SeamLines().Select(line => Chain.Open([.. line.Select(p => at + (p * radius))]))], Seam);
        yield return new PathMark([Chain.Circle(at, radius)], Ink.Wide);
    }

    // The second panel is the first one turned half round the axis (1, -1, 0), as the seam is.
    private static SpherePoint Other(SpherePoint p) => new(-p.Y, -p.X, -p.Z);

    // To the right, up, to the viewer.
    private (double X, double Y, double Z) InView(SpherePoint p) => (p.Dot(right), p.Dot(up), p.Dot(toViewer));

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

    // The seam's pieces that face the viewer, each to where it passes out of sight.
    private List<List<Point2>> SeamLines()
    {
        (double X, double Y, double Z)[] points = [.. mesh.Edge.Select(node => InView(mesh.Nodes[node].Fitted))];
        int start = Math.Max(0, Array.FindIndex(points, p => p.Z < 0));
        List<List<Point2>> lines = [];
        List<Point2> line = [];
        for (int i = 0; i < points.Length; i++)
        {
            (double X, double Y, double Z) here = points[(start + i) % points.Length];
            (double X, double Y, double Z) next = points[(start + i + 1) % points.Length];
            if (here.Z >= 0)
            {
                line.Add(new Point2(here.X, here.Y));
            }

            if (here.Z >= 0 != next.Z >= 0)
            {
                line.Add(FacingMesh.OnRim(here, next));
            }

            if (here.Z >= 0 && next.Z < 0)
            {
                lines.Add(line);
                line = [];
            }
        }

        return line.Count > 1 ? [.. lines, line] : lines;
    }
}
