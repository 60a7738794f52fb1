using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Cli.Progress;
using FeltNest.Design;
using FeltNest.Files;
using FeltNest.Layout;
using FeltNest.Layout.Quality;
using FeltNest.Runs;
using static FeltNest.InvariantText;

namespace FeltNest.Cli.Commands;

/// <summary><c>layout BALL|OUTLINE --width W</c>: lays the panel over the roll; a ball's panel is made flat first and written
/// too.</summary>
internal static class LayoutCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new("layout", "Lay the panel over a roll width and account for the felt.");
        BallOptions balls = new(command, takesOutline: true);
        LayoutOptions options = new(command);
        ShopOptions shop = new(command);
        CommonOptions common = new(command);
        command.SetAction((parse, stop) =>
            Task.Run(() => Run(terminal, parse, balls, options, shop, common, stop), CancellationToken.None));
        return command;
    }

    private static int Run(
        Terminal terminal, ParseResult parse, BallOptions balls, LayoutOptions options, ShopOptions shop, CommonOptions common,
        CancellationToken stop)
    {
        Answer answer = new(terminal, parse, common);
        LaidPart part = balls.ReadPart(parse);
        LayoutRequest request = WithSecond(parse, shop, shop.Applied(parse, options.Request(parse, part.Part)));
        bool joint = options.IsJoint(parse);
        string folder = parse.GetValue(common.Out)
            ?? DefaultFolder.OfLayout(balls.NamedPath(parse), request, options.Usual(request), options.Seconds(parse))
                + (joint ? "-joint" : string.Empty);
        using CancellationTokenSource capped = options.Capped(parse, terminal, stop);
        LayoutRun run = new()
        {
            Input = part,
            Request = request,
            Joint = joint,
            Assumed = [.. balls.Assumed(parse)],
            Progress = answer.Quiet ? null : new ProgressLine(terminal, UtilisationBound.PanelsPerMetre(request)),
            Choices = answer.Quiet ? null : new ChoiceLines(terminal),
        };
        return answer.Give(run, folder, parse.GetValue(common.Force), capped.Token, stop, run.Assumed);
    }

    private static LayoutRequest WithSecond(ParseResult parse, ShopOptions shop, LayoutRequest request) => shop.Second(parse) is { } file
        ? request with { Second = new SecondPart(LaidPart.Of(PartReader.Read(file), file).Part, shop.SecondShare(parse)) }
        : request;

    // Tells each design on the message stream as it is laid.
    private sealed class ChoiceLines(Terminal terminal) : IProgress<DesignChoice>
    {
        public void Report(DesignChoice value) => terminal.Say(Invariant(
            $"{value.Name}: {value.DesignAngleDeg:0.##} degrees, {value.Yield.PerThousandBalls.SquareMetres:0.00} m2 per thousand balls "
                + $"before losses"));
    }
}
