using System.CommandLine;
using System.Text;
using FeltNest.Ball;
using FeltNest.Cli.Options;
using FeltNest.Cost;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Studies;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Report;

namespace FeltNest.Cli.Commands;

/// <summary><c>panel BALL --waist-range FROM:TO:STEP</c>: strain against felt over a range of waists.</summary>
internal static class WaistCommand
{
    private static readonly string[] Names = ["waist.json", "waist.csv", "waist.svg", "waist.png"];

    /// <summary>Runs the study and writes it.</summary>
    public static int Run(
        Terminal terminal, ParseResult parse, string path, BallSpec ball, IReadOnlyList<double> waists, LayoutOptions options, CommonOptions common, CancellationToken stop)
    {
        bool json = parse.GetValue(common.Json), quiet = parse.GetValue(common.Quiet);

        // The folder is named by the question alone; the part does not matter for it.
        LayoutRequest named = options.Request(parse, CoverPart.Of(ball, PanelFlattener.Flatten(ball)));
        double? seconds = options.Seconds(parse);
        ResultFolder results = new(
            parse.GetValue(common.Out) ?? DefaultFolder.OfWaists(path, waists, named, options.Usual(named), seconds), parse.GetValue(common.Force));
        results.Prepare(Names);
        using CancellationTokenSource capped = CancellationTokenSource.CreateLinkedTokenSource(stop);
        if (seconds is { } cap)
        {
            capped.CancelAfter(TimeSpan.FromSeconds(cap));
        }

        WaistTradeOff study = WaistStudy.Run(ball, waists, part => options.Request(parse, part), quiet ? null : new WaistLine(terminal, waists.Count), capped.Token);
        Sheet sheet = WaistSheet.Draw(study);
        byte[] text = WaistWriter.Json(study);
        IReadOnlyList<string> written = results.Write(
            [(Names[0], text), (Names[1], WaistWriter.Csv(study)), (Names[2], SvgWriter.Write(sheet)), (Names[3], PngWriter.Write(sheet))]);
        if (json)
        {
            terminal.Results.Write(Encoding.UTF8.GetString(text));
        }
        else if (!quiet)
        {
            terminal.Results.Write(WaistReport.Text(study));
        }

        if (!quiet)
        {
            terminal.Say($"wrote {string.Join(", ", written)}");
        }

        return stop.IsCancellationRequested ? ExitCode.Interrupted : ExitCode.Done;
    }
}
