using FeltNest.Die.Check;
using FeltNest.Die.Proof;
using FeltNest.Drawing.Sheets.Dies;
using FeltNest.Files.Csv;
using FeltNest.Files.Dies;
using FeltNest.Report;

namespace FeltNest.Runs.Dies;

/// <summary>How a die wears and when to rule it again.</summary>
internal sealed class LifeRun : IRun
{
    private readonly DieInput die;
    private readonly IReadOnlyList<DieReading> readings;
    private readonly string? superseded;
    private readonly ListReading lists;

    /// <summary>Reads what is asked about.</summary>
    /// <param name="dieFile">The die.</param>
    /// <param name="readingsFile">Its first-article readings by date and strikes.</param>
    /// <param name="newerFile">A newer die, or null.</param>
    /// <param name="lists">How the list is read.</param>
    /// <exception cref="InputException">A file that cannot be used.</exception>
    public LifeRun(string dieFile, string readingsFile, string? newerFile, ListReading lists)
    {
        this.lists = lists;
        die = DieReader.Read(dieFile);
        readings = ReadingsReader.Read(lists.Open(readingsFile), die.Die.Cavities.Count);
        superseded = newerFile is null ? null : Superseding(die, DieReader.Read(newerFile));
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["life.json", "life.svg", "life.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => lists.Notes;

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        DieLife life = DieLife.Of(die.Die.Name, die.Die.Revision, die.PanelProfileMm, readings, die.Wear?.LifeStrikes, superseded);
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => MeasuredWriter.Life(life, die)),
                .. ResultFile.Pictures(FileNames.Skip(1), () => LifeSheet.Draw(life)),
            ],
            Table = MeasuredReport.Text(life),
            Remarks = [.. MeasuredReport.Warnings(life).Select(Remark.Warning)],
        };
    }

    // A die is superseded by another revision, or by another edge under the same name.
    private static string? Superseding(DieInput old, DieInput newer)
    {
        bool changed = newer.Die.Revision != old.Die.Revision || !SameLay.Are(old.Layout.Layout, newer.Layout.Layout);
        if (!changed)
        {
            return null;
        }

        return newer.Die.Revision is { } revision ? $"{newer.Die.Name} revision {revision}" : newer.Die.Name;
    }
}
