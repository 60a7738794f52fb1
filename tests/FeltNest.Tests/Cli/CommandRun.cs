using FeltNest.Cli;

namespace FeltNest.Tests.Cli;

/// <summary>What one run of the command line gave.</summary>
public sealed record CommandRun(int Code, string Out, string Err)
{
    /// <summary>Lines on the message stream.</summary>
    public string[] Messages => Err.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Runs the command line inside this process.</summary>
    public static async Task<CommandRun> Of(CancellationToken stop, params string[] args)
    {
        using StringWriter results = new() { NewLine = "\n" }, messages = new() { NewLine = "\n" };
        int code = await CommandLine.RunAsync(args, new Terminal { Results = results, Messages = TextWriter.Synchronized(messages) }, stop);
        return new CommandRun(code, results.ToString(), messages.ToString());
    }

    /// <summary>Runs the command line inside this process, not to be interrupted.</summary>
    public static Task<CommandRun> Of(params string[] args) => Of(CancellationToken.None, args);
}
