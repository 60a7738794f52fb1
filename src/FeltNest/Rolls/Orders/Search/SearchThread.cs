using System.Runtime.ExceptionServices;

namespace FeltNest.Rolls.Orders.Search;

/// <summary>Runs a search beside the caller, who leaves it behind where it does not end in time: the solver cannot be stopped while it
/// simplifies its model or works on its first bound.</summary>
internal static class SearchThread
{
    // How long a search may take to end by itself after it was told to.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(0.3);

    /// <summary>Runs a search to its end, or until it was stopped and did not end.</summary>
    /// <returns>Whether it ended.</returns>
    public static bool Run(Action search, CancellationToken stop)
    {
        ExceptionDispatchInfo? fault = null;
        ManualResetEvent done = new(false);
        Thread thread = new(() =>
        {
            try
            {
                search();
            }
            catch (Exception error)
            {
                fault = ExceptionDispatchInfo.Capture(error);
            }

            done.Set();
        })
        { IsBackground = true };
        thread.Start();
        bool ended = WaitHandle.WaitAny([done, stop.WaitHandle]) == 0 || done.WaitOne(Patience);
        if (ended)
        {
            done.Dispose();
            fault?.Throw();
        }

        return ended;
    }
}
