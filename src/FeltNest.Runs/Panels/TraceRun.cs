using FeltNest.Drawing.Sheets;
using FeltNest.Files;
using FeltNest.Files.Scan;
using FeltNest.Panel.Trace;
using FeltNest.Report;

namespace FeltNest.Runs.Panels;

/// <summary>Cut panels traced from a picture, shown on it.</summary>
internal sealed class TraceRun : IRun
{
    private readonly InputText picture;
    private readonly TracedPanel traced;

    /// <summary>Traces a picture.</summary>
    /// <param name="file">The picture.</param>
    /// <param name="dpi">Its resolution, dots per inch, or null for a photo of the sheet of reference marks.</param>
    /// <exception cref="InputException">No panel can be told in it.</exception>
    public TraceRun(string file, double? dpi)
    {
        picture = InputText.OfFile(file) with { Dpi = dpi };
        PictureReader.RefuseOthers(picture);
        traced = ScanReader.Trace(picture);
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["trace.json", "trace.svg", "trace.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [.. ScanReader.Notes(picture, traced).Select(note => $"{picture.Name}: {note}")];

    /// <inheritdoc/>
    public Outcome Execute(Action? searchOver, CancellationToken search, CancellationToken interrupt)
    {
        string name = Path.GetFileNameWithoutExtension(picture.Name);
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => TraceWriter.Write(name, traced)),
                .. ResultFile.Pictures(FileNames.Skip(1), () => TraceSheet.Draw(name, traced)),
            ],
            Table = TraceReport.Text(name, traced),
        };
    }
}
