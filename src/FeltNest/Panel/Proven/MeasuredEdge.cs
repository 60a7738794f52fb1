using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Panel.Wrap.Solve;

namespace FeltNest.Panel.Proven;

/// <summary>Places on a measured outline, at equal steps of its length, seen from its centroid with its long axis along u.</summary>
internal sealed class MeasuredEdge
{
    // Places looked at: one every millimetre of an ordinary panel's edge.
    private const int Count = 400;

    /// <summary>Takes the places.</summary>
    public MeasuredEdge(ArcOutline outline)
    {
        ArcLengthCurve curve = new(outline);
        Point2[] raw = [.. Enumerable.Range(0, Count).Select(i => curve.At(i * curve.Period / Count).Place - outline.Centroid)];
        Axis = LongAxis.Of(raw, default).Angle;
        Places = [.. raw.Select(p => p.Turned(-Axis))];
    }

    /// <summary>The places.</summary>
    public Point2[] Places { get; }

    /// <summary>Direction of the long axis in the outline's own frame, radians.</summary>
    public double Axis { get; }

    /// <summary>For each place, turned and moved, the nearest place of an edge: its parameter, place, normal out of the panel, and the
    /// distance along that normal.</summary>
    public (double Parameter, Point2 Foot, Point2 Outward, double Off)[] Against(IPlaneCurve edge, double turn, Point2 move)
    {
        // Places of the edge looked at before the foot is refined, and steps of that: it halves its error's digits each time.
        const int looks = 720;
        const int refinements = 6;
        CurvePoint[] grid = [.. Enumerable.Range(0, looks).Select(i => edge.At(i * edge.Period / looks))];
        return [.. Places.Select(place =>
        {
            Point2 q = place.Turned(turn) + move;
            int nearest = 0;
            double least = double.PositiveInfinity;
            for (int i = 0; i < looks; i++)
            {
                Point2 apart = grid[i].Place - q;
                double square = apart.Dot(apart);
                (nearest, least) = square < least ? (i, square) : (nearest, least);
            }

            double s = nearest * edge.Period / looks;
            CurvePoint here = grid[nearest];
            for (int k = 0; k < refinements; k++)
            {
                s += (q - here.Place).Dot(here.Derivative) / here.Derivative.Dot(here.Derivative);
                here = edge.At(s);
            }

            Point2 outward = -(here.Derivative * (1 / here.Derivative.Length)).Left;
            return (s, here.Place, outward, (q - here.Place).Dot(outward));
        })];
    }
}
