using System.Globalization;
using System.Text;
using FeltNest.Geometry;

namespace FeltNest.Files.Dxf;

/// <summary>Writes an ASCII DXF drawing of release 12 in mm: layers, polylines with bulges, texts and points. Same content, same
/// bytes.</summary>
/// <remarks>Group codes of the published DXF reference (from memory where an edition is not at hand); no block, no handle, nothing of later
/// releases but $INSUNITS, which readers honour.</remarks>
internal sealed class DxfText
{
    private readonly StringBuilder entities = new();
    private readonly (string Name, int Colour)[] layers;
    private double minX = double.PositiveInfinity;
    private double minY = double.PositiveInfinity;
    private double maxX = double.NegativeInfinity;
    private double maxY = double.NegativeInfinity;

    /// <summary>A drawing with its layers and the number of each layer's colour.</summary>
    public DxfText(params (string Name, int Colour)[] layers) => this.layers = layers;

    /// <summary>Bulge of an arc: the tangent of a quarter of its included angle, positive counter-clockwise.</summary>
    public static double Bulge(double turn) => Math.Tan(turn / 4);

    /// <summary>A polyline; the last vertex's turn counts only where it is closed.</summary>
    public DxfText Polyline(string layer, IReadOnlyList<ArcVertex> vertices, bool closed)
    {
        Group(0, "POLYLINE").Group(8, layer)
            .Group(66, "1")
            .Group(10, "0.0")
            .Group(20, "0.0")
            .Group(30, "0.0")
            .Group(70, closed ? "1" : "0");
        for (int i = 0; i < vertices.Count; i++)
        {
            ArcVertex v = vertices[i];
            Reach(v.Point);
            Group(0, "VERTEX").Group(8, layer).Group(10, Number(v.X)).Group(20, Number(v.Y)).Group(30, "0.0");
            if (v.Turn != 0 && (closed || i < vertices.Count - 1))
            {
                Group(42, Number(Bulge(v.Turn)));
                Reach(v.Point, vertices[(i + 1) % vertices.Count].Point, v.Turn);
            }
        }

        return Group(0, "SEQEND").Group(8, layer);
    }

    /// <summary>A line of text, its base line level; letters beyond ASCII are written as question marks.</summary>
    public DxfText Text(string layer, Point2 at, double height, string words)
    {
        Reach(at);
        return Group(0, "TEXT").Group(8, layer)
            .Group(10, Number(at.X))
            .Group(20, Number(at.Y))
            .Group(30, "0.0")
            .Group(40, Number(height))
            .Group(1, string.Concat(words.Select(c => c is >= ' ' and <= '~' ? c : '?')));
    }

    /// <summary>A circle.</summary>
    public DxfText Circle(string layer, Point2 centre, double radius)
    {
        Reach(centre - new Point2(radius, radius));
        Reach(centre + new Point2(radius, radius));
        return Group(0, "CIRCLE").Group(8, layer)
            .Group(10, Number(centre.X))
            .Group(20, Number(centre.Y))
            .Group(30, "0.0")
            .Group(40, Number(radius));
    }

    /// <summary>A point.</summary>
    public DxfText Point(string layer, Point2 at)
    {
        Reach(at);
        return Group(0, "POINT").Group(8, layer).Group(10, Number(at.X)).Group(20, Number(at.Y)).Group(30, "0.0");
    }

    // Long because it writes the head of a drawing group by group, as the format orders them.
    /// <summary>The file's bytes, lines ending in carriage return and line feed.</summary>
    public byte[] Finish()
    {
        string body = entities.ToString();
        entities.Clear();
        Group(999, "lengths in mm, drawn 1:1");
        Group(0, "SECTION").Group(2, "HEADER")
            .Group(9, "$ACADVER")
            .Group(1, "AC1009")
            .Group(9, "$INSUNITS")
            .Group(70, "4")
            .Group(9, "$MEASUREMENT")
            .Group(70, "1");
        Group(9, "$EXTMIN").Group(10, Number(minX))
            .Group(20, Number(minY))
            .Group(30, "0.0")
            .Group(9, "$EXTMAX")
            .Group(10, Number(maxX))
            .Group(20, Number(maxY))
            .Group(30, "0.0")
            .Group(0, "ENDSEC");
        Group(0, "SECTION").Group(2, "TABLES");
        Group(0, "TABLE").Group(2, "LTYPE")
            .Group(70, "1")
            .Group(0, "LTYPE")
            .Group(2, "CONTINUOUS")
            .Group(70, "64")
            .Group(3, "Solid line")
            .Group(72, "65")
            .Group(73, "0")
            .Group(40, "0.0")
            .Group(0, "ENDTAB");
        Group(0, "TABLE").Group(2, "LAYER").Group(70, layers.Length.ToString(CultureInfo.InvariantCulture));
        foreach ((string name, int colour) in layers)
        {
            Group(0, "LAYER").Group(2, name).Group(70, "0").Group(62, colour.ToString(CultureInfo.InvariantCulture)).Group(6, "CONTINUOUS");
        }

        Group(0, "ENDTAB").Group(0, "TABLE")
            .Group(2, "STYLE")
            .Group(70, "1")
            .Group(0, "STYLE")
            .Group(2, "STANDARD")
            .Group(70, "0")
            .Group(40, "0.0")
            .Group(41, "1.0")
            .Group(50, "0.0")
            .Group(71, "0")
            .Group(42, "2.5").Group(3, "txt").Group(4, string.Empty).Group(0, "ENDTAB").Group(0, "ENDSEC");
        Group(0, "SECTION").Group(2, "ENTITIES");
        entities.Append(body);
        Group(0, "ENDSEC").Group(0, "EOF");
        return Encoding.ASCII.GetBytes(entities.ToString());
    }

    private DxfText Group(int code, string value)
    {
        entities.Append(code.ToString(CultureInfo.InvariantCulture).PadLeft(3)).Append("\r\n").Append(value).Append("\r\n");
        return this;
    }

    private void Reach(Point2 p) =>
        (minX, minY, maxX, maxY) = (Math.Min(minX, p.X), Math.Min(minY, p.Y), Math.Max(maxX, p.X), Math.Max(maxY, p.Y));

    // An arc reaches out to the sides of its circle that it passes.
    private void Reach(Point2 start, Point2 end, double turn)
    {
        ArcPiece arc = ArcPiece.Between(start, end, turn);
        double from = Math.Min(arc.StartAngle, arc.StartAngle + turn);
        double to = Math.Max(arc.StartAngle, arc.StartAngle + turn);
        for (double side = Math.Ceiling(from / (Math.PI / 2)); side * Math.PI / 2 <= to; side++)
        {
            Reach(arc.Centre + arc.Spoke((side * Math.PI / 2) - arc.StartAngle));
        }
    }

    // Twelve decimals: closed to far below a micrometre, and bulges keep their arcs.
    private static string Number(double value) => (Math.Round(value, 12) + 0.0).ToString("0.0###########", CultureInfo.InvariantCulture);
}
