using FeltNest.Cost.Families;
using FeltNest.Cost.Sheet;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Costs;
using FeltNest.Files.Families;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Report;

namespace FeltNest.Runs;

/// <summary>Which widths to stock and which dies to own for a family of balls.</summary>
internal sealed class FamilyRun : IRun
{
    private readonly List<string> notes = [];

    /// <summary>A study of a family; reads what the question names.</summary>
    /// <param name="asked">The family and the widths.</param>
    /// <exception cref="InputException">A file that cannot be used, or things that do not go together.</exception>
    /// <exception cref="NoAnswerException">No panel keeps the limits of a ball.</exception>
    public FamilyRun(FamilyAsk asked)
    {
        notes.AddRange(asked.ListNotes);
        CostInputs costs = CostsReader.Read(asked.CostsFile);
        OfferRates.Require(asked.Offers, asked.OffersFile, costs, asked.CostsFile);
        if (asked.Offers is null && costs.Felt is null)
        {
            throw new InputException(asked.CostsFile, "felt", "is missing: a bare width has the price of the felt of the costs file");
        }

        Question = new FamilyRequest
        {
            Balls = [.. Balls(asked)],
            Widths = asked.Offers is { } offers ? [.. offers.Select(FamilyWidth.Of)] : [.. asked.WidthsMm.Select(FamilyWidth.Of)],
            Scan = asked.Scanned,
            Costs = costs,
            MostWidths = asked.MostWidths,
        };
    }

    /// <summary>The question as it is worked out.</summary>
    public FamilyRequest Question { get; }

    /// <summary>Told the cheapest width of each ball as it is done, or null.</summary>
    public IProgress<FamilyPair>? Progress { get; set; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["family.json", "family.csv", "family.svg", "family.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => notes;

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        FamilyAnswer answer = FamilyStudy.Run(Question, Progress, search);
        Lazy<Sheet> sheet = new(() => FamilySheet.Draw(answer));
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => FamilyWriter.Json(answer)), new(FileNames[1], () => FamilyColumns.Csv(answer)),
                new(FileNames[2], () => SvgWriter.Write(sheet.Value)), new(FileNames[3], () => PngWriter.Write(sheet.Value)),
            ],
            Table = FamilyReport.Text(answer),
        };
    }

    // The same file may stand for several balls: other volumes, other gaps.
    private IEnumerable<FamilyBall> Balls(FamilyAsk asked)
    {
        Dictionary<string, LaidPart> parts = [];
        foreach (FamilyEntry entry in asked.Balls)
        {
            if (!parts.TryGetValue(entry.File, out LaidPart? part))
            {
                parts.Add(entry.File, part = LaidPart.Of(PartReader.Read(entry.File), entry.File));
                notes.AddRange(part.NamedNotes);
            }

            LayoutRequest lay = asked.Lay(part.Part);
            yield return new FamilyBall
            {
                Name = entry.Name,
                BallsPerYear = entry.BallsPerYear,
                Lay = lay with
                {
                    GapMm = entry.GapMm ?? lay.GapMm,
                    Trims = entry.EdgeMm is { } edge ? EdgeTrims.Both(edge) : lay.Trims,
                },
            };
        }
    }
}
