using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Outlook;
using FeltNest.Cost.Sheet;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Compare;
using FeltNest.Files.Compare.Workbook;
using FeltNest.Files.Costs;
using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Report;

namespace FeltNest.Runs;

/// <summary>Felt and cost of widths or offers side by side.</summary>
internal sealed class CompareRun : IRun
{
    private readonly List<Remark> remarks = [];
    private readonly List<string> notes;
    private readonly IReadOnlyList<string> layoutNotes;

    /// <summary>A comparison; reads what the question names.</summary>
    /// <param name="question">What is compared.</param>
    /// <exception cref="InputException">A file that cannot be used, or things that do not go together.</exception>
    public CompareRun(CompareAsk question)
    {
        notes = [.. question.ListNotes, .. question.Part.NamedNotes];
        layoutNotes = question.Part.Notes;
        CostInputs? costs = question.CostsFile is { } file ? CostsReader.Read(file) : question.Costs;
        OfferRates.Require(question.Offers, question.OffersFile, costs, question.CostsFile);
        RequireCorrelations(question, costs);
        Question = new CompareRequest(
            question.Lay, Cases(question), question.Scanned, WithLife(costs, question.LifeFile), Kept(question))
        {
            ThousandBalls = (question.Balls ?? costs?.AnnualBalls) / 1000,
        };
    }

    /// <summary>The question as it is worked out.</summary>
    public CompareRequest Question { get; }

    /// <summary>Told each row as it is done, or null.</summary>
    public IProgress<CompareRow>? Progress { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } =
    [
        "compare.json", "compare.csv", "compare.svg", "compare.png", "compare.html", "best-layout.json", "compare.xlsx", "summary.html",
        "summary.pdf",
    ];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => notes;

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        Comparison comparison = Compare(search);
        resultThere?.Invoke();
        return Told(comparison);
    }

    /// <summary>The comparison alone.</summary>
    /// <exception cref="NoAnswerException">Nothing fits.</exception>
    public Comparison Compare(CancellationToken search) => CompareStudy.Run(Question, Progress, search);

    /// <summary>A comparison with its files.</summary>
    public Outcome Told(Comparison comparison)
    {
        Lazy<Sheet> sheet = new(() => CompareSheet.Draw(comparison));
        ResultFile picture = new(FileNames[2], () => SvgWriter.Write(sheet.Value));
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => CompareWriter.Json(comparison)), new(FileNames[1], () => CompareTable.Csv(comparison)), picture,
                new(FileNames[3], () => PngWriter.Write(sheet.Value)),
                new(FileNames[4], () => ComparePage.Html(comparison, picture.Content)),

                // The layout that was costed, to be cut: a search for least felt alone may give another one.
                new(FileNames[5], () => LayoutWriter.Write(comparison.Best.Layout, comparison.Best.Yield, layoutNotes, [])),
                new(FileNames[6], () => CompareWorkbook.Xlsx(comparison)),
                new(FileNames[7], () => SummaryPage.Html(comparison)),
                new(FileNames[8], () => PdfWriter.Write([SummarySheet.Draw(comparison)])),
            ],
            Table = CompareReport.Text(comparison),
            Remarks = remarks,
            CutShort = comparison.CutShort,
        };
    }

    private static void RequireCorrelations(CompareAsk question, CostInputs? costs)
    {
        if (costs is null)
        {
            return;
        }

        string[] known = [.. UnsureFigures.Of(costs, Cases(question)).Select(figure => figure.Name)];
        for (int i = 0; i < costs.Correlations.Count; i++)
        {
            CostCorrelation pair = costs.Correlations[i];
            foreach ((string field, string name) in ((string, string)[])[("first", pair.First), ("second", pair.Second)])
            {
                // Offers change from list to list: what is said of one that is not in it waits.
                if (!known.Contains(name) && !name.StartsWith("price of ", StringComparison.Ordinal))
                {
                    throw new InputException(
                        question.CostsFile, $"correlations[{i}].{field}",
                        $"'{name}' is no figure with a range; there are: {string.Join(", ", known.DefaultIfEmpty("none"))}");
                }
            }
        }
    }

    private static CompareCase[] Cases(CompareAsk question) => question.Offers is { } offers
        ? [.. offers.Select(offer => CompareCase.Of(offer, question.Lay.Trims))]
        : [.. question.WidthsMm.Select(width => CompareCase.Of(width, question.Lay.Trims))];

    // What readings show of a die goes before what the costs file assumes, whose range then says nothing more.
    private CostInputs? WithLife(CostInputs? known, string? path)
    {
        if (path is null)
        {
            return known;
        }

        if (known?.Die is not { } die)
        {
            throw new InputException(
                AskedFor.DieLife,
                known is null
                    ? "goes with a costs file: a life alone costs nothing"
                    : "wants the price of the die: the costs file has no die");
        }

        LifeInput read = LifeReader.Read(path);
        remarks.Add(Remark.Note(
            $"life of the die {read.LifeStrikes} strikes by the readings of {read.Die} in {path}, before the {die.LifeStrikes} of "
                + $"the costs file"));
        if (read.SupersededBy is { } newer)
        {
            remarks.Add(Remark.Warning($"{path}: {read.Die} is superseded by {newer}"));
        }

        return known with
        {
            Die = die with { LifeStrikes = read.LifeStrikes, LifeOf = read.Die },
            Ranges = [.. known.Ranges.Where(r => r.Field != "die.lifeStrikes")],
        };
    }

    private RollLayout? Kept(CompareAsk question)
    {
        string? path = question.KeptDieFile;
        bool drawn = path is not null && DrawnDie.IsDrawing(path);
        if (drawn != question.KeptFeedMm is not null)
        {
            throw new InputException(AskedFor.KeptFeed, drawn
                ? "is missing: a drawing does not say after what length of roll its die strikes again"
                : "belongs to a drawn die (SVG or DXF): a layout has its own repeat");
        }

        if (!drawn)
        {
            return path is null ? null : LayoutReader.Read(path).Layout;
        }

        List<string> read = [];
        RollLayout die = DrawnDie.Read(path!, question.KeptFeedMm!.Value, question.Lay.Trims, read);
        notes.AddRange(read.Select(note => $"{path}: {note}"));
        return die;
    }
}
