using System.CommandLine;
using FeltNest.Ball;
using FeltNest.Ball.Mass;
using FeltNest.Cli.Commands.Panels;
using FeltNest.Cli.Options;
using FeltNest.Cli.Progress;
using FeltNest.Cost;
using FeltNest.Files;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Quality;
using FeltNest.Panel;
using FeltNest.Panel.Wrap;
using FeltNest.Report;
using FeltNest.Yield;

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
        PartInput input = balls.Read(parse);
        BallSpec? ball = input.Ball?.Ball;
        if (!answer.Quiet)
        {
            foreach (string note in input.Outline?.Notes ?? [])
            {
                terminal.Say($"note: {balls.Path(parse)}: {note}");
            }
        }

        FlatPanel? panel = ball is null ? null : PanelFlattener.Flatten(ball);
        LayoutPart part = panel is not null ? CoverPart.Of(ball!, panel) : input.Outline!.Part;
        LayoutRequest request = shop.Applied(parse, options.Request(parse, part));
        request =
            shop.Second(parse) is { } file ? request with { Second = new SecondPart(SecondOf(file), shop.SecondShare(parse)) } : request;
        double? seconds = options.Seconds(parse);
        bool joint = options.IsJoint(parse);
        ResultFolder results = new(
            parse.GetValue(common.Out)
                ?? DefaultFolder.OfLayout(balls.NamedPath(parse), request, options.Usual(request), seconds)
                    + (joint ? "-joint" : string.Empty), parse.GetValue(common.Force));
        results.Prepare(answer.Named(panel is null ? LayoutFiles.Names : [.. LayoutFiles.Names, .. PanelFiles.Names]));

        using CancellationTokenSource capped = options.Capped(parse, terminal, stop);

        // The search lets nothing through that the independent check does not pass.
        JointResult? together = joint ? Together(ball!, panel!, request, answer.Quiet ? null : terminal, capped.Token) : null;
        (ball, panel) = together is null ? (ball, panel) : (together.Ball, together.Panel);

        // The panel's pictures need nothing from the search: they are drawn beside it.
        Task<IReadOnlyList<(string, byte[])>>? panelFiles =
            panel is null ? null : Task.Run(() => PanelFiles.Make(ball!, PanelFit.Felt(ball!, panel)), CancellationToken.None);
        RollLayout layout = together?.Layout
            ?? LayoutSearch.Run(
                request, answer.Quiet ? null : new ProgressLine(terminal, UtilisationBound.PanelsPerMetre(request)), capped.Token);
        terminal.HandOver.Begin();
        YieldFigures yields = YieldAccount.Of(layout);
        IReadOnlyList<LaidStrain> laid = panel is null || capped.IsCancellationRequested ? [] : LaidStrain.Of(ball!, panel, layout);
        IReadOnlyList<(string Name, byte[] Content)> files =
            LayoutFiles.Make(layout, yields, input.Outline?.Notes ?? [.. balls.Assumed(parse)], laid);
        string table = LayoutReport.Text(layout, yields) + (together is null ? string.Empty : DesignReport.Joint(together))
            + (panel is null ? string.Empty : DesignReport.Laid(ball!, laid));
        IEnumerable<string> warnings = panel is null
            ? []
            : PanelWarnings.Of(ball!, panel, MassBudget.Of(ball!, panel.AreaMm2)).Concat(DesignReport.Warnings(ball!, laid));
        IEnumerable<string> messages = balls.Assumed(parse).Concat(warnings.Select(warning => $"warning: {warning}"));
        IReadOnlyList<(string, byte[])> all = [.. files, .. panelFiles?.GetAwaiter().GetResult() ?? []];
        return answer.Give(results, all, table, messages, layout.Search.CutShort, stop);
    }

    private static JointResult Together(
        BallSpec ball, FlatPanel panel, LayoutRequest request, Terminal? terminal, CancellationToken stop) => JointDesign.Run(
        ball, (part, angle) => request with { Part = part, Rules = request.Rules with { WarpAngleDeg = angle } }, panel,
        new ChoiceLines(terminal), stop);

    // Tells each design on the message stream as it is laid.
    private sealed class ChoiceLines(Terminal? terminal) : IProgress<DesignChoice>
    {
        public void Report(DesignChoice value) => terminal?.Say(FormattableString.Invariant(
            $"{value.Name}: {value.DesignAngleDeg:0.##} degrees, {value.Yield.PerThousandBalls.SquareMetres:0.00} m2 per thousand balls"));
    }

    private static LayoutPart SecondOf(string path)
    {
        PartInput input = PartReader.Read(path);
        return input.Ball is { } ball ? CoverPart.Of(ball.Ball, PanelFlattener.Flatten(ball.Ball)) : input.Outline!.Part;
    }
}
