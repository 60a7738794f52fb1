namespace FeltNest.Rolls;

/// <summary>Which way along the roll the nap lies.</summary>
public enum NapDirection
{
    /// <summary>Along +x, the feed.</summary>
    Forward,

    /// <summary>Along -x, against the feed.</summary>
    Backward,
}
