using FeltNest.Geometry;

namespace FeltNest.Cli;

/// <summary>Turns an exception into the one line and the exit code the caller gets.</summary>
internal static class FaultLine
{
    // Set to 1, this variable of the environment adds the place in the program to the line: for whoever mends it.
    private const string DebugVariable = "FELTNEST_DEBUG";

    /// <summary>Says the line and gives the code.</summary>
    public static int Tell(Exception error, Terminal terminal)
    {
        (int code, string line) = error switch
        {
            InputException or GeometryException => (ExitCode.BadInput, error.Message),
            NoAnswerException => (ExitCode.NoAnswer, error.Message),
            OperationCanceledException => (ExitCode.Interrupted, "interrupted before there was a result; nothing was written"),
            IOException or UnauthorizedAccessException => (ExitCode.BadInput, error.Message),
            _ => (ExitCode.Failed, $"internal error ({error.GetType().Name}: {error.Message}); please report it with the command and the input"),
        };
        terminal.Say(line);
        if (Environment.GetEnvironmentVariable(DebugVariable) == "1")
        {
            terminal.Messages.WriteLine(error);
        }

        return code;
    }
}
