using FeltNest.Die.Proof;
using FeltNest.Files.Csv;
using FeltNest.Files.Dxf;
using FeltNest.Files.Outlines;
using FeltNest.Files.Scan;
using FeltNest.Geometry;
using FeltNest.Panel.Trace;
using static FeltNest.Files.Dies.RingsListing;

namespace FeltNest.Files.Dies;

/// <summary>Reads the rings measured on a die: a list of cavity,u,v, a DXF of closed edges, or a picture of blanks as they lie in the
/// die.</summary>
internal static class RingsReader
{
    // Edges of a drawing are taken at places no further apart than this, mm.
    private const double Step = 0.5;

    // The polygon of a drawn edge stays within this of it, mm.
    private const double Chord = 0.001;

    // Places of a seen edge that are used: one every half millimetre of an ordinary panel.
    private const int MostPlaces = 800;

    /// <summary>The rings of a text, in the order of their cavities or of the drawing.</summary>
    /// <param name="text">The text; a picture carries its resolution.</param>
    /// <param name="cavities">Cavities of the die.</param>
    /// <exception cref="InputException">Names the text, the place, the value found and what is allowed.</exception>
    public static IReadOnlyList<MeasuredRing> Read(InputText text, int cavities)
    {
        if (PictureReader.IsPicture(text))
        {
            TracedPanel traced = ScanReader.Trace(text);
            return
            [
                .. traced.Found.Panels.Select(contour => new MeasuredRing { Cavity = null, Points = Seen(contour, traced.Flat.PixelMm) }),
            ];
        }

        return text.Ending == ".dxf" ? Drawn(text) : Listed(text, cavities);
    }

    // A pixel's middle is half a pixel from its corner.
    private static Point2[] Seen(Contour contour, double pixelMm)
    {
        int stride = 1 + (contour.Places.Length / MostPlaces);
        return [.. contour.Places.Where((_, i) => i % stride == 0).Select(p => new Point2(p.X + 0.5, p.Y + 0.5) * pixelMm)];
    }

    private static MeasuredRing[] Drawn(InputText text) =>
    [
        .. DxfOutline.ReadAll(text, [])
            .Select(loop => OutlineReader.Shaped(text.Name, null, () => ArcOutline.From(loop)).ContainingPolygon(Chord))
            .Select(edge => new MeasuredRing { Cavity = null, Points = [.. Places(edge.Points)] }),
    ];

    private static IEnumerable<Point2> Places(IReadOnlyList<Point2> points)
    {
        for (int i = 0; i < points.Count; i++)
        {
            Point2 way = points[(i + 1) % points.Count] - points[i];
            int parts = Math.Max(1, (int)Math.Ceiling(way.Length / Step));
            for (int k = 0; k < parts; k++)
            {
                yield return points[i] + (way * ((double)k / parts));
            }
        }
    }

    private static MeasuredRing[] Listed(InputText text, int cavities) =>
    [
        .. CsvTable.Read(text, Listing)
            .Each(row => (Cavity: row.Whole(Cavity, cavities), Place: new Point2(row.Number(U), row.Number(V))))
            .GroupBy(row => row.Cavity)
            .OrderBy(ring => ring.Key)
            .Select(ring => new MeasuredRing { Cavity = ring.Key, Points = [.. ring.Select(row => row.Place)] }),
    ];
}
