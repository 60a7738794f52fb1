using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;

namespace FeltNest.Runs.Panels;

/// <summary>The sheet of reference marks to print.</summary>
internal sealed class MarkSheetRun : IRun
{
    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["marks.pdf", "marks.svg", "marks.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? searchOver, CancellationToken search, CancellationToken interrupt)
    {
        Sheet sheet = ReferenceSheet.Draw();
        return new Outcome
        {
            Files = [new(FileNames[0], () => PdfWriter.Write([sheet])), .. ResultFile.Pictures(FileNames.Skip(1), () => sheet)],
            Table = "Print marks.pdf at 100 %, measure its line (100.0 mm), lay a panel inside the marks and photograph it.\n",
        };
    }
}
