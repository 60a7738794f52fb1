using System.Globalization;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel;

namespace FeltNest.Drawing.Strain;

/// <summary>A strain field as bands of colour, and the bar that explains them.</summary>
internal sealed class StrainMap
{
    private readonly StrainField field;
    private readonly List<Point2> nodes = [];
    private readonly List<(int, int, int)> triangles = [];

    /// <summary>A map of a field.</summary>
    public StrainMap(StrainField field)
    {
        this.field = field;
        // The pole is one node, however many samples ring 0 has.
        nodes.Add(field.At(0, 0).Place);
        for (int ring = 1; ring < field.Rings; ring++)
        {
            for (int spoke = 0; spoke < field.Spokes; spoke++)
            {
                nodes.Add(field.At(ring, spoke).Place);
            }
        }

        for (int ring = 0; ring < field.Rings - 1; ring++)
        {
            for (int spoke = 0; spoke < field.Spokes; spoke++)
            {
                int inner = Node(ring, spoke);
                int outer = Node(ring + 1, spoke);
                int far = Node(ring + 1, spoke + 1);
                int near = Node(ring, spoke + 1);
                triangles.Add((inner, outer, far));
                if (ring > 0)
                {
                    triangles.Add((inner, far, near));
                }
            }
        }
    }

    /// <summary>Bands of one of the two principal strains, moved to a place on the sheet.</summary>
    public IEnumerable<Mark> Bands(Func<StrainSample, double> pick, StrainScale scale, Point2 at)
    {
        List<Point2> places = [.. nodes.Select(p => p + at)];
        List<double> values = [pick(field.At(0, 0))];
        for (int ring = 1; ring < field.Rings; ring++)
        {
            for (int spoke = 0; spoke < field.Spokes; spoke++)
            {
                values.Add(pick(field.At(ring, spoke)));
            }
        }

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

    private int Node(int ring, int spoke) => ring == 0 ? 0 : 1 + ((ring - 1) * field.Spokes) + (spoke % field.Spokes);
}
