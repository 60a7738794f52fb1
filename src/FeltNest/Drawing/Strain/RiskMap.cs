using System.Globalization;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel;

namespace FeltNest.Drawing.Strain;

/// <summary>Where felt may pucker: its compression as a share of a limit, in four bands, and the key that explains them.</summary>
internal static class RiskMap
{
    // Shares of the limit, per cent, at which the bands begin; the last one is past it. Lightness falls from band to band, for grey prints.
    private static readonly (double From, string Words, Colour Colour)[] BandTable =
    [
        (double.NegativeInfinity, "below half of the limit", Colour.FromOkLab(0.97, 0, 0.01)),
        (50, "50 to 75 % of it", Colour.FromOkLab(0.9, 0.005, 0.06)),
        (75, "75 to 100 % of it", Colour.FromOkLab(0.8, 0.03, 0.11)),
        (100, "ABOVE THE LIMIT", Colour.FromOkLab(0.5, 0.15, 0.07)),
    ];

    /// <summary>The bands on the flat panel.</summary>
    /// <param name="mesh">The strain.</param>
    /// <param name="limitPercent">The limit of compression, above 0.</param>
    /// <param name="factor">Size on the sheet.</param>
    /// <param name="at">Place of the panel's origin on the sheet.</param>
    public static IEnumerable<Mark> Bands(StrainMesh mesh, double limitPercent, double factor, Point2 at)
    {
        Point2[] places = [.. mesh.Nodes.Select(node => (node.Place * factor) + at)];
        double[] shares = [.. mesh.Nodes.Select(node => ShareOf(node, limitPercent))];
        foreach ((double from, _, Colour colour) in BandTable)
        {
            IReadOnlyList<Chain> rings = LevelRegion.Rings(places, shares, mesh.Triangles, from);
            if (rings.Count > 0)
            {
                yield return new PathMark(rings, null, colour);
            }
        }
    }

    /// <summary>The key, its upper left corner at a place.</summary>
    public static IEnumerable<Mark> Key(Point2 at)
    {
        const double step = 5.5;
        const double box = 3.5;
        for (int band = 0; band < BandTable.Length; band++)
        {
            double y = at.Y - ((band + 1) * step);
            yield return new PathMark(
                [Chain.Rectangle(new Box { MinX = at.X, MinY = y, MaxX = at.X + (2 * box), MaxY = y + box })], Ink.Narrow,
                BandTable[band].Colour);
            yield return new TextMark
            {
                Text = BandTable[band].Words,
                At = new Point2(at.X + (2 * box) + 3, y + 0.5),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
            };
        }
    }

    /// <summary>What the map's title says.</summary>
    public static string Title(double limitPercent, bool isOfEdge)
    {
        string whose = isOfEdge ? " (the limit of the edge)" : string.Empty;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Risk of puckers: compression of the neutral layer against {limitPercent:0.##} %{whose}; most at the square");
    }

    // The place at exactly the limit keeps it.
    private static double ShareOf(StrainSample node, double limitPercent)
    {
        double share = 100 * Math.Max(0, -node.MinorPercent) / limitPercent;
        return share == 100 ? Math.BitDecrement(share) : share;
    }
}
