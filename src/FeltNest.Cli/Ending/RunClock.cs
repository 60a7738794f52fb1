using System.Diagnostics;

namespace FeltNest.Cli.Ending;

/// <summary>How long a run has been at work: a cap in seconds counts from its start, so that what goes before the search is in
/// it.</summary>
internal sealed class RunClock
{
    // Results are drawn and written after the search: this much of the cap is left for them.
    private static readonly TimeSpan Writing = TimeSpan.FromSeconds(0.8);
    private static readonly TimeSpan WritingOfOne = TimeSpan.FromSeconds(0.001);

    private readonly Stopwatch since = Stopwatch.StartNew();

    /// <summary>A token that is stopped in time for the run to end after so many seconds, or with another.</summary>
    /// <param name="seconds">The cap.</param>
    /// <param name="stop">The other token.</param>
    /// <param name="things">Things of which each takes a part in what is drawn and written, where there may be many.</param>
    public CancellationTokenSource Capped(double seconds, CancellationToken stop, int things = 0)
    {
        CancellationTokenSource capped = CancellationTokenSource.CreateLinkedTokenSource(stop);
        TimeSpan left = TimeSpan.FromSeconds(seconds) - since.Elapsed - Writing - (things * WritingOfOne);
        capped.CancelAfter(left > TimeSpan.Zero ? left : TimeSpan.Zero);
        return capped;
    }
}
