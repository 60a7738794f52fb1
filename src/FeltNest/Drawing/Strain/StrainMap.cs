using System.Globalization;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel;

namespace FeltNest.Drawing.Strain;

/// <summary>A strain field as bands of colour, and the bar that explains them.</summary>
internal static class StrainMap
{
    /// <summary>Bands of one of the two principal strains on the flat panel, moved to a place on the sheet.</summary>
    public static IEnumerable<Mark> Bands(StrainMesh mesh, Func<StrainSample, double> pick, StrainScale scale, Point2 at) =>
        Bands([.. mesh.Nodes.Select(node => node.Place + at)], [.. mesh.Nodes.Select(pick)], mesh.Triangles, scale);

    /// <summary>Bands of values.</summary>
    /// <param name="places">Places of the nodes on the sheet.</param>
    /// <param name="values">Values at the nodes.</param>
    /// <param name="triangles">Triangles by their nodes.</param>
    /// <param name="scale">Its colours.</param>
    public static IEnumerable<Mark> Bands(
        IReadOnlyList<Point2> places, IReadOnlyList<double> values, IReadOnlyList<(int A, int B, int C)> triangles, StrainScale scale)
    {
        // From the lowest band up, each region over the one before: neighbours share an edge without a seam between them.
        for (int band = -scale.Bands; band < scale.Bands; band++)
        {
            double level = band == -scale.Bands ? double.NegativeInfinity : band * scale.Step;
            IReadOnlyList<Chain> rings = LevelRegion.Rings(places, values, triangles, level);
            if (rings.Count > 0)
            {
                yield return new PathMark(rings, null, scale.OfBand(band));
            }
        }
    }

    // Long because it lists the marks of one scale bar in the order they are drawn.
    /// <summary>The bar of a scale with its numbers, left lower corner at a place.</summary>
    public static IEnumerable<Mark> Bar(StrainScale scale, Point2 at, double width)
    {
        const double height = 5;
        double step = width / (2 * scale.Bands);
        for (int band = -scale.Bands; band < scale.Bands; band++)
        {
            double x = at.X + ((band + scale.Bands) * step);
            yield return new PathMark(
                [Chain.Rectangle(new Box { MinX = x, MinY = at.Y, MaxX = x + step, MaxY = at.Y + height })], null, scale.OfBand(band));
        }

        yield return new PathMark(
            [Chain.Rectangle(new Box { MinX = at.X, MinY = at.Y, MaxX = at.X + width, MaxY = at.Y + height })], Ink.Narrow);
        for (int edge = -scale.Bands; edge <= scale.Bands; edge++)
        {
            double x = at.X + ((edge + scale.Bands) * step);
            yield return new PathMark([Chain.Open(new Point2(x, at.Y), new Point2(x, at.Y - 1.2))], Ink.Narrow);
            string number = (edge * scale.Step).ToString("+0.##;-0.##;0", CultureInfo.InvariantCulture);
            yield return new TextMark
            {
                Text = number,
                At = new Point2(x, at.Y - 5),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
                Anchor = TextAnchor.Middle,
            };
        }

        yield return new TextMark
        {
            Text = "compressed",
            At = new Point2(at.X, at.Y + height + 1.5),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        };
        yield return new TextMark
        {
            Text = "stretched",
            At = new Point2(at.X + width, at.Y + height + 1.5),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
            Anchor = TextAnchor.End,
        };
        yield return new TextMark
        {
            Text = "per cent of flat length",
            At = new Point2(at.X + (width / 2), at.Y + height + 1.5),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
            Anchor = TextAnchor.Middle,
        };
    }
}
