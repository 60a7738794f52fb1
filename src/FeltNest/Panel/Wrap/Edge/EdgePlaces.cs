using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Panel.Wrap.Solve;

namespace FeltNest.Panel.Wrap.Edge;

/// <summary>Places of an outline's edge that say where it runs: its vertices, and the middle of each arc.</summary>
internal static class EdgePlaces
{
    /// <summary>How many vertices an outline has at which its tangent turns by more than an angle, radians.</summary>
    public static int Bends(ArcOutline outline, double angle)
    {
        IReadOnlyList<ArcVertex> vertices = outline.Vertices;
        int n = vertices.Count;
        return Enumerable.Range(0, n).Count(i =>
        {
            ArcVertex before = vertices[(i + n - 1) % n];
            Point2 arriving = (vertices[i].Point - before.Point).Turned(before.Turn / 2);
            Point2 leaving = (vertices[(i + 1) % n].Point - vertices[i].Point).Turned(-vertices[i].Turn / 2);
            return Math.Abs(Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving))) > angle;
        });
    }

    /// <summary>Whether an outline is kept by the half-turn about its centroid as drawn.</summary>
    public static bool IsEven(ArcOutline outline)
    {
        // Places looked at, and how far one may lie off another's image, mm: rounding of a drawing.
        const int looks = 240;
        const double rounding = 3e-4;
        ArcLengthCurve curve = new(outline);
        Point2[] places = [.. Enumerable.Range(0, looks).Select(i => curve.At(i * curve.Period / looks).Place - outline.Centroid)];
        return Enumerable.Range(0, looks / 2).All(i => (places[i] + places[i + (looks / 2)]).Length < rounding);
    }

    /// <summary>The places, seen from a centre with an axis along u, and their shares of the length from the waist at negative v, times
    /// 2 pi.</summary>
    public static (Point2[] Places, double[] Parameters) Of(ArcOutline outline, Point2 centre, double axis)
    {
        ArcLengthCurve curve = new(ArcOutline.From(outline.Vertices.Select(v =>
        {
            Point2 seen = (v.Point - centre).Turned(-axis);
            return new ArcVertex(seen.X, seen.Y, v.Turn);
        })));
        double start = curve.Below(default);
        double[] at = [.. curve.Marks];
        return ([.. at.Select(t => curve.At(t).Place)], [.. at.Select(t => t - start)]);
    }

    /// <summary>How far at most a curve runs off an outline as drawn, mm.</summary>
    public static double OffDrawn(ArcOutline outline, IPlaneCurve curve)
    {
        // Places looked at on the outline, and on the curve: half a millimetre apart on an ordinary panel.
        const int looks = 400;
        const int grid = 800;
        ArcLengthCurve drawn = new(outline);
        CurvePoint[] edge = [.. Enumerable.Range(0, grid).Select(i => curve.At(i * curve.Period / grid))];
        return Enumerable.Range(0, looks).Max(i =>
        {
            Point2 place = drawn.At(i * drawn.Period / looks).Place;
            CurvePoint near = edge.MinBy(p => (p.Place - place).Length);
            return Math.Abs((place - near.Place).Cross(near.Derivative) / near.Derivative.Length);
        });
    }
}
