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

    /// <summary>Where the edge passes below a point of the plane: the parameter of its lowest crossing with the vertical through the
    /// point.</summary>
    public double Below(Point2 point)
    {
        // Looks round the edge, then halvings down to the last digits.
        const int looks = 2000;
        const int halvings = 50;
        double best = 0;
        double lowest = double.PositiveInfinity;
        for (int i = 0; i < looks; i++)
        {
            double low = i * Period / looks;
            double high = (i + 1) * Period / looks;
            if (At(low).Place.X < point.X != At(high % Period).Place.X < point.X)
            {
                bool left = At(low).Place.X < point.X;
                for (int k = 0; k < halvings; k++)
                {
                    double middle = (low + high) / 2;
                    (low, high) = At(middle).Place.X < point.X == left ? (middle, high) : (low, middle);
                }

                double height = At(low).Place.Y;
                (best, lowest) = height < lowest ? (low, height) : (best, lowest);
            }
        }

        return best;
    }

    private Point2 End(int i) => vertices[(i + 1) % vertices.Length].Point;

    private ArcPiece Arc(int i) => ArcPiece.Between(vertices[i].Point, End(i), vertices[i].Turn);
}
