using FeltNest.Drawing;
using FeltNest.Drawing.Writers;

namespace FeltNest.Runs;

/// <summary>A file of a run: its name, its kind, and its bytes, made when they are first asked for.</summary>
internal sealed class ResultFile
{
    private readonly Lazy<byte[]> content;

    /// <summary>A file.</summary>
    /// <param name="name">Its name with its ending.</param>
    /// <param name="make">Makes its bytes.</param>
    public ResultFile(string name, Func<byte[]> make)
    {
        Name = name;
        content = new Lazy<byte[]>(make);
    }

    /// <summary>Name with its ending.</summary>
    public string Name { get; }

    /// <summary>Its media type.</summary>
    public string Kind => Path.GetExtension(Name) switch
    {
        ".svg" => "image/svg+xml",
        ".png" => "image/png",
        ".pdf" => "application/pdf",
        ".dxf" => "image/vnd.dxf",
        ".csv" => "text/csv",
        ".html" => "text/html",
        ".txt" => "text/plain",
        _ => "application/json",
    };

    /// <summary>Its bytes.</summary>
    /// <exception cref="OperationCanceledException">The run was ended while it was made.</exception>
    public byte[] Content => content.Value;

    /// <summary>A sheet as a vector file and as a picture, drawn once.</summary>
    /// <param name="names">Names of the two, SVG first.</param>
    /// <param name="draw">Draws the sheet.</param>
    public static IReadOnlyList<ResultFile> Pictures(IEnumerable<string> names, Func<Sheet> draw)
    {
        Lazy<Sheet> sheet = new(draw);
        return
        [
            .. names.Select(name => new ResultFile(
                name, () => name.EndsWith(".svg", StringComparison.Ordinal) ? SvgWriter.Write(sheet.Value) : PngWriter.Write(sheet.Value))),
        ];
    }
}
