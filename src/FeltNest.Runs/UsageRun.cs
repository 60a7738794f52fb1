using FeltNest.Cost.Usage;
using FeltNest.Files.Costs;
using FeltNest.Files.Layouts;
using FeltNest.Files.Usage;
using FeltNest.Report;

namespace FeltNest.Runs;

/// <summary>Why a shift used more or less felt than standard.</summary>
internal sealed class UsageRun : IRun
{
    private readonly UsageRequest question;

    /// <summary>Reads what is asked about.</summary>
    /// <param name="layoutFile">The layout that was cut.</param>
    /// <param name="actualsFile">What the rolls gave.</param>
    /// <param name="costsFile">Normal losses and the standard price, or null.</param>
    /// <exception cref="InputException">A file that cannot be used.</exception>
    public UsageRun(string layoutFile, string actualsFile, string? costsFile) => question = new UsageRequest(
        LayoutReader.Read(layoutFile).Layout, ActualsReader.Read(actualsFile), costsFile is null ? null : CostsReader.Read(costsFile))
    {
        LayoutFile = layoutFile,
        ActualsFile = actualsFile,
        CostsFile = costsFile,
    };

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["usage.json", "usage.csv"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

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
