using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Page;

namespace FeltNest.Cli.Commands;

/// <summary><c>page [BALL...]</c>: the same work on a local web page.</summary>
internal static class PageCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Argument<string[]> balls = new("BALL")
        {
            Description = "Ball specifications to offer on the page (default: those that come with the program).",
            HelpName = "BALL",
            Arity = ArgumentArity.ZeroOrMore,
        };
        Option<int> port = new("--port")
        {
            Description = "Port on 127.0.0.1; 0 for any free one.",
            HelpName = "port",
            DefaultValueFactory = _ => 0,
            CustomParser = NumberText.WholeWithin(0, 65535),
        };
        Command command = new("page", "The same work on a local web page, on this machine alone. Ctrl-C ends it.") { balls, port };
        command.SetAction((parse, stop) => Run(terminal, parse.GetValue(port), parse.GetValue(balls) ?? [], stop));
        return command;
    }

    private static async Task<int> Run(Terminal terminal, int port, string[] balls, CancellationToken stop)
    {
        terminal.HandOver.LastWord = "the page is closed; answers it was at work on are lost";
        await using PageServer server = await PageServer.Start(port, balls, stop);
        terminal.Results.WriteLine(server.Address);
        terminal.Results.Flush();
        terminal.Say("the page is at the address above, for this computer alone; Ctrl-C ends it");
        await server.Run(stop);
        return ExitCode.Done;
    }
}
