using System.CommandLine;
using System.Text;
using FeltNest.Cli.Options;
using FeltNest.Files;

namespace FeltNest.Cli;

/// <summary>How every command that writes results ends: the files, then the result's JSON or its table on the result stream, then warnings and what was written.</summary>
internal sealed class Answer
{
    private readonly Terminal terminal;
    private readonly bool json;

    /// <summary>An answer as the common options ask for it.</summary>
    public Answer(Terminal terminal, ParseResult parse, CommonOptions common)
    {
        this.terminal = terminal;
        json = parse.GetValue(common.Json);
        Quiet = parse.GetValue(common.Quiet);
    }

    /// <summary>Whether progress, notes and the table are to be kept back.</summary>
    public bool Quiet { get; }

    /// <summary>Gives the answer.</summary>
    /// <param name="results">Folder of the results, prepared.</param>
    /// <param name="files">Names and contents, the JSON first.</param>
    /// <param name="table">The table.</param>
    /// <param name="messages">Lines for the message stream that are said even when quiet.</param>
    /// <param name="stop">Whether the command was interrupted.</param>
    /// <returns>The exit code.</returns>
    public int Give(
        ResultFolder results, IReadOnlyList<(string Name, byte[] Content)> files, string table, IEnumerable<string>? messages = null, CancellationToken stop = default)
    {
        IReadOnlyList<string> written = results.Write(files);
        if (json)
        {
            terminal.Results.Write(Encoding.UTF8.GetString(files[0].Content));
        }
        else if (!Quiet)
        {
            terminal.Results.Write(table);
        }

        foreach (string message in messages ?? [])
        {
            terminal.Say(message);
        }

        if (!Quiet)
        {
            terminal.Say($"wrote {string.Join(", ", written)}");
        }

        return stop.IsCancellationRequested ? ExitCode.Interrupted : ExitCode.Done;
    }
}
