using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;

namespace FeltNest.Benchmarks;

/// <summary>Filleted dog bones of a given count of points, about 168 x 51 mm.</summary>
internal static class DogBones
{
    internal static Outline Make(int points)
    {
        const double d = 2.3;
        const double w = 0.7;
        const double scale = 25.4;
        double fillet = ((d * d) + (w * w) - 1) / (2 * (1 - w));
        double x = d * fillet / (1 + fillet);
        double y = (w + fillet) / (1 + fillet);
        double head = Math.Atan2(y, x - d);
        double side = Math.Atan2(y - w - fillet, x);
        int onHead = points / 3;
        int onFillet = (points / 2) - onHead;
        IEnumerable<Point2> half = Enumerable.Range(0, onHead)
            .Select(i => head * ((2.0 * i / (onHead - 1)) - 1)).Select(t => new Point2(d + Math.Cos(t), Math.Sin(t)))
            .Concat(Enumerable.Range(1, onFillet).Select(i => side + ((-Math.PI - (2 * side)) * i / (onFillet + 1)))
                .Select(t => new Point2(fillet * Math.Cos(t), w + fillet + (fillet * Math.Sin(t)))));
        return Outline.From(half.Select(p => p * scale).Concat(half.Select(p => p * -scale)));
    }

    /// <summary>A dog bone on a roll: edges 15 mm, gap 4 mm, free warp angle, all panels parallel.</summary>
    internal static LayoutRequest Request(int points, double width, int effort) =>
        new()
        {
            Part = new LayoutPart
            {
                Name = "bone",
                Ball = null,
                Outline = Make(points),
                Arcs = null,
                MassPerAreaGsm = null,
                WarpAngleDeg = null,
            },
            RollWidthMm = width,
            Trims = EdgeTrims.Both(15),
            GapMm = 4,
            Rules = new LayoutRules(null, 0, RowRule.Same, false),
            Effort = effort,
            Seed = 1,
        };
}
