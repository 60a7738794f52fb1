using System.Globalization;
using FeltNest.Drawing.Parts;
using FeltNest.Drawing.Strain;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Thickness;

namespace FeltNest.Drawing.Sheets;

/// <summary>Small maps for a panel sheet: strain of the felt's faces and middle, and the risk of puckers.</summary>
internal sealed class LayerMaps
{
    private const double LayerSize = 1 / 3.0;
    private const double RiskSize = 0.5;
    private const double TitleRoom = 6;
    private const double CaptionRoom = 5;
    private const double Gap = 3;
    private const double BarRoom = 17;
    private const double LeastKey = 24;

    private readonly FlatPanel panel;
    private readonly ThroughThickness through;
    private readonly StrainMesh mesh;
    private readonly StrainScale scale;
    private readonly double high;
    private readonly double margin;

    /// <summary>Maps of a panel.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="mesh">Its strain.</param>
    /// <param name="through">What its thickness adds.</param>
    /// <param name="margin">Margin of the sheet, mm.</param>
    public LayerMaps(FlatPanel panel, StrainMesh mesh, ThroughThickness through, double margin)
    {
        (this.panel, this.mesh, this.through, this.margin) = (panel, mesh, through, margin);
        high = panel.Outline.MaxY - panel.Outline.MinY;
        scale = StrainScale.Reaching(through.Layers.Max(layer => panel.Field.Samples.Max(sample =>
            Math.Max(Math.Abs(layer.PercentOf(sample.MajorPercent)), Math.Abs(layer.PercentOf(sample.MinorPercent))))));
    }

    /// <summary>Height of the maps of the layers, mm.</summary>
    public double LayerHeight => TitleRoom + (2 * ((high * LayerSize) + CaptionRoom + Gap)) + BarRoom;

    /// <summary>Height of the map of risk, mm.</summary>
    public double RiskHeight => TitleRoom + (through.PuckerLimitPercent > 0 ? Math.Max(LeastKey, (high * RiskSize) + Gap) : 0);

    /// <summary>Two rows of three maps and their bar.</summary>
    /// <param name="top">Upper end of the room on the sheet, mm.</param>
    /// <param name="width">Width of the sheet, mm.</param>
    public IEnumerable<Mark> Layers(double top, double width)
    {
        yield return Words(
            "Through the felt's thickness, a third of the size: greater principal strain above, lesser below", width / 2, top);
        double row = (high * LayerSize) + CaptionRoom + Gap;
        for (int i = 0; i < through.Layers.Count; i++)
        {
            double x = margin + ((width - (2 * margin)) * (i + 0.5) / through.Layers.Count);
            foreach (Mark mark in
                (Mark[])[
                    .. Layer(through.Layers[i], sample => sample.MajorPercent, new Point2(x, top - TitleRoom)),
                    .. Layer(through.Layers[i], sample => sample.MinorPercent, new Point2(x, top - TitleRoom - row)),
                ])
            {
                yield return mark;
            }
        }

        const double bar = 150;
        foreach (Mark mark in StrainMap.Bar(scale, new Point2((width - bar) / 2, top - TitleRoom - (2 * row) - 9), bar))
        {
            yield return mark;
        }
    }

    /// <summary>The map of risk with its key; only words where the felt has no limit.</summary>
    /// <param name="top">Upper end of the room on the sheet, mm.</param>
    /// <param name="width">Width of the sheet, mm.</param>
    public IEnumerable<Mark> Risk(double top, double width)
    {
        if (through.PuckerLimitPercent is not > 0)
        {
            yield return Words("Risk of puckers: the ball file gives no limit of compression", width / 2, top);
            yield break;
        }

        double limit = through.PuckerLimitPercent.Value;
        yield return Words(RiskMap.Title(limit, !through.HasOwnPuckerLimit), width / 2, top);
        const double key = 55;
        double length = (panel.Outline.MaxX - panel.Outline.MinX) * RiskSize;
        double left = (width - length - key) / 2;
        Point2 at = new(left - (panel.Outline.MinX * RiskSize), top - TitleRoom - (panel.Outline.MaxY * RiskSize));
        foreach (Mark mark in RiskMap.Bands(mesh, limit, RiskSize, at))
        {
            yield return mark;
        }

        yield return new PathMark([Edge(RiskSize, at)], Ink.Narrow);
        const double half = 1.1;
        Point2 most = (mesh.Nodes.MinBy(node => node.MinorPercent).Place * RiskSize) + at;
        Box box = new() { MinX = most.X - half, MinY = most.Y - half, MaxX = most.X + half, MaxY = most.Y + half };
        yield return new PathMark([Chain.Rectangle(box)], new Pen(0.3, Ink.Dark), Ink.Cloth);
        foreach (Mark mark in RiskMap.Key(new Point2(left + length + 8, top - TitleRoom)))
        {
            yield return mark;
        }
    }

    private IEnumerable<Mark> Layer(FeltLayer layer, Func<StrainSample, double> pick, Point2 top)
    {
        double[] values = [.. mesh.Nodes.Select(node => layer.PercentOf(pick(node)))];
        string range = string.Create(
            CultureInfo.InvariantCulture,
            $"{LayerWords.Of(layer.Name)}: {values.Min():+0.0;-0.0;0.0} to {values.Max():+0.0;-0.0;0.0} %");
        yield return Words(range, top.X, top.Y);
        Point2 at = new(top.X, top.Y - CaptionRoom - (panel.Outline.MaxY * LayerSize));
        Point2[] places = [.. mesh.Nodes.Select(node => (node.Place * LayerSize) + at)];
        foreach (Mark band in StrainMap.Bands(places, values, mesh.Triangles, scale))
        {
            yield return band;
        }

        yield return new PathMark([Edge(LayerSize, at)], Ink.Narrow);
    }

    private Chain Edge(double factor, Point2 at) => new Chain(panel.Arcs.Vertices, true).Placed(factor, 0, at);

    private static TextMark Words(string text, double x, double top) => new()
    {
        Text = text,
        At = new Point2(x, top - Ink.Note - 1),
        HeightMm = Ink.Note,
        Colour = Ink.Dark,
        Anchor = TextAnchor.Middle,
    };
}
