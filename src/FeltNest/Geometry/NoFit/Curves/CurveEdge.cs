namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>An edge of an arrangement with the pieces that run along it, counted by direction and kind.</summary>
/// <param name="A">Place with the lower number.</param>
/// <param name="B">Place with the higher number.</param>
/// <param name="Forward">Pieces from A to B at which a meeting begins on their left.</param>
/// <param name="Backward">The same from B to A.</param>
/// <param name="ForwardJoins">Pieces from A to B at which two meetings join.</param>
/// <param name="BackwardJoins">The same from B to A.</param>
internal readonly record struct CurveEdge(int A, int B, int Forward, int Backward, int ForwardJoins, int BackwardJoins)
{
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
