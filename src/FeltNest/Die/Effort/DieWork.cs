namespace FeltNest.Die.Effort;

/// <summary>What the design of a die has built and looked at, counted, and the order to stop: every look can be the last.</summary>
/// <param name="stop">Breaks the work off.</param>
internal sealed class DieWork(CancellationToken stop)
{
    /// <summary>Gangs built.</summary>
    public int Gangs { get; private set; }

    /// <summary>Cavities, places and pairs looked at.</summary>
    public long Looks { get; private set; }

    /// <summary>One more gang is built.</summary>
    public void Build() => Gangs++;

    /// <summary>So many more are looked at.</summary>
    /// <exception cref="OperationCanceledException">Broken off.</exception>
    public void Look(long count = 1)
    {
        stop.ThrowIfCancellationRequested();
        Looks += count;
    }
}
