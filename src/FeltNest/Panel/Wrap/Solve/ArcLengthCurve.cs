using FeltNest.Geometry;
using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>An outline of arcs by its length, scaled so that a round is 2 pi.</summary>
internal sealed class ArcLengthCurve : IPlaneCurve
{
    private readonly ArcVertex[] vertices;
    private readonly double[] starts;
    private readonly double rate;

    /// <summary>Measures the pieces.</summary>
    public ArcLengthCurve(ArcOutline outline)
    {
        vertices = [.. outline.Vertices];
        starts = new double[vertices.Length + 1];
        for (int i = 0; i < vertices.Length; i++)
        {
            starts[i + 1] = starts[i] + (vertices[i].Turn == 0 ? (End(i) - vertices[i].Point).Length : Arc(i).Length);
        }

        rate = starts[^1] / (2 * Math.PI);
    }

    /// <inheritdoc/>
    public double Period => 2 * Math.PI;

    /// <summary>Parameters of the vertices, and of the middle of each arc between them, in order.</summary>
    public IEnumerable<double> Marks => Enumerable.Range(0, vertices.Length)
        .SelectMany(i => vertices[i].Turn == 0 ? [starts[i]] : new[] { starts[i], (starts[i] + starts[i + 1]) / 2 })
        .Select(length => length / rate);

    /// <inheritdoc/>
    public CurvePoint At(double parameter)
    {
        double at = Math.Clamp(parameter * rate, 0, starts[^1]);
        int found = Array.BinarySearch(starts, at);
        int i = Math.Clamp(found >= 0 ? found : ~found - 1, 0, vertices.Length - 1);
        double share = (at - starts[i]) / (starts[i + 1] - starts[i]);
        if (vertices[i].Turn == 0)
        {
            Point2 chord = End(i) - vertices[i].Point;
            return new CurvePoint(vertices[i].Point + (chord * share), chord * (rate / chord.Length));
        }

        ArcPiece arc = Arc(i);
        Point2 spoke = arc.Spoke(share * arc.Turn);
        return new CurvePoint(arc.Centre + spoke, spoke.Left * (Math.Sign(arc.Turn) * rate / arc.Radius));
    }

    private Point2 End(int i) => vertices[(i + 1) % vertices.Length].Point;

    private ArcPiece Arc(int i) => ArcPiece.Between(vertices[i].Point, End(i), vertices[i].Turn);
}
