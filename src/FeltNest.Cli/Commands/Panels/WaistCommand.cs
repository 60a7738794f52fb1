using System.CommandLine;
using FeltNest.Ball;
using FeltNest.Cli.Options;
using FeltNest.Cli.Progress;
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

/// <summary><c>panel BALL --waist-range FROM:TO:STEP</c>: strain against felt over a range of waists.</summary>
internal static class WaistCommand
{
    private static readonly string[] Names = ["waist.json", "waist.csv", "waist.svg", "waist.png"];

    /// <summary>Runs the study and writes it.</summary>
    public static int Run(
        Terminal terminal, ParseResult parse, string path, BallSpec ball, IReadOnlyList<double> waists, LayoutOptions options,
        CommonOptions common, CancellationToken stop)
    {
        Answer answer = new(terminal, parse, common);

        // The folder is named by the question alone; the part does not matter for it.
        LayoutRequest named = options.Request(parse, CoverPart.Of(ball, PanelFlattener.Flatten(ball)));
        double? seconds = options.Seconds(parse);
        ResultFolder results = new(
            parse.GetValue(common.Out) ?? DefaultFolder.OfWaists(path, waists, named, options.Usual(named), seconds),
            parse.GetValue(common.Force));
        results.Prepare(answer.Named(Names));
        using CancellationTokenSource capped = options.Capped(parse, terminal, stop);
        WaistTradeOff study = WaistStudy.Run(
            ball, waists, part => options.Request(parse, part), answer.Quiet ? null : new WaistLine(terminal, waists.Count), capped.Token);
        terminal.HandOver.Begin();
        Sheet sheet = WaistSheet.Draw(study);
        byte[] text = WaistWriter.Json(study);
        return answer.Give(
            results,
            [(Names[0], text), (Names[1], WaistWriter.Csv(study)), (Names[2], SvgWriter.Write(sheet)), (Names[3], PngWriter.Write(sheet))],
            WaistReport.Text(study), cutShort: study.CutShort, stop: stop);
    }
}
