using FeltNest.Cost.Usage;
using FeltNest.Files.Costs;
using FeltNest.Files.Csv;
using FeltNest.Files.Layouts;
using FeltNest.Files.Usage;
using FeltNest.Layout;
using FeltNest.Report;

namespace FeltNest.Runs;

/// <summary>Why a shift used more or less felt than standard.</summary>
internal sealed class UsageRun : IRun
{
    private readonly UsageRequest question;
    private readonly ListReading lists;

    /// <summary>Reads what is asked about.</summary>
    /// <param name="layoutFile">The layout that was cut.</param>
    /// <param name="actualsFile">What the rolls gave.</param>
    /// <param name="costsFile">Normal losses and the standard price, or null.</param>
    /// <param name="lists">How the list is read.</param>
    /// <exception cref="InputException">A file that cannot be used.</exception>
    public UsageRun(string layoutFile, string actualsFile, string? costsFile, ListReading lists)
    {
        this.lists = lists;
        RollLayout layout = LayoutReader.Read(layoutFile).Layout;
        question = new UsageRequest(
            layout, ActualsReader.Read(lists.Open(actualsFile), new TicketDoubts(layout).Of),
            costsFile is null ? null : CostsReader.Read(costsFile))
        {
            LayoutFile = layoutFile,
            ActualsFile = actualsFile,
            CostsFile = costsFile,
        };
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["usage.json", "usage.csv"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => lists.Notes;

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        UsageVariance variance = UsageStudy.Run(question);
        return new Outcome
        {
            Files = [new(FileNames[0], () => UsageWriter.Json(variance)), new(FileNames[1], () => UsageWriter.Csv(variance))],
            Table = UsageReport.Text(variance),
            Remarks = [.. UsageReport.Notes(variance).Select(Remark.Note)],
        };
    }
}
