using System.CommandLine;
using System.Text;
using FeltNest.Cli.Options;
using FeltNest.Report;
using FeltNest.Runs;

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

    private IReadOnlyList<string> Named(IReadOnlyList<string> names) => inputs is null ? names : [.. names, RunReport.FileName];

    /// <summary>Runs and gives the answer.</summary>
    /// <param name="run">The run.</param>
    /// <param name="folder">Folder of its results.</param>
    /// <param name="force">Whether results may be overwritten.</param>
    /// <param name="search">Ends its search: an interrupt, or a cap in seconds.</param>
    /// <param name="stop">Whether the command was interrupted.</param>
    /// <param name="assumed">What was assumed before the run, said even when quiet.</param>
    /// <returns>The exit code.</returns>
    public int Give(
        IRun run, string folder, bool force, CancellationToken search, CancellationToken stop, IEnumerable<string>? assumed = null)
    {
        string[] notes = [.. run.Notes.Select(note => $"note: {note}")];
        foreach (string line in (string[])[.. assumed ?? [], .. Quiet ? [] : notes])
        {
            terminal.Say(line);
        }

        ResultFolder results = new(folder, force);
        results.Prepare(Named(run.FileNames));

        // A run with a best so far hands it over from here on; one without is ended by a signal until its files are made.
        bool found = false;
        Outcome outcome = run.Execute(
            () =>
            {
                found = true;
                terminal.HandOver.Begin();
            },
            search, stop);
        (string Name, byte[] Content)[] files = [.. outcome.Files.Select(file => (file.Name, file.Content))];
        bool interrupted = found && stop.IsCancellationRequested;
        string[] said = [.. outcome.Remarks.Select(Line), .. Ended(interrupted, outcome.CutShort)];
        int code = Given(results, files, outcome.Table, [.. assumed ?? [], .. notes], said, interrupted);
        return code == ExitCode.Done && outcome.Refused ? ExitCode.Violation : code;
    }

    private static string[] Ended(bool interrupted, bool cutShort)
    {
        if (interrupted)
        {
            return ["interrupted: the best so far is saved"];
        }

        return cutShort ? ["cut short by --seconds: the best so far is saved"] : [];
    }

    private static string Line(Remark remark) => remark.IsWarning ? $"warning: {remark.Text}" : $"note: {remark.Text}";

    private int Given(
        ResultFolder results, (string Name, byte[] Content)[] files, string table, string[] before, string[] said, bool interrupted)
    {
        if (!terminal.HandOver.Begin())
        {
            return ExitCode.Interrupted;
        }

        IReadOnlyList<string> written =
            results.Write(inputs is null ? files : [.. files, (RunReport.FileName, inputs.Report(files, table, [.. before, .. said]))]);
        bool printed = Print(Printed(files[0].Content, table));
        foreach (string message in said)
        {
            terminal.Say(message);
        }

        if (!Quiet)
        {
            terminal.Say($"wrote {string.Join(", ", written)}");
        }

        if (interrupted)
        {
            return ExitCode.Interrupted;
        }

        // Who asked for the JSON alone has nothing without it; for all others the files are the result.
        return json && !printed ? ExitCode.BadInput : ExitCode.Done;
    }

    private string Printed(byte[] content, string table)
    {
        if (json)
        {
            return Encoding.UTF8.GetString(content);
        }

        return Quiet ? string.Empty : table;
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
