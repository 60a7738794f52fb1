using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Die;
using FeltNest.Die.Check;
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
        (string name, ArcOutline? arcs, Outline outline, double? own) = Wanted(path, parse.GetValue(options.Part));
        IReadOnlyList<Point2> read = PointsReader.Read(points);
        double? given = parse.GetValue(options.Profile);
        double profile = given ?? own ?? UsualProfileMm;
        ResultFolder results = new(
            parse.GetValue(common.Out) ?? DefaultFolder.OfMeasured(path, "measured", points), parse.GetValue(common.Force));
        results.Prepare(answer.Named(Names));
        MeasuredPanel panel = Fit(outline, read, profile, points);
        Sheet sheet = MeasuredSheet.Draw(name, arcs?.Vertices ?? [.. outline.Points.Select(p => new ArcVertex(p.X, p.Y, 0))], panel);
        List<string> messages = [.. MeasuredReport.Warnings(panel).Select(w => $"warning: {w}")];
        if (given is null && own is null)
        {
            messages.Insert(0, FormattableString.Invariant($"note: profile tolerance {UsualProfileMm} mm assumed; --profile says another"));
        }

        return answer.Give(
            results,
            [(Names[0], MeasuredWriter.FirstArticle(name, panel)), (Names[1], SvgWriter.Write(sheet)), (Names[2], PngWriter.Write(sheet))],
            MeasuredReport.Text(name, panel), messages);
    }

    // The polygon stays within a thousandth of the edge, far below what can be measured on felt.
    private static (string Name, ArcOutline? Arcs, Outline Outline, double? Profile) Wanted(string path, string? letter)
    {
        const double chord = 0.001;
        if (DieReader.IsDie(path))
        {
            DieInput die = DieReader.Read(path);
            (string named, ArcOutline edge) = Edge(die.Die, letter);
            return (named, edge, edge.ContainingPolygon(chord), die.PanelProfileMm);
        }

        if (letter is not null)
        {
            throw new InputException(null, "--part", $"'{letter}' is given, but {path} is no die.json: only a die has parts with letters");
        }

        PartInput part = PartReader.Read(path);
        ImportedOutline outline =
            part.Outline ?? throw new InputException(path, null, "is a ball: compute its panel first and give the panel.json");
        return (outline.Name, outline.CentredArcs, outline.CentredArcs?.ContainingPolygon(chord) ?? outline.Centred, null);
    }

    // A die of several parts must be told which of them was measured: the nearest would be a guess.
    private static (string Name, ArcOutline Edge) Edge(StatedDie die, string? letter)
    {
        int[] parts = [.. die.Edges.Keys.Order()];
        string[] letters = [.. parts.Select((_, i) => CutParts.Letter(i, parts.Length))];
        if (letter is null && parts.Length == 1)
        {
            return (die.Name, die.Edges[parts[0]]);
        }

        int at = Array.IndexOf(letters, letter);
        string allowed =
            parts.Length == 1 ? "the die cuts a single part, which has no letter" : $"the die cuts the parts {string.Join(", ", letters)}";
        return at >= 0 && parts.Length > 1
            ? ($"{die.Name}, part {letter}", die.Edges[parts[at]])
            : throw new InputException(null, "--part", letter is null ? $"is missing: {allowed}" : $"'{letter}' is not there: {allowed}");
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
