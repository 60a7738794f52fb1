using FeltNest.Die.Board;
using FeltNest.Die.Check;
using FeltNest.Files.Dxf;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;

namespace FeltNest.Files.Dies;

/// <summary>Reads a board for the laser back from its drawing: polylines and circles by their layers.</summary>
internal static class BoardCutReader
{
    /// <summary>The board of a file.</summary>
    /// <exception cref="InputException">No drawing, or one without slots.</exception>
    public static StatedBoardCut Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The board of a text.</summary>
    /// <exception cref="InputException">No drawing, or one without slots.</exception>
    public static StatedBoardCut Read(InputText text)
    {
        DxfDrawing drawing = DxfDrawing.Read(text);
        List<(string Layer, IReadOnlyList<ArcVertex> Line)> lines = Lines(drawing.Entities);
        IReadOnlyList<IReadOnlyList<ArcVertex>> Of(string layer) => [.. lines.Where(l => l.Layer == layer).Select(l => l.Line)];
        IReadOnlyList<IReadOnlyList<ArcVertex>> slots = Of(BoardCut.Slot);
        IReadOnlyList<IReadOnlyList<ArcVertex>> outlines = Of(BoardCut.Outside);
        if (slots.Count == 0 || slots.Concat(outlines).Any(s => s.Count < 3))
        {
            throw new InputException(text.Name, null, $"has no closed lines on layer {BoardCut.Slot}: wanted is a board for the laser");
        }

        return new StatedBoardCut
        {
            Slots = [.. slots.Select(s => Shape(text.Name, BoardCut.Slot, s))],
            Outlines = [.. outlines.Select(o => Shape(text.Name, BoardCut.Outside, o))],
            Strokes = Of(BoardCut.Engrave),
            Holes = [.. drawing.Entities.Where(e => e.Kind == "CIRCLE" && Layer(e) is BoardCut.Pin or BoardCut.Screw or BoardCut.Air)
                .Select(e => (Layer(e), new Point2(e.Number(10), e.Number(20)), e.Number(40)))],
            Extents = drawing.Extents,
        };
    }

    private static IReadOnlyList<ArcVertex> Shape(string file, string layer, IReadOnlyList<ArcVertex> line) =>
        OutlineReader.Shaped(file, layer, () => ArcOutline.From(line)).Vertices;

    private static string Layer(DxfEntity entity) => entity.Groups.FirstOrDefault(g => g.Code == 8).Text ?? string.Empty;

    // A polyline is an entity, its vertices the entities behind it.
    private static List<(string Layer, IReadOnlyList<ArcVertex> Line)> Lines(IReadOnlyList<DxfEntity> entities)
    {
        List<(string Layer, IReadOnlyList<ArcVertex> Line)> lines = [];
        List<ArcVertex>? open = null;
        foreach (DxfEntity entity in entities)
        {
            if (entity.Kind == "POLYLINE")
            {
                open = [];
                lines.Add((Layer(entity), open));
            }
            else if (entity.Kind == "VERTEX" && open is not null)
            {
                open.Add(new ArcVertex(entity.Number(10), entity.Number(20), 4 * Math.Atan(entity.Number(42, 0))));
            }
            else
            {
                open = null;
            }
        }

        return lines;
    }
}
