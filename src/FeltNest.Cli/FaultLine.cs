using FeltNest.Geometry;

namespace FeltNest.Cli;

/// <summary>Turns an exception into the line and the exit code the caller gets; a list with several faults has a line for each.</summary>
internal static class FaultLine
{
    // Set to 1, this variable of the environment adds the place in the program to the line: for whoever mends it.
    private const string DebugVariable = "FELTNEST_DEBUG";

    private const string Capped =
        "--seconds was over before there was a result; nothing was written: allow more seconds, or ask for less effort";

    /// <summary>Says the line and gives the code.</summary>
    /// <param name="error">What went wrong.</param>
    /// <param name="terminal">Where it is said.</param>
    /// <param name="stop">Tells an interrupt from a cap in seconds, which ends the work in the same way.</param>
    public static int Tell(Exception error, Terminal terminal, CancellationToken stop)
    {
        (int code, string line) = CauseOf(error) switch
        {
            InputException or GeometryException => (ExitCode.BadInput, OptionNames.LineOf(CauseOf(error))),
            NoAnswerException => (ExitCode.NoAnswer, CauseOf(error).Message),
            OperationCanceledException when !stop.IsCancellationRequested => (ExitCode.NoAnswer, Capped),
            OperationCanceledException => (ExitCode.Interrupted, terminal.HandOver.LastWord),
            IOException or UnauthorizedAccessException => (ExitCode.BadInput, CauseOf(error).Message),
            OutOfMemoryException => (
                ExitCode.Failed,
                "there is not enough memory for this: give the program more of it, or ask for less (fewer points, widths or strikes)"),
            DllNotFoundException or BadImageFormatException or EntryPointNotFoundException => (
                ExitCode.Failed,
                $"a library of the program is missing or does not fit this machine: install the program again ("
                    + $"{CauseOf(error).Message.Split('\n')[0].Trim()})"),
            var cause => (
                ExitCode.Failed,
                $"internal error ({cause.GetType().Name}: {cause.Message}); please report it with the command and the input"),
        };
        if (!terminal.HandOver.Begin())
        {
            return ExitCode.Interrupted;
        }

        terminal.Say(line);
        foreach (string further in OptionNames.LinesOf(CauseOf(error)).Skip(1))
        {
            terminal.Say(further);
        }

        if (Environment.GetEnvironmentVariable(DebugVariable) == "1")
        {
            terminal.Messages.WriteLine(error);
        }

        return code;
    }

    // What parallel work and the first use of a library wrap round a failure.
    private static Exception CauseOf(Exception error) =>
        error is AggregateException or TypeInitializationException && error.InnerException is { } inner ? CauseOf(inner) : error;
}
