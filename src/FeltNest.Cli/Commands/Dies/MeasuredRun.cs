using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Die.Proof;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets.Dies;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Dies;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Report.Dies;

namespace FeltNest.Cli.Commands.Dies;

/// <summary><c>die DIE|OUTLINE --measured POINTS</c>: a cut panel laid on its outline and judged.</summary>
internal static class MeasuredRun
{
    // Suggested for felt panels where no die says otherwise (common practice, no source): 1.0 to 1.6.
    private const double UsualProfileMm = 1.2;

    private static readonly string[] Names = ["measured.json", "measured.svg", "measured.png"];

    /// <summary>Judges the points.</summary>
    public static int Run(Terminal terminal, ParseResult parse, string path, string points, MeasuredOptions options, CommonOptions common)
    {
        Answer answer = new(terminal, parse, common);
        (string name, ArcOutline? arcs, Outline outline, double? own) = Wanted(path);
        IReadOnlyList<Point2> read = PointsReader.Read(points);
        double? given = parse.GetValue(options.Profile);
        double profile = given ?? own ?? UsualProfileMm;
        ResultFolder results = new(parse.GetValue(common.Out) ?? DefaultFolder.OfMeasured(path, "measured", points), parse.GetValue(common.Force));
        results.Prepare(answer.Named(Names));
        MeasuredPanel panel = Fit(outline, read, profile, points);
        Sheet sheet = MeasuredSheet.Draw(name, arcs?.Vertices ?? [.. outline.Points.Select(p => new ArcVertex(p.X, p.Y, 0))], panel);
        List<string> messages = [.. MeasuredReport.Warnings(panel).Select(w => $"warning: {w}")];
        if (given is null && own is null)
        {
            messages.Insert(0, FormattableString.Invariant($"note: profile tolerance {UsualProfileMm} mm assumed; --profile says another"));
        }

        return answer.Give(
            results, [(Names[0], MeasuredWriter.FirstArticle(name, panel)), (Names[1], SvgWriter.Write(sheet)), (Names[2], PngWriter.Write(sheet))], MeasuredReport.Text(name, panel), messages);
    }

    // The polygon stays within a thousandth of the edge, far below what can be measured on felt.
    private static (string Name, ArcOutline? Arcs, Outline Outline, double? Profile) Wanted(string path)
    {
        const double chord = 0.001;
        if (DieReader.IsDie(path))
        {
            DieInput die = DieReader.Read(path);
            ArcOutline edge = die.Die.Edges[die.Die.Cavities[0].Part];
            return (die.Die.Name, edge, edge.ContainingPolygon(chord), die.PanelProfileMm);
        }

        PartInput part = PartReader.Read(path);
        ImportedOutline outline = part.Outline ?? throw new InputException(path, null, "is a ball: compute its panel first and give the panel.json");
        return (outline.Name, outline.CentredArcs, outline.CentredArcs?.ContainingPolygon(chord) ?? outline.Centred, null);
    }

    private static MeasuredPanel Fit(Outline outline, IReadOnlyList<Point2> points, double profile, string path)
    {
        try
        {
            return PanelFitter.Fit(outline, points, profile);
        }
        catch (InputException error) when (error.File is null)
        {
            throw error.InFile(path);
        }
    }
}
