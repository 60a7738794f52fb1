namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>An edge of an arrangement with the pieces that run along it, counted by direction and kind.</summary>
internal readonly record struct CurveEdge
{
    /// <summary>Place with the lower number.</summary>
    public required int A { get; init; }

    /// <summary>Place with the higher number.</summary>
    public required int B { get; init; }

    /// <summary>Pieces from A to B at which a meeting begins on their left.</summary>
    public required int Forward { get; init; }

    /// <summary>The same from B to A.</summary>
    public required int Backward { get; init; }

    /// <summary>Pieces from A to B at which two meetings join.</summary>
    public required int ForwardJoins { get; init; }

    /// <summary>The same from B to A.</summary>
    public required int BackwardJoins { get; init; }

    /// <summary>How much higher the winding number is on the left of A to B than on the right.</summary>
    internal int Rise => Forward + ForwardJoins - Backward - BackwardJoins;

    /// <summary>Meetings on the edge itself, given the winding number on the left of A to B.</summary>
    internal int Meetings(int left) => left - Forward + BackwardJoins;

    /// <summary>The edge with one more piece.</summary>
    internal CurveEdge With(bool forward, bool joins) => this with
    {
        Forward = Forward + (forward && !joins ? 1 : 0),
        Backward = Backward + (!forward && !joins ? 1 : 0),
        ForwardJoins = ForwardJoins + (forward && joins ? 1 : 0),
        BackwardJoins = BackwardJoins + (!forward && joins ? 1 : 0),
    };
}
