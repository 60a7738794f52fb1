namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>Square cells over the plane, each with the pieces that pass it or come within the touching distance of it.</summary>
internal sealed class PieceGrid
{
    // Cells to a side per square root of the count of pieces, and the most: about a handful of pieces a cell for smooth parts.
    private const double Density = 1.5;
    private const int MostCells = 512;

    private readonly double lowX;
    private readonly double lowY;
    private readonly double cell;
    private readonly int[] starts;
    private readonly int[] pieces;

    internal PieceGrid(IReadOnlyList<CurvePiece> all, double touch)
    {
        double highX;
        double highY;
        lowX = lowY = double.PositiveInfinity;
        highX = highY = double.NegativeInfinity;
        foreach (CurvePiece piece in all)
        {
            (lowX, highX) = (Math.Min(lowX, piece.From.X), Math.Max(highX, piece.From.X));
            (lowY, highY) = (Math.Min(lowY, piece.From.Y), Math.Max(highY, piece.From.Y));
        }

        double extent = Math.Max(highX - lowX, highY - lowY);
        cell = (extent + (8 * touch)) / Math.Clamp((int)(Density * Math.Sqrt(all.Count)), 1, MostCells);
        (lowX, lowY) = (lowX - (2 * touch), lowY - (2 * touch));
        (Columns, Rows) = (1 + (int)((highX + (2 * touch) - lowX) / cell), 1 + (int)((highY + (2 * touch) - lowY) / cell));
        starts = new int[(Columns * Rows) + 1];
        for (int i = 0; i < all.Count; i++)
        {
            Visit(all[i], touch, at => starts[at + 1]++);
        }

        for (int i = 0; i < Columns * Rows; i++)
        {
            starts[i + 1] += starts[i];
        }

        int[] filled = [.. starts];
        pieces = new int[starts[^1]];
        for (int i = 0; i < all.Count; i++)
        {
            int number = i;
            Visit(all[i], touch, at => pieces[filled[at]++] = number);
        }
    }

    internal int Columns { get; }

    internal int Rows { get; }

    /// <summary>Pieces of a cell, in rising order.</summary>
    internal ReadOnlySpan<int> In(int cellNumber) => pieces.AsSpan(starts[cellNumber], starts[cellNumber + 1] - starts[cellNumber]);

    /// <summary>The cell of a place.</summary>
    internal int CellOf(Point2 p) => (Row(p.Y) * Columns) + Column(p.X);

    private int Column(double x) => Math.Clamp((int)((x - lowX) / cell), 0, Columns - 1);

    private int Row(double y) => Math.Clamp((int)((y - lowY) / cell), 0, Rows - 1);

    // Row by row: the columns between the places where the piece enters and leaves the row, all grown by the margin.
    private void Visit(CurvePiece piece, double touch, Action<int> cellFound)
    {
        double margin = 2 * touch;
        (Point2 a, Point2 b) = piece.From.Y <= piece.To.Y ? (piece.From, piece.To) : (piece.To, piece.From);
        int first = Row(a.Y - margin);
        int last = Row(b.Y + margin);
        double slope = b.Y > a.Y ? (b.X - a.X) / (b.Y - a.Y) : 0;
        double leastX = Math.Min(a.X, b.X);
        double mostX = Math.Max(a.X, b.X);
        for (int row = first; row <= last; row++)
        {
            double enter = leastX;
            double leave = mostX;
            if (b.Y - a.Y > margin)
            {
                double low = a.X + (slope * (lowY + (row * cell) - margin - a.Y));
                double high = a.X + (slope * (lowY + ((row + 1) * cell) + margin - a.Y));
                (enter, leave) = (Math.Max(leastX, Math.Min(low, high)), Math.Min(mostX, Math.Max(low, high)));
            }

            for (int column = Column(enter - margin); column <= Column(leave + margin); column++)
            {
                cellFound((row * Columns) + column);
            }
        }
    }
}
