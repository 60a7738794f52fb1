using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Cli.Progress;
using FeltNest.Design;
using FeltNest.Files;
using FeltNest.Layout;
using FeltNest.Layout.Quality;
using FeltNest.Runs;
using FeltNest.Runs.Rolls;
using static FeltNest.InvariantText;

namespace FeltNest.Cli.Commands;

/// <summary><c>layout BALL|OUTLINE --width W</c>: lays the panel over the roll; a ball's panel is made flat first and written
/// too.</summary>
internal sealed class LayoutCommand
{
    private readonly Terminal terminal;
    private readonly BallOptions balls;
    private readonly LayoutOptions options;
    private readonly ShopOptions shop;
    private readonly PaperOption paper;
    private readonly CommonOptions common;

    private LayoutCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        balls = new BallOptions(command, takesOutline: true);
        options = new LayoutOptions(command, takesRoll: true);
        shop = new ShopOptions(command);
        paper = new PaperOption(
            command, "Paper of layout.pdf, whole on a page, and of layout-tiles.pdf, true to size on pages to be joined.");
        common = new CommonOptions(command);
    }

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new("layout", "Lay the panel over a roll width and account for the felt.");
        LayoutCommand made = new(terminal, command);
        command.SetAction((parse, stop) => Task.Run(() => made.Run(parse, stop), CancellationToken.None));
        return command;
    }

    private int Run(ParseResult parse, CancellationToken stop)
    {
        Answer answer = new(terminal, parse, common);
        LaidPart part = balls.ReadPart(parse);
        MeasuredWidth? measured = options.RollFile(parse) is { } file ? MeasuredWidth.Of(file) : null;
        LayoutRequest asked = options.Request(parse, part.Part);
        asked = measured is null ? asked : asked with { RollWidthMm = measured.WidthMm };
        LayoutRequest request = WithSecond(parse, shop.Applied(parse, asked));
        string folder = parse.GetValue(common.Out) ?? UsualFolder(parse, request);
        using CancellationTokenSource capped = options.Capped(parse, terminal, stop);
        LayoutRun run = new()
        {
            Input = part,
            Request = request,
            Measured = measured,
            Joint = options.IsJoint(parse),
            Paper = paper.Of(parse),
            Assumed = [.. balls.Assumed(parse)],
            Progress = answer.Quiet ? null : new ProgressLine(terminal, UtilisationBound.PanelsPerMetre(request)),
            Choices = answer.Quiet ? null : new ChoiceLines(terminal),
        };
        return answer.Give(run, folder, parse.GetValue(common.Force), capped.Token, stop, run.Assumed);
    }

    private string UsualFolder(ParseResult parse, LayoutRequest request)
    {
        string folder = DefaultFolder.OfLayout(balls.NamedPath(parse), request, options.Usual(request), options.Seconds(parse));
        return options.IsJoint(parse) ? $"{folder}-joint" : folder;
    }

    private LayoutRequest WithSecond(ParseResult parse, LayoutRequest request) => shop.Second(parse) is { } file
        ? request with
        {
            Second = new SecondPart(
                LaidPart.Of(PartReader.Read(file, null, balls.SecondDpi(parse, file)), file).Part, shop.SecondShare(parse)),
        }
        : request;

    // Tells each design on the message stream as it is laid.
    private sealed class ChoiceLines(Terminal terminal) : IProgress<DesignChoice>
    {
        public void Report(DesignChoice value) => terminal.Say(Invariant(
            $"{value.Name}: {value.DesignAngleDeg:0.##} degrees, {value.Yield.PerThousandBalls.SquareMetres:0.00} m2 per thousand balls "
                + $"before losses"));
    }
}
