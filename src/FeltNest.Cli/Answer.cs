using System.CommandLine;
using System.Text;
using FeltNest.Cli.Options;
using FeltNest.Files;
using FeltNest.Report;

namespace FeltNest.Cli;

/// <summary>How every command that writes results ends: the files, then the result's JSON or its table on the result stream, then warnings
/// and what was written.</summary>
internal sealed class Answer
{
    private readonly Terminal terminal;
    private readonly bool json;
    private readonly RunInputs? inputs;

    /// <summary>An answer as the common options ask for it.</summary>
    public Answer(Terminal terminal, ParseResult parse, CommonOptions common)
    {
        this.terminal = terminal;
        json = parse.GetValue(common.Json);
        Quiet = parse.GetValue(common.Quiet);
        inputs = parse.GetValue(common.Report) ? new RunInputs(parse) : null;
    }

    /// <summary>Whether progress, notes and the table are to be kept back.</summary>
    public bool Quiet { get; }

    /// <summary>Names of all files that will be written.</summary>
    public IReadOnlyList<string> Named(IReadOnlyList<string> names) => inputs is null ? names : [.. names, RunReport.FileName];

    /// <summary>Gives the answer.</summary>
    /// <param name="results">Folder of the results, prepared.</param>
    /// <param name="files">Names and contents, the JSON first.</param>
    /// <param name="table">The table.</param>
    /// <param name="messages">Lines for the message stream that are said even when quiet.</param>
    /// <param name="cutShort">Whether the search ended before its work was done.</param>
    /// <param name="stop">Whether the command was interrupted.</param>
    /// <returns>The exit code.</returns>
    public int Give(
        ResultFolder results, IReadOnlyList<(string Name, byte[] Content)> files, string table, IEnumerable<string>? messages = null,
        bool cutShort = false, CancellationToken stop = default)
    {
        string[] ended = stop.IsCancellationRequested ? ["interrupted: the best so far is saved"]
            : cutShort ? ["cut short by --seconds: the best so far is saved"]
            : [];
        string[] said = [.. messages ?? [], .. ended];
        if (!terminal.HandOver.Begin())
        {
            return ExitCode.Interrupted;
        }

        IReadOnlyList<string> written =
            results.Write(inputs is null ? files : [.. files, (RunReport.FileName, inputs.Report(files, table, said))]);
        bool printed = Print(json ? Encoding.UTF8.GetString(files[0].Content) : Quiet ? string.Empty : table);
        foreach (string message in said)
        {
            terminal.Say(message);
        }

        if (!Quiet)
        {
            terminal.Say($"wrote {string.Join(", ", written)}");
        }

        // Who asked for the JSON alone has nothing without it; for all others the files are the result.
        return stop.IsCancellationRequested ? ExitCode.Interrupted : json && !printed ? ExitCode.BadInput : ExitCode.Done;
    }

    private bool Print(string text)
    {
        try
        {
            terminal.Results.Write(text);
            terminal.Results.Flush();
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            terminal.Say($"the result could not be printed on the standard output ({error.Message}); its files are written");
            return false;
        }
    }
}
