using FeltNest.Geometry;

namespace FeltNest.Layout.Polish;

/// <summary>A part at one angle, with the outward normals of its edges, ready for distance work.</summary>
internal sealed class PosedOutline
{
    internal PosedOutline(Outline part, double angle)
    {
        Outline turned = part.Turned(angle);
        int n = turned.Points.Count;
        (X, Y, AlongX, AlongY, Length, IsOutwardCorner) = (new double[n], new double[n], new double[n], new double[n], new double[n], new bool[n]);
        for (int i = 0; i < n; i++)
        {
            Point2 a = turned.Points[i], b = turned.Points[(i + 1) % n];
            Length[i] = (b - a).Length;
            (X[i], Y[i], AlongX[i], AlongY[i]) = (a.X, a.Y, (b.X - a.X) / Length[i], (b.Y - a.Y) / Length[i]);
        }

        for (int i = 0; i < n; i++)
        {
            int before = (i + n - 1) % n;
            IsOutwardCorner[i] = (AlongX[before] * AlongY[i]) - (AlongY[before] * AlongX[i]) > 0;
        }

        (MinX, MaxX, MinY, MaxY) = (X.Min(), X.Max(), Y.Min(), Y.Max());
        Angle = angle;
    }

    internal double Angle { get; }

    internal double[] X { get; }

    internal double[] Y { get; }

    /// <summary>Unit vector along edge i, which runs from corner i to the next.</summary>
    internal double[] AlongX { get; }

    internal double[] AlongY { get; }

    internal double[] Length { get; }

    /// <summary>True where the corner bulges outwards, so that a point can have it as its nearest place.</summary>
    internal bool[] IsOutwardCorner { get; }

    internal double MinX { get; }

    internal double MaxX { get; }

    internal double MinY { get; }

    internal double MaxY { get; }
}
