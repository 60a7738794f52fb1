namespace FeltNest.Geometry;

/// <summary>Things at places, found by the square they stand in, so that a look round one place does not ask all the others.</summary>
/// <param name="cellMm">Side of a square, mm.</param>
internal sealed class PlaceGrid<T>(double cellMm)
{
    private readonly Dictionary<(long X, long Y), List<T>> cells = [];

    /// <summary>Puts a thing at a place.</summary>
    public void Add(Point2 place, T thing)
    {
        (long, long) cell = (Cell(place.X), Cell(place.Y));
        (cells.TryGetValue(cell, out List<T>? held) ? held : cells[cell] = []).Add(thing);
    }

    /// <summary>Things whose squares a box touches: all that stand in the box, and some beside it.</summary>
    public IEnumerable<T> Within(Point2 low, Point2 high)
    {
        (long minX, long minY, long maxX, long maxY) = (Cell(low.X), Cell(low.Y), Cell(high.X), Cell(high.Y));
        if ((double)(maxX - minX + 1) * (maxY - minY + 1) > cells.Count)
        {
            foreach (((long x, long y), List<T> held) in cells)
            {
                if (x >= minX && x <= maxX && y >= minY && y <= maxY)
                {
                    foreach (T thing in held)
                    {
                        yield return thing;
                    }
                }
            }

            yield break;
        }

        for (long x = minX; x <= maxX; x++)
        {
            for (long y = minY; y <= maxY; y++)
            {
                foreach (T thing in cells.TryGetValue((x, y), out List<T>? held) ? held : [])
                {
                    yield return thing;
                }
            }
        }
    }

    /// <summary>Things no further than so much from a place along and across, and some beyond.</summary>
    public IEnumerable<T> Near(Point2 place, double reachMm) =>
        Within(place - new Point2(reachMm, reachMm), place + new Point2(reachMm, reachMm));

    private long Cell(double at) => (long)Math.Floor(at / cellMm);
}
