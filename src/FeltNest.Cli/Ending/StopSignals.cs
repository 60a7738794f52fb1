using System.Runtime.InteropServices;

namespace FeltNest.Cli.Ending;

/// <summary>
/// Ctrl-C, a request to end, a closed terminal and the quit key of a process: each asks the command to hand over its best so far.
/// A command that cannot within the time allowed is ended, with the word that nothing was written.
/// </summary>
internal sealed class StopSignals : IDisposable
{
    // How long a command has to hand over: with start and end of the process that keeps within two seconds.
    private static readonly TimeSpan Usual = TimeSpan.FromSeconds(1.5);

    // Results that are being written are waited for this much longer; a disk that takes none of them may not hold the process for ever.
    private static readonly TimeSpan Writing = TimeSpan.FromSeconds(10);

    private static readonly PosixSignal[] Signals = [PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP, PosixSignal.SIGQUIT];

    private readonly CancellationTokenSource stop = new();
    private readonly List<PosixSignalRegistration> registered = [];
    private readonly HandOver handOver;
    private readonly Action<string> say;
    private readonly Action<int> exit;
    private readonly TimeSpan allowed;
    private int asked;

    /// <summary>Listens to the signals of this process.</summary>
    /// <param name="handOver">Which of command and signal ends the run.</param>
    /// <param name="say">Told the last word of a run that is ended.</param>
    /// <param name="exit">Ends the process with a code.</param>
    /// <param name="allowed">How long the command has to hand over; null for the usual time.</param>
    public StopSignals(HandOver handOver, Action<string> say, Action<int> exit, TimeSpan? allowed = null)
    {
        this.allowed = allowed ?? Usual;
        this.handOver = handOver;
        this.say = say;
        this.exit = exit;
        foreach (PosixSignal signal in Signals)
        {
            registered.Add(PosixSignalRegistration.Create(signal, context =>
            {
                context.Cancel = true;
                Ask();
            }));
        }
    }

    /// <summary>Asks the command to stop.</summary>
    public CancellationToken Token => stop.Token;

    /// <summary>What a signal does; a second one changes nothing.</summary>
    internal void Ask()
    {
        if (Interlocked.Exchange(ref asked, 1) != 0)
        {
            return;
        }

        // A thread of its own: searches may keep every thread of the pool, and cancelling runs what is registered.
        new Thread(EndInTime) { IsBackground = true, Name = "end in time" }.Start();
        new Thread(stop.Cancel) { IsBackground = true, Name = "stop" }.Start();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        registered.ForEach(registration => registration.Dispose());
        stop.Dispose();
    }

    private void EndInTime()
    {
        Thread.Sleep(allowed);
        if (handOver.End())
        {
            say(handOver.LastWord);
            exit(ExitCode.Interrupted);
            return;
        }

        Thread.Sleep(Writing);
        say("interrupted; the results could not be written in time: look for what is missing");
        exit(ExitCode.Interrupted);
    }
}
