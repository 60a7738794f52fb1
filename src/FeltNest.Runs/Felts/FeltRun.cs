using FeltNest.Ball.Passport;
using FeltNest.Drawing.Sheets.Felts;
using FeltNest.Files.Csv;
using FeltNest.Files.Felts;
using FeltNest.Report;

namespace FeltNest.Runs.Felts;

/// <summary>Readings of a lot of felt: the figures a ball takes, with their spread.</summary>
internal sealed class FeltRun : IRun
{
    /// <summary>The readings' file.</summary>
    public required string ReadingsFile { get; init; }

    /// <summary>Range of strain in which the strips are fitted.</summary>
    public required FitRange Range { get; init; }

    /// <summary>How the lists are read.</summary>
    public ListReading Lists { get; init; } = new();

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["felt.json", "felt.svg", "felt.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? searchOver, CancellationToken search, CancellationToken interrupt)
    {
        FeltReadings readings = FeltReadingsReader.Read(Lists.Open(ReadingsFile));
        FeltPassport felt = NamedInput.Of(ReadingsFile, () => PassportStudy.Run(readings, Range));
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => FeltWriter.Write(felt)),
                .. ResultFile.Pictures(FileNames.Skip(1), () => FeltSheet.Draw(felt, readings)),
            ],
            Table = FeltReport.Text(felt),
            Remarks = [.. Lists.Notes.Select(Remark.Note)],
        };
    }
}
