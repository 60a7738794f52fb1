using System.CommandLine;
using System.Globalization;
using FeltNest.Ball;
using FeltNest.Cli.Options;
using FeltNest.Design;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Studies;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Report;

namespace FeltNest.Cli.Commands.Panels;

/// <summary><c>panel BALL --seams</c>: the seam families side by side at the ball's waist.</summary>
internal static class SeamsCommand
{
    private static readonly string[] Names = ["seams.json", "seams.csv", "seams.svg", "seams.png"];

    /// <summary>Runs the comparison and writes it.</summary>
    public static int Run(
        Terminal terminal, ParseResult parse, string path, BallSpec ball, LayoutOptions options, CommonOptions common,
        CancellationToken stop)
    {
        Answer answer = new(terminal, parse, common);

        // The folder is named by the question alone; the part does not matter for it.
        LayoutRequest named = options.Request(parse, CoverPart.Of(ball, PanelFlattener.Flatten(ball)));
        double? seconds = options.Seconds(parse);
        ResultFolder results = new(
            parse.GetValue(common.Out) ?? DefaultFolder.OfSeams(path, named, options.Usual(named), seconds), parse.GetValue(common.Force));
        results.Prepare(answer.Named(Names));
        using CancellationTokenSource capped = options.Capped(parse, terminal, stop);
        SeamComparison comparison =
            SeamStudy.Run(ball, part => options.Request(parse, part), answer.Quiet ? null : new SeamLines(terminal), capped.Token);
        terminal.HandOver.Begin();
        Sheet sheet = SeamsSheet.Draw(comparison);
        byte[] text = SeamsWriter.Json(comparison);
        return answer.Give(
            results,
            [
                (Names[0], text), (Names[1], SeamsWriter.Csv(comparison)), (Names[2], SvgWriter.Write(sheet)),
                (Names[3], PngWriter.Write(sheet)),
            ],
            SeamsReport.Text(comparison), cutShort: comparison.CutShort, stop: stop);
    }

    // Tells each seam on the message stream as it is done.
    private sealed class SeamLines(Terminal terminal) : IProgress<SeamEntry>
    {
        public void Report(SeamEntry value) => terminal.Say(string.Create(
            CultureInfo.InvariantCulture,
            $"{EnumWord.Of(value.Ball.Seam.Curve)}: {value.Yield.PerThousandBalls.SquareMetres:0.00} m2 per thousand balls"));
    }
}
