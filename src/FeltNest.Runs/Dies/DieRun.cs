using System.Text;
using FeltNest.Die;
using FeltNest.Die.Bend;
using FeltNest.Die.Board;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Drawing;
using FeltNest.Drawing.Boards;
using FeltNest.Drawing.Sheets.Dies;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Dies;
using FeltNest.Layout;
using FeltNest.Report;
using FeltNest.Rolls;

namespace FeltNest.Runs.Dies;

/// <summary>The gang die of a layout: cavities, drawings, press check.</summary>
internal sealed class DieRun : IRun
{
    private readonly GangRequest request;
    private readonly int parts;

    /// <summary>The die of a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="band">Band of the layout, counted from 0.</param>
    /// <param name="order">What the shop wants of it; null for the figures usual where the shop has written none.</param>
    /// <param name="press">The press, or null.</param>
    /// <param name="cavities">Number of cavities, or null for as many as tile the layout and the press takes.</param>
    /// <param name="bends">Test bends of the shop's own rule; none where it has made none.</param>
    /// <exception cref="InputException">The layout has no such band.</exception>
    public DieRun(RollLayout layout, int band, DieOrder? order, PressSpec? press, int? cavities, IReadOnlyList<BendTest>? bends = null)
    {
        request = new GangRequest(layout, band, order ?? UsualOrder.Of(layout), press, cavities) { Bends = bends ?? [] };
        parts = CutParts.Of(layout, band).Count;
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames =>
    [
        "die.json", "die.dxf", .. Enumerable.Range(0, parts).Select(i => Cavity(i, parts)), "board.dxf", "rule.csv",
        "rule-stock.csv", "die.pdf",
        .. DieSheets.Names(parts).SelectMany(s => new[] { $"{s}.svg", $"{s}.png" }), .. Laser,
        "quote.html", "quote.txt",
    ];

    private IEnumerable<string> Laser => request.Order.Board.Laser is { } laser
        ? ["board-cut.dxf", "board-cut.svg", "board-cut.pdf", .. laser.EjectionSheet is null ? Array.Empty<string>() : ["ejection-cut.dxf"]]
        : [];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        DieDesign design = Design(search);
        return new Outcome
        {
            Files = Files(design, search),
            Table = DieReport.Text(design),
            Remarks = [.. design.Notes.Select(note => Remark.Warning(note.Text))],
        };
    }

    /// <summary>The die alone, without files.</summary>
    /// <exception cref="NoAnswerException">No die of those figures can be made, or none that the press takes.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public DieDesign Design(CancellationToken stop) => DieDesigner.Run(request, stop);

    // A die is given whole or not at all: a stop is heard between two of its files.
    private static List<ResultFile> Files(DieDesign design, CancellationToken stop)
    {
        Lazy<IReadOnlyList<Sheet>> drawn = new(() => DieSheets.Draw(design, stop));
        IReadOnlyList<int> parts = design.Parts;
        List<ResultFile> files =
        [
            File("die.json", () => DieWriter.Write(design)),
            File("die.dxf", () => DieDxf.Gang(design)),
            .. parts.Select((part, i) => File(Cavity(i, parts.Count), () => DieDxf.Cavity(design, part))),
            File("board.dxf", () => DieDxf.Board(design)),
            File("rule.csv", () => StripWriter.Csv(design)),
            File("rule-stock.csv", () => StripWriter.StockCsv(design)),
            File("die.pdf", () => PdfWriter.Write(drawn.Value)),
            .. DieSheets.Names(parts.Count).SelectMany((name, i) => new[]
            {
                File($"{name}.svg", () => SvgWriter.Write(drawn.Value[i])),
                File($"{name}.png", () => PngWriter.Write(drawn.Value[i])),
            }),
        ];
        files.AddRange(OfLaser(design).Select(made => File(made.Name, made.Make)));
        // The request names every file that goes with it; pictures are there to be looked at and hold nothing of their own.
        ResultFile[] sent = [.. files.Where(file => !file.Name.EndsWith(".png", StringComparison.Ordinal))];
        files.Add(File("quote.html", () => QuoteRequest.Html(design, Hashed(sent))));
        files.Add(File("quote.txt", () => Encoding.UTF8.GetBytes(QuoteRequest.Text(design, Hashed(sent)))));
        return files;

        ResultFile File(string name, Func<byte[]> make) => new(name, () =>
        {
            stop.ThrowIfCancellationRequested();
            return make();
        });
    }

    private static IEnumerable<(string Name, byte[] Bytes)> Hashed(ResultFile[] files) => files.Select(file => (file.Name, file.Content));

    // The board for the laser and the foam, where the order says how they are cut.
    private static IEnumerable<(string Name, Func<byte[]> Make)> OfLaser(DieDesign design)
    {
        if (design.Cut is { } cut)
        {
            Lazy<BoardCut> engraved = new(() => BoardEngraving.Of(cut));
            yield return ("board-cut.dxf", () => BoardCutDxf.Board(design, engraved.Value));
            yield return ("board-cut.svg", () => SvgWriter.Write(BoardCutSheet.Draw(design, engraved.Value)));
            yield return ("board-cut.pdf", () => PdfWriter.Write([BoardCutSheet.Draw(design, engraved.Value)]));
        }

        if (design.Request.Order.Board.Laser?.EjectionSheet is { } sheet)
        {
            yield return ("ejection-cut.dxf", () => BoardCutDxf.Ejection(design, sheet.LengthMm, sheet.WidthMm));
        }
    }

    private static string Cavity(int place, int count) => $"{CutParts.Named("cavity", CutParts.Letter(place, count))}.dxf";
}
