using System.Diagnostics;

namespace FeltNest.Cli.Ending;

/// <summary>How long a run has been at work: a cap in seconds counts from its start, so that what goes before the search is in
/// it.</summary>
internal sealed class RunClock
{
    // Results are drawn and written after the search: this much of the cap is left for them.
    private static readonly TimeSpan Writing = TimeSpan.FromSeconds(0.8);

    private readonly Stopwatch since = Stopwatch.StartNew();

    /// <summary>A token that is stopped in time for the run to end after so many seconds, or with another.</summary>
    public CancellationTokenSource Capped(double seconds, CancellationToken stop)
    {
        CancellationTokenSource capped = CancellationTokenSource.CreateLinkedTokenSource(stop);
        TimeSpan left = TimeSpan.FromSeconds(seconds) - since.Elapsed - Writing;
        capped.CancelAfter(left > TimeSpan.Zero ? left : TimeSpan.Zero);
        return capped;
    }
}
