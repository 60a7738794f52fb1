using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Layout;

/// <summary>Shapes with known packings, and requests for them.</summary>
internal static class Shapes
{
    internal static LayoutPart Part(Outline outline) => new()
    {
        Name = "test",
        Ball = null,
        Outline = outline,
        Arcs = null,
        MassPerAreaGsm = null,
        WarpAngleDeg = null,
    };

    internal static LayoutRequest Request(
        Outline outline, double width, double gap = 0, double edge = 0, RowRule rows = RowRule.Same, double? warp = null,
        bool oneWay = false, int effort = 1) =>
        new()
        {
            Part = Part(outline),
            RollWidthMm = width,
            Trims = EdgeTrims.Both(edge),
            GapMm = gap,
            Rules = new LayoutRules(warp, 0, rows, oneWay),
            Effort = effort,
            Seed = 1,
        };

    /// <summary>What stands for the search of a layout that no search made.</summary>
    internal static SearchRecord ByHand(double leastGapMm) => new()
    {
        Seed = 1,
        Effort = 1,
        CutShort = false,
        Method = "by hand",
        ProvedOnGrid = null,
        PlaneUtilisationPercent = 0,
        LeastGapMm = leastGapMm,
        FreerRowsPanelsPerMetre = null,
    };

    internal static RollLayout Lay(LayoutRequest request) => LayoutSearch.Run(request, null, TestContext.Current.CancellationToken);

    internal static Outline Polygon(int corners, double circumradius) =>
        Outline.From(Enumerable.Range(0, corners).Select(i => new Point2(circumradius, 0).Turned(2 * Math.PI * (i + 0.5) / corners)));

    /// <summary>Two unit discs at (+-d, 0) joined by tangent fillets with waist half-width w, times a scale.</summary>
    internal static Outline DogBone(double d, double w, int steps, double scale)
    {
        double fillet = ((d * d) + (w * w) - 1) / (2 * (1 - w));
        double x = d * fillet / (1 + fillet);
        double y = (w + fillet) / (1 + fillet);
        double head = Math.Atan2(y, x - d);
        double side = Math.Atan2(y - w - fillet, x);
        List<Point2> half = [];
        for (int i = 0; i <= steps; i++)
        {
            double t = head * ((2.0 * i / steps) - 1);
            half.Add(new(d + Math.Cos(t), Math.Sin(t)));
        }

        for (int i = 1; i < steps; i++)
        {
            double t = side + (((-Math.PI - side) - side) * i / steps);
            half.Add(new(fillet * Math.Cos(t), w + fillet + (fillet * Math.Sin(t))));
        }

        return Outline.From([.. half.Select(p => p * scale), .. half.Select(p => p * -scale)]);
    }

    /// <summary>Union of two unit discs at (+-d, 0), times a scale.</summary>
    internal static Outline FusedDiscs(double d, int steps, double scale)
    {
        double head = Math.PI - Math.Acos(d);
        IEnumerable<Point2> right =
            Enumerable.Range(0, steps).Select(i => head * ((2.0 * i / steps) - 1)).Select(t => new Point2(d + Math.Cos(t), Math.Sin(t)));
        return Outline.From([.. right.Select(p => p * scale), .. right.Select(p => p * -scale)]);
    }

    internal static Outline Cross(double arm, double scale) => Outline.From(
        new Point2[]
        {
            new(arm, -1),
            new(arm, -arm),
            new(1, -arm),
            new(1, arm),
            new(arm, arm),
            new(arm, 1),
            new(-arm, 1),
            new(-arm, arm),
            new(-1, arm),
            new(-1, -arm),
            new(-arm, -arm),
            new(-arm, -1),
        }
            .Select(p => p * scale));

    internal static Outline Of(double scale, params double[] xy) =>
        Outline.From(xy.Chunk(2).Select(p => new Point2(p[0], p[1]) * scale)).Centred();
}
