using System.CommandLine;
using System.CommandLine.Help;
using FeltNest.Cli.Commands;
using FeltNest.Cli.Commands.Book;

namespace FeltNest.Cli;

/// <summary>The whole command line: parses, runs, and turns every failure into one line and an exit code.</summary>
internal static class CommandLine
{
    /// <summary>Every command with its options.</summary>
    public static RootCommand Root(Terminal terminal)
    {
        RootCommand root = new(
            "Felt covers for tennis-type balls: from the ball to the flat panel, the layout over the roll and the felt it uses.")
        {
            PanelCommand.Create(terminal),
            FeltCommand.Create(terminal),
            TraceCommand.Create(terminal),
            LayoutCommand.Create(terminal),
            CompareCommand.Create(terminal),
            FamilyCommand.Create(terminal),
            UsageCommand.Create(terminal),
            RollCommand.Create(terminal),
            OrdersCommand.Create(terminal),
            BookCommand.Create(terminal),
            DieCommand.Create(terminal),
            CheckCommand.Create(terminal),
            PageCommand.Create(terminal),
            CompletionCommand.Create(terminal),
        };
        foreach (HelpOption help in root.Options.OfType<HelpOption>())
        {
            help.Action = new HelpWithExamples((HelpAction)help.Action!);
        }

        return root;
    }

    /// <summary>Runs one command.</summary>
    /// <param name="args">The words typed.</param>
    /// <param name="terminal">Where it speaks.</param>
    /// <param name="stop">Asks it to hand over what it has.</param>
    /// <returns>The exit code.</returns>
    public static async Task<int> RunAsync(string[] args, Terminal terminal, CancellationToken stop = default)
    {
        RootCommand root = Root(terminal);

        // A file name may begin with @: it is a file name.
        ParseResult parse = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        bool asked = parse.Action is HelpWithExamples || parse.GetResult("--version") is not null;
        if (parse.Errors.Count > 0 && !asked)
        {
            terminal.Say(UsageFault.Of(parse, root));
            return ExitCode.BadInput;
        }

        // Signals are heard by the program itself: the parser's own way knows no results that must be written whole.
        InvocationConfiguration run = new()
        {
            Output = terminal.Results,
            Error = terminal.Messages,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        };
        try
        {
            return await parse.InvokeAsync(run, stop);
        }
        catch (Exception error)
        {
            return FaultLine.Tell(error, terminal, stop);
        }
    }
}
