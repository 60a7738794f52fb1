using FeltNest.Geometry;

namespace FeltNest.Files.Outlines;

/// <summary>A run of straight pieces and arcs as a drawing gives it, in mm; whether it closes is found out later.</summary>
internal sealed class OpenChain
{
    // Pieces shorter than this, mm, are rounding of the file, not pieces.
    private const double Shortest = 1e-9;

    private readonly List<ArcVertex> vertices;

    /// <summary>A run that begins at a place.</summary>
    public OpenChain(Point2 start) => vertices = [new ArcVertex(start.X, start.Y, 0)];

    private OpenChain(List<ArcVertex> vertices) => this.vertices = vertices;

    /// <summary>Vertices in order; each carries the turn of the piece to the next, the last one none.</summary>
    public IReadOnlyList<ArcVertex> Vertices => vertices;

    /// <summary>Where it begins.</summary>
    public Point2 Start => vertices[0].Point;

    /// <summary>Where it ends so far.</summary>
    public Point2 End => vertices[^1].Point;

    /// <summary>Whether the drawing itself says that the end is joined to the start.</summary>
    public bool Closed { get; set; }

    /// <summary>Goes on by a straight piece, or by an arc with a turn in radians; a piece without length is left out.</summary>
    public void GoTo(Point2 to, double turn = 0)
    {
        if ((to - End).Length > Shortest)
        {
            vertices[^1] = vertices[^1] with { Turn = turn };
            vertices.Add(new ArcVertex(to.X, to.Y, 0));
        }
    }

    /// <summary>The same run from its end to its start.</summary>
    public OpenChain Reversed()
    {
        List<ArcVertex> back = [];
        for (int i = vertices.Count - 1; i >= 0; i--)
        {
            back.Add(vertices[i] with { Turn = i > 0 ? -vertices[i - 1].Turn : 0 });
        }

        return new OpenChain(back) { Closed = Closed };
    }

    /// <summary>This run and, from its end on, another whose start takes the place of that end.</summary>
    public OpenChain Joined(OpenChain next)
    {
        List<ArcVertex> all = [.. vertices];
        double turn = all.Count > 1 ? all[^2].Turn : 0;
        all.RemoveAt(all.Count - 1);
        if (all.Count > 0)
        {
            all[^1] = all[^1] with { Turn = turn };
        }

        all.AddRange(next.vertices);
        return new OpenChain(all);
    }
}
