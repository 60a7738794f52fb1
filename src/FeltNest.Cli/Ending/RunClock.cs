using System.Diagnostics;

namespace FeltNest.Cli.Ending;

/// <summary>How long a run has been at work: a cap in seconds counts from its start, so that what goes before the search is in
/// it.</summary>
internal sealed class RunClock
{
    private readonly Stopwatch since = Stopwatch.StartNew();

    /// <summary>A token that is stopped once the run has taken so many seconds, or with another.</summary>
    public CancellationTokenSource Capped(double seconds, CancellationToken stop)
    {
        CancellationTokenSource capped = CancellationTokenSource.CreateLinkedTokenSource(stop);
        TimeSpan left = TimeSpan.FromSeconds(seconds) - since.Elapsed;
        capped.CancelAfter(left > TimeSpan.Zero ? left : TimeSpan.Zero);
        return capped;
    }
}
