using System.CommandLine;
using System.Globalization;
using FeltNest.Ball;
using FeltNest.Cli.Options;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Outlines;
using FeltNest.Files.Panels;
using FeltNest.Geometry;
using FeltNest.Panel.Wrap;
using FeltNest.Report;

namespace FeltNest.Cli.Commands.Panels;

/// <summary><c>panel BALL --wrap OUTLINE</c>: any flat outline laid on the ball.</summary>
internal static class WrapCommand
{
    private static readonly string[] Names = ["wrap.json", "wrap.svg", "wrap.png"];

    /// <summary>Lays the outline and writes the results.</summary>
    public static int Run(Terminal terminal, ParseResult parse, string ballPath, BallSpec ball, string outlinePath, CommonOptions common)
    {
        Answer answer = new(terminal, parse, common);
        PartInput part = PartReader.Read(outlinePath);
        ImportedOutline outline = part.Outline
            ?? throw new InputException(outlinePath, null, "is a ball specification; --wrap takes a flat outline or a panel.json");
        ResultFolder results = new(
            parse.GetValue(common.Out) ?? DefaultFolder.OfOutline(ballPath, "wrap", outlinePath), parse.GetValue(common.Force));
        results.Prepare(answer.Named(Names));
        bool byMap = outline.EdgeMap is not null;
        WrapRequest request = outline.EdgeMap is { } map ? WrapRequest.For(ball, map) : WrapRequest.For(ball, Curve(outline));
        WrapResult wrap = PanelWrap.Lay(request);
        Sheet sheet = WrapSheet.Draw(ball, outline.Name, wrap);
        byte[] content = WrapWriter.Write(ball, outline.Name, byMap, request.TurnedDeg, wrap);
        return answer.Give(
            results, [(Names[0], content), (Names[1], SvgWriter.Write(sheet)), (Names[2], PngWriter.Write(sheet))],
            WrapReport.Text(ball, outline.Name, byMap, wrap), Messages(ball, outlinePath, outline, request, wrap));
    }

    private static IEnumerable<string> Messages(
        BallSpec ball, string outlinePath, ImportedOutline outline, WrapRequest request, WrapResult wrap)
    {
        foreach (string note in outline.Notes)
        {
            yield return $"{outlinePath}: {note}";
        }

        if (request.TurnedDeg != 0)
        {
            yield return FormattableString.Invariant(
                $"{outlinePath}: turned by {request.TurnedDeg:0.00} degrees, so that its long axis lies along u");
        }

        if (wrap.EdgeHeld is { } held && held.MaxStretchPercent > ball.Felt.MaxStretchPercent)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"warning: the felt is stretched by {held.MaxStretchPercent:0.0} %, above felt.maxStretchPercent "
                    + $"{ball.Felt.MaxStretchPercent:0.##}");
        }
    }

    /// <summary>An outline as it is laid: seen from its own centroid; a polygon as its straight pieces.</summary>
    public static ArcOutline Curve(ImportedOutline outline) =>
        outline.CentredArcs ?? ArcOutline.From(outline.Centred.Points.Select(p => new ArcVertex(p.X, p.Y, 0)));
}
