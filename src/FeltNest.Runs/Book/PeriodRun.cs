using FeltNest.Cost.Tickets;
using FeltNest.Drawing.Sheets;
using FeltNest.Files.Usage;
using FeltNest.Report;

namespace FeltNest.Runs.Book;

/// <summary>Felt of the tickets of a period against standard, out of the cutting room's book.</summary>
internal sealed class PeriodRun : IRun
{
    private readonly PeriodQuestion question;

    /// <summary>A period.</summary>
    public PeriodRun(PeriodQuestion question) => this.question = question;

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } =
        ["usage.json", "usage.csv", "pareto.svg", "pareto.png", "charts.svg", "charts.png", "usage.html"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        PeriodUsage usage = PeriodStudy.Run(question);
        IReadOnlyList<ResultFile> pareto = ResultFile.Pictures(FileNames.Skip(2).Take(2), () => ParetoSheet.Draw(usage));
        IReadOnlyList<ResultFile> charts = ResultFile.Pictures(FileNames.Skip(4).Take(2), () => ControlSheet.Draw(usage));
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => PeriodWriter.Json(usage)), new(FileNames[1], () => PeriodWriter.Csv(usage)),
                .. pareto, .. charts,
                new(FileNames[6], () => PeriodPage.Html(usage, pareto[0].Content, charts[0].Content)),
            ],
            Table = PeriodReport.Text(usage),
            Remarks = [.. PeriodReport.Notes(usage).Select(Remark.Note)],
        };
    }
}
