using FeltNest.Drawing;
using FeltNest.Drawing.Sheets.Felts;
using FeltNest.Drawing.Writers;

namespace FeltNest.Runs.Felts;

/// <summary>The sheets for the tests of a lot of felt: what to cut and how to test, discs true to size, and the record to fill
/// in.</summary>
internal sealed class FeltTestSheetsRun : IRun
{
    /// <summary>Diameter of the core, mm.</summary>
    public required double CoreDiameterMm { get; init; }

    /// <summary>Thickness of the felt, mm.</summary>
    public required double ThicknessMm { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } =
    [
        "felt-tests.pdf", "felt-cutting.svg", "felt-cutting.png", "felt-discs.svg", "felt-discs.png", "felt-record.svg", "felt-record.png",
    ];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? searchOver, CancellationToken search, CancellationToken interrupt)
    {
        FeltTestPlan plan = new(CoreDiameterMm, ThicknessMm);
        Sheet[] sheets = [FeltCuttingSheet.Draw(plan), FeltDiscSheet.Draw(plan), FeltRecordSheet.Draw(plan)];
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => PdfWriter.Write(sheets)),
                .. sheets.SelectMany((sheet, i) => ResultFile.Pictures(FileNames.Skip(1 + (2 * i)).Take(2), () => sheet)),
            ],
            Table = "Print felt-tests.pdf at 100 % and measure its line (100.0 mm). Cut, test, write the readings as a list, then "
                + "read it with: feltnest felt READINGS\n",
        };
    }
}
