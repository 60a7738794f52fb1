using FeltNest.Die;
using FeltNest.Die.Check;
using FeltNest.Die.Proof;
using FeltNest.Drawing.Sheets.Dies;
using FeltNest.Files;
using FeltNest.Files.Dies;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Report;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Dies;

/// <summary>A cut panel laid on its outline and judged.</summary>
internal sealed class FirstArticleRun : IRun
{
    // Suggested for felt panels where no die says otherwise (common practice, no source): 1.0 to 1.6.
    private const double UsualProfileMm = 1.2;

    // The polygon stays within this of the edge, mm: far below what can be measured on felt.
    private const double Chord = 0.001;

    private readonly FirstArticleAsk question;
    private readonly WantedPanel wanted;
    private readonly IReadOnlyList<Point2> points;

    /// <summary>Reads what is asked about.</summary>
    /// <exception cref="InputException">A file that cannot be used, or a part that is not there.</exception>
    public FirstArticleRun(FirstArticleAsk question)
    {
        this.question = question;
        wanted = Wanted(question.WantedFile, question.Part, question.Dpi);
        points = PointsReader.Read(question.PointsFile);
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["measured.json", "measured.svg", "measured.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        double profile = question.ProfileMm ?? wanted.ProfileMm ?? UsualProfileMm;
        ProfileRule rule = new()
        {
            ToleranceMm = profile,
            UncertaintyMm = question.UncertaintyMm,
            Steepness = question.Steepness ?? ProfileRule.UsualSteepness,
            InFrame = question.InFrame,
        };
        MeasuredPanel panel = NamedInput.Of(question.PointsFile, () => PanelFitter.Fit(wanted.Outline, points, rule));
        List<Remark> remarks = [.. MeasuredReport.Warnings(panel).Select(Remark.Warning)];
        if (question.ProfileMm is null && wanted.ProfileMm is null)
        {
            remarks.Insert(0, Remark.Note(Invariant($"profile tolerance {UsualProfileMm} mm assumed; give another where yours differs")));
        }

        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => MeasuredWriter.FirstArticle(wanted.Name, panel)),
                .. ResultFile.Pictures(FileNames.Skip(1), () => MeasuredSheet.Draw(wanted.Name, wanted.Edge, panel)),
            ],
            Table = MeasuredReport.Text(wanted.Name, panel),
            Remarks = remarks,
            Refused = panel.Verdict == Conformity.DoesNotConform,
        };
    }

    private static WantedPanel Wanted(string path, string? letter, double? dpi)
    {
        if (DieReader.IsDie(path))
        {
            DieInput die = DieReader.Read(path);
            (string named, ArcOutline edge) = Edge(die.Die, letter);
            return new WantedPanel(named, edge.ContainingPolygon(Chord), edge.Vertices, die.PanelProfileMm);
        }

        if (letter is not null)
        {
            throw new InputException(
                AskedFor.DiePart, $"'{letter}' is given, but {path} is no die.json: only a die has parts with letters");
        }

        ImportedOutline outline = PartReader.Read(path, null, dpi).Outline
            ?? throw new InputException(path, null, "is a ball: compute its panel first and give the panel.json");
        return outline.CentredArcs is { } arcs
            ? new WantedPanel(outline.Name, arcs.ContainingPolygon(Chord), arcs.Vertices, null)
            : new WantedPanel(
                outline.Name, outline.Centred, [.. outline.Centred.Points.Select(p => new ArcVertex(p.X, p.Y, 0))], null);
    }

    // A die of several parts must be told which of them was measured: the nearest would be a guess.
    private static (string Name, ArcOutline Edge) Edge(StatedDie die, string? letter)
    {
        int[] parts = [.. die.Edges.Keys.Order()];
        if (letter is null && parts.Length == 1)
        {
            return (die.Name, die.Edges[parts[0]]);
        }

        string[] letters = [.. parts.Select((_, i) => CutParts.Letter(i, parts.Length))];
        int at = parts.Length > 1 ? Array.IndexOf(letters, letter) : -1;
        if (at >= 0)
        {
            return ($"{die.Name}, part {letter}", die.Edges[parts[at]]);
        }

        string found = letter is null ? "is missing" : $"'{letter}' is not there";
        string allowed =
            parts.Length == 1 ? "the die cuts a single part, which has no letter" : $"the die cuts the parts {string.Join(", ", letters)}";
        throw new InputException(AskedFor.DiePart, $"{found}: {allowed}");
    }

    private sealed record WantedPanel(string Name, Outline Outline, IReadOnlyList<ArcVertex> Edge, double? ProfileMm);
}
