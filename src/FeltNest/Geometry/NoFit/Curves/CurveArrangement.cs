using System.Runtime.InteropServices;

namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>Closed curves cut at every place where they cross, touch or come within the touching distance of an end or a
/// crossing.</summary>
/// <remarks>Snap rounding with places instead of pixels (J. Hobby, <i>Practical segment intersection with finite precision output</i>,
/// Comput. Geometry 13, 1999, from memory): every end and crossing is a place, places within the touching distance are one, and a piece
/// that passes a place within that distance is led through it. Sides that touch within rounding thus share their edges.</remarks>
internal sealed class CurveArrangement
{
    private readonly IReadOnlyList<CurvePiece> pieces;
    private readonly PlaceIndex index;
    private readonly double touch;

    internal CurveArrangement(IReadOnlyList<CurvePiece> pieces, double touch)
    {
        this.pieces = pieces;
        this.touch = touch;
        index = new PlaceIndex(touch);
        int[] from = [.. pieces.Select(p => index.NumberOf(p.From))];
        int[] to = [.. pieces.Select(p => index.NumberOf(p.To))];
        PieceGrid grid = new(pieces, touch);
        Cross(grid);
        Edges = Cut(grid, from, to);
    }

    /// <summary>Places by number.</summary>
    internal IReadOnlyList<Point2> Places => index.Places;

    /// <summary>Edges between places.</summary>
    internal CurveEdge[] Edges { get; }

    private void Cross(PieceGrid grid)
    {
        for (int cell = 0; cell < grid.Columns * grid.Rows; cell++)
        {
            ReadOnlySpan<int> here = grid.In(cell);
            for (int i = 0; i < here.Length; i++)
            {
                CurvePiece a = pieces[here[i]];
                Point2 along = a.To - a.From;
                for (int k = i + 1; k < here.Length; k++)
                {
                    CurvePiece b = pieces[here[k]];
                    double start = along.Cross(b.From - a.From);
                    double end = along.Cross(b.To - a.From);

                    // Where rounding hides a crossing an end lies within the touching distance, and the cutting finds it.
                    if (start > 0 == end > 0 || start == 0 || end == 0)
                    {
                        continue;
                    }

                    Point2 other = b.To - b.From;
                    double first = other.Cross(a.From - b.From);
                    double last = other.Cross(a.To - b.From);
                    if (first > 0 == last > 0 || first == 0 || last == 0)
                    {
                        continue;
                    }

                    Point2 place = a.From + (along * (first / (first - last)));
                    if (grid.CellOf(place) == cell)
                    {
                        index.NumberOf(place);
                    }
                }
            }
        }
    }

    private CurveEdge[] Cut(PieceGrid grid, int[] from, int[] to)
    {
        List<(int Piece, double Share, int Place)> cuts = Cuts(grid, from, to);
        Dictionary<(int, int), CurveEdge> edges = new(pieces.Count + (2 * cuts.Count));
        int next = 0;
        for (int i = 0; i < pieces.Count; i++)
        {
            int last = from[i];
            for (; next < cuts.Count && cuts[next].Piece == i; next++)
            {
                Add(edges, last, cuts[next].Place, pieces[i].Joins);
                last = cuts[next].Place;
            }

            Add(edges, last, to[i], pieces[i].Joins);
        }

        return [.. edges.Values];
    }

    // Where places lie inside pieces, in order along each piece.
    private List<(int Piece, double Share, int Place)> Cuts(PieceGrid grid, int[] from, int[] to)
    {
        List<(int Piece, double Share, int Place)> cuts = [];
        for (int place = 0; place < Places.Count; place++)
        {
            Point2 at = Places[place];
            foreach (int i in grid.In(grid.CellOf(at)))
            {
                if (from[i] == place || to[i] == place)
                {
                    continue;
                }

                Point2 start = pieces[i].From;
                Point2 along = pieces[i].To - start;
                Point2 off = at - start;
                double square = along.Dot(along);
                double share = off.Dot(along);
                double cross = along.Cross(off);
                if (cross * cross <= touch * touch * square && share > 0 && share < square)
                {
                    cuts.Add((i, share / square, place));
                }
            }
        }

        cuts.Sort();
        return cuts;
    }

    private static void Add(Dictionary<(int, int), CurveEdge> edges, int from, int to, bool joins)
    {
        if (from == to)
        {
            return;
        }

        (int a, int b) = from < to ? (from, to) : (to, from);
        ref CurveEdge edge = ref CollectionsMarshal.GetValueRefOrAddDefault(edges, (a, b), out bool known);
        edge = (known ? edge : new CurveEdge
        {
            A = a,
            B = b,
            Forward = 0,
            Backward = 0,
            ForwardJoins = 0,
            BackwardJoins = 0,
        }).With(from == a, joins);
    }
}
