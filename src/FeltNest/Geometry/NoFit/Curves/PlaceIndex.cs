namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>Numbers places so that places within the touching distance of each other are one.</summary>
internal sealed class PlaceIndex
{
    // Cells this many touching distances wide: most places then look into one cell alone.
    private const double CellSize = 16;

    // Places are kept to a power of two of this share of the touching distance (a few units of the last place of a coordinate), so that the
    // last bits of a sum of coordinates, which depend on the order of adding, do not show.
    private const double Digit = 1.0 / 16384;

    private readonly double touch;
    private readonly double cell;
    private readonly double digit;
    private readonly Dictionary<(long, long), int> newest = [];
    private readonly List<int> older = [];
    private readonly List<Point2> places = [];

    internal PlaceIndex(double touch) => (this.touch, cell, digit) = (touch, CellSize * touch, Math.ScaleB(1, Math.ILogB(Digit * touch)));

    /// <summary>The places, by number.</summary>
    internal List<Point2> Places => places;

    /// <summary>The number of the known place nearest by, or of this one as a new place.</summary>
    internal int NumberOf(Point2 p)
    {
        p = new Point2(Math.Round(p.X / digit) * digit, Math.Round(p.Y / digit) * digit);
        long lowX = Cell(p.X - touch);
        long highX = Cell(p.X + touch);
        long lowY = Cell(p.Y - touch);
        long highY = Cell(p.Y + touch);
        for (long x = lowX; x <= highX; x++)
        {
            for (long y = lowY; y <= highY; y++)
            {
                for (int i = newest.GetValueOrDefault((x, y), -1); i >= 0; i = older[i])
                {
                    Point2 apart = places[i] - p;
                    if (apart.Dot(apart) <= touch * touch)
                    {
                        return i;
                    }
                }
            }
        }

        (long, long) key = (Cell(p.X), Cell(p.Y));
        older.Add(newest.GetValueOrDefault(key, -1));
        newest[key] = places.Count;
        places.Add(p);
        return places.Count - 1;
    }

    private long Cell(double x) => (long)Math.Floor(x / cell);
}
