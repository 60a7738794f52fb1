using FeltNest.Die.Edge;
using FeltNest.Geometry;

namespace FeltNest.Die.Board;

/// <summary>Where the slots of a board are, to keep holes and words clear of them.</summary>
internal sealed class SlotPlaces
{
    // Outlines are looked at in steps of this, mm; a place may be nearer to the line between two steps by what that makes.
    private const double Step = 0.5;
    private const double Cell = 10;

    private readonly PlaceGrid<Point2> grid = new(Cell);
    private readonly (Point2 Low, Point2 High)[] boxes;

    /// <summary>The outlines.</summary>
    public SlotPlaces(IReadOnlyList<IReadOnlyList<ArcVertex>> outlines)
    {
        List<(Point2 Low, Point2 High)> found = [];
        foreach (IReadOnlyList<ArcVertex> outline in outlines)
        {
            List<Point2> places = [];
            for (int i = 0; i < outline.Count; i++)
            {
                EdgePiece piece = EdgePiece.Of(outline[i], outline[(i + 1) % outline.Count].Point);
                int count = Math.Max(1, (int)Math.Ceiling(piece.LengthMm / Step));
                places.AddRange(Enumerable.Range(0, count).Select(k => piece.At((double)k / count)));
            }

            places.ForEach(p => grid.Add(p, p));
            found.Add((new(places.Min(p => p.X), places.Min(p => p.Y)), new(places.Max(p => p.X), places.Max(p => p.Y))));
        }

        boxes = [.. found];
    }

    /// <summary>Whether every place of the straight way from one place to another is further than so much from every slot's line.</summary>
    public bool Clear(Point2 from, Point2 to, double awayMm)
    {
        double reach = awayMm + (Step / 2);
        int count = Math.Max(1, (int)Math.Ceiling((to - from).Length / Math.Max(1, reach)));
        return Enumerable.Range(0, count + 1).All(k => Free(from + ((to - from) * ((double)k / count)), from, to, awayMm, reach));
    }

    /// <summary>Slots that a straight line across the board cuts through.</summary>
    public int Crossings(double at, bool alongX) =>
        boxes.Count(b => alongX ? b.Low.X < at && b.High.X > at : b.Low.Y < at && b.High.Y > at);

    private bool Free(Point2 here, Point2 from, Point2 to, double awayMm, double reach) => grid.Near(here, reach + Step).All(p =>
    {
        Point2 way = to - from;
        double share = way.Length > 0 ? Math.Clamp((p - from).Dot(way) / way.Dot(way), 0, 1) : 0;
        return (from + (way * share) - p).Length > Math.Sqrt((awayMm * awayMm) + (Step * Step / 4));
    });
}
