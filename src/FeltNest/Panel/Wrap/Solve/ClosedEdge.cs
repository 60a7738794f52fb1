using FeltNest.Geometry;
using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>Figures of a closed edge that any curve has.</summary>
internal static class ClosedEdge
{
    // Steps round an edge: sums over them are exact for a smooth one.
    private const int Steps = 2880;

    extension(IPlaneCurve edge)
    {
        /// <summary>Area centroid, mm.</summary>
        public Point2 Centroid()
        {
            double area = 0;
            Point2 moment = default;
            double step = edge.Period / Steps;
            Point2 near = edge.At(0).Place;
            for (int i = 0; i < Steps; i++)
            {
                CurvePoint here = edge.At(i * step);
                double strip = (here.Place - near).Cross(here.Derivative) * step / 2;
                area += strip;
                moment += (here.Place - near) * (strip * 2 / 3);
            }

            return near + (moment * (1 / area));
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
                double low = i * edge.Period / looks;
                double high = (i + 1) * edge.Period / looks;
                bool left = edge.At(low).Place.X < point.X;
                if (left != edge.At(high % edge.Period).Place.X < point.X)
                {
                    for (int k = 0; k < halvings; k++)
                    {
                        double middle = (low + high) / 2;
                        (low, high) = edge.At(middle).Place.X < point.X == left ? (middle, high) : (low, middle);
                    }

                    double height = edge.At(low).Place.Y;
                    (best, lowest) = height < lowest ? (low, height) : (best, lowest);
                }
            }

            return best;
        }
    }
}
