using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Runs;
using FeltNest.Runs.Panels;

namespace FeltNest.Cli.Commands;

/// <summary><c>trace SCAN</c>: cut panels traced from a picture; <c>trace --sheet</c>: the marks for a photo.</summary>
internal sealed class TraceCommand
{
    private readonly Argument<string?> input = new("SCAN")
    {
        Description = "Picture of one or several cut panels (PNG, JPEG): a flatbed scan with --dpi, or a photo of the sheet of marks.",
        HelpName = "SCAN",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<bool> sheet = new("--sheet")
    {
        Description = "Write the sheet of reference marks to print; they give a photo its scale and take its slant away.",
    };

    private readonly Terminal terminal;
    private readonly ScanOption scan;
    private readonly CommonOptions common;

    private TraceCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        command.Add(input);
        scan = new ScanOption(command);
        command.Add(sheet);
        common = new CommonOptions(command);
    }

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new(
            "trace", "The outline of cut panels from a scan or a photo, shown on it; or the sheet of marks that a photo needs.");
        TraceCommand made = new(terminal, command);
        command.SetAction((parse, stop) => Task.Run(() => made.Run(parse, stop), CancellationToken.None));
        return command;
    }

    private int Run(ParseResult parse, CancellationToken stop)
    {
        (IRun run, string folder) = Asked(parse);
        return new Answer(terminal, parse, common)
            .Give(run, parse.GetValue(common.Out) ?? folder, parse.GetValue(common.Force), stop, stop);
    }

    private (IRun Run, string Folder) Asked(ParseResult parse)
    {
        string? file = parse.GetValue(input);
        if (!parse.GetValue(sheet))
        {
            return file is null
                ? throw new InputException(null, input.Name, $"is missing: name a picture, or give {sheet.Name}")
                : (new TraceRun(file, scan.Of(parse)), DefaultFolder.OfTrace(file));
        }

        if (file is not null || scan.Of(parse) is not null || parse.GetValue(common.Json))
        {
            throw new InputException(null, sheet.Name, $"goes alone: it takes no picture, no {scan.Name} and gives no JSON");
        }

        return (new MarkSheetRun(), DefaultFolder.OfMarkSheet());
    }
}
