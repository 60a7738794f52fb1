using System.CommandLine;
using System.CommandLine.Help;
using FeltNest.Cli.Commands;
using FeltNest.Cli.Commands.Dies;
using FeltNest.Cli.Commands.Panels;

namespace FeltNest.Cli;

/// <summary>The whole command line: parses, runs, and turns every failure into one line and an exit code.</summary>
internal static class CommandLine
{
    // How long a search may take to hand over its best layout after an interrupt before the process is ended.
    private static readonly TimeSpan HandOver = TimeSpan.FromSeconds(20);

    /// <summary>Runs one command.</summary>
    /// <returns>The exit code.</returns>
    public static async Task<int> RunAsync(string[] args, TextWriter results, TextWriter messages, CancellationToken stop = default)
    {
        Terminal terminal = new(results, messages);
        RootCommand root = new("Felt covers for tennis-type balls: from the ball to the flat panel, the lay over the roll and the felt it uses.")
        {
            PanelCommand.Create(terminal),
            LayoutCommand.Create(terminal),
            CompareCommand.Create(terminal),
            UsageCommand.Create(terminal),
            RollCommand.Create(terminal),
            OrdersCommand.Create(terminal),
            DieCommand.Create(terminal),
            CheckCommand.Create(terminal),
            PageCommand.Create(terminal),
            CompletionCommand.Create(terminal),
        };
        foreach (HelpOption help in root.Options.OfType<HelpOption>())
        {
            help.Action = new HelpWithExamples((HelpAction)help.Action!);
        }

        // A file name may begin with @: it is a file name.
        ParseResult parse = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        bool asked = parse.Action is HelpWithExamples || parse.GetResult("--version") is not null;
        if (parse.Errors.Count > 0 && !asked)
        {
            terminal.Say(UsageFault.Of(parse, root));
            return ExitCode.BadInput;
        }

        InvocationConfiguration run = new() { Output = results, Error = messages, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = HandOver };
        try
        {
            return await parse.InvokeAsync(run, stop);
        }
        catch (Exception error)
        {
            return FaultLine.Tell(error, terminal);
        }
    }
}
