namespace FeltNest.Ball.Passport;

/// <summary>A straight line and a parabola laid by least squares through the places of one strip.</summary>
internal sealed class StripLine
{
    private StripLine(double slope, double leftSquares, double bowRow, double bow) =>
        (Slope, LeftSquares, BowRow, Bow) = (slope, leftSquares, bowRow, bow);

    /// <summary>Slope of the straight line.</summary>
    public double Slope { get; }

    /// <summary>Squares that the straight line leaves.</summary>
    public double LeftSquares { get; }

    /// <summary>Squares of what a straight line leaves of x2: how well the places tell a bend.</summary>
    public double BowRow { get; }

    /// <summary>Factor of x2 in the parabola.</summary>
    public double Bow { get; }

    /// <summary>Slope at x = 0 where the factor of x2 is this strip's own.</summary>
    public double SlopeAtZero { get; private init; }

    /// <summary>The line through places.</summary>
    public static StripLine Of(IReadOnlyList<(double X, double Y)> places)
    {
        double x = places.Average(p => p.X);
        double square = places.Average(p => p.X * p.X);
        double y = places.Average(p => p.Y);
        double xx = places.Sum(p => (p.X - x) * (p.X - x));
        double slope = places.Sum(p => (p.X - x) * (p.Y - y)) / xx;
        double ofSquare = places.Sum(p => (p.X - x) * ((p.X * p.X) - square)) / xx;
        double left = 0;
        double row = 0;
        double product = 0;
        foreach ((double atX, double atY) in places)
        {
            double offLine = atY - y - (slope * (atX - x));
            double offSquare = (atX * atX) - square - (ofSquare * (atX - x));
            left += offLine * offLine;
            row += offSquare * offSquare;
            product += offLine * offSquare;
        }

        double bow = product / row;
        return new StripLine(slope, left, row, bow) { SlopeAtZero = slope - (bow * ofSquare) };
    }
}
