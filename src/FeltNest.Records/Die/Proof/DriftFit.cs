namespace FeltNest.Die.Proof;

/// <summary>How well a straight line tells the drift of a die.</summary>
internal enum DriftFit
{
    /// <summary>Fewer than four readings: nothing can be said.</summary>
    TooFew,

    /// <summary>Nothing speaks against a straight line.</summary>
    Line,

    /// <summary>One reading lies off the line of the others: a knock, a slip of the hand, or the end of the edge.</summary>
    OneOff,

    /// <summary>The readings bend: wear grows faster or slower than a straight line.</summary>
    Bends,
}
