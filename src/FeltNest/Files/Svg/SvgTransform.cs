using FeltNest.Geometry;

namespace FeltNest.Files.Svg;

/// <summary>An affine map: x' = A x + C y + E, y' = B x + D y + F.</summary>
internal readonly record struct SvgTransform(double A, double B, double C, double D, double E, double F)
{
    /// <summary>The map that changes nothing.</summary>
    public static readonly SvgTransform Identity = new(1, 0, 0, 1, 0, 0);

    /// <summary>Image of a place.</summary>
    public Point2 Of(Point2 p) => new((A * p.X) + (C * p.Y) + E, (B * p.X) + (D * p.Y) + F);

    /// <summary>Image of a vector.</summary>
    public Point2 OfVector(Point2 v) => new((A * v.X) + (C * v.Y), (B * v.X) + (D * v.Y));

    /// <summary>The map that applies <paramref name="inner"/> first and this one after it.</summary>
    public SvgTransform After(SvgTransform inner)
    {
        Point2 x = OfVector(new Point2(inner.A, inner.B));
        Point2 y = OfVector(new Point2(inner.C, inner.D));
        Point2 origin = Of(new Point2(inner.E, inner.F));
        return new SvgTransform(x.X, x.Y, y.X, y.Y, origin.X, origin.Y);
    }

    /// <summary>The map of a transform attribute: matrix, translate, scale, rotate, skewX, skewY, applied as the standard says.</summary>
    public static SvgTransform Parse(SvgCursor text)
    {
        SvgTransform all = Identity;
        while (!text.AtEnd)
        {
            int at = text.At;
            string name = text.Word();
            text.Expect('(');
            List<double> n = [];
            while (!text.Take(')'))
            {
                n.Add(text.Number());
            }

            all = all.After((name, n.Count) switch
            {
                ("matrix", 6) => new SvgTransform(n[0], n[1], n[2], n[3], n[4], n[5]),
                ("translate", 1) => Identity with { E = n[0] },
                ("translate", 2) => Identity with { E = n[0], F = n[1] },
                ("scale", 1) => new SvgTransform(n[0], 0, 0, n[0], 0, 0),
                ("scale", 2) => new SvgTransform(n[0], 0, 0, n[1], 0, 0),
                ("rotate", 1) => Rotation(n[0], 0, 0),
                ("rotate", 3) => Rotation(n[0], n[1], n[2]),
                ("skewX", 1) => Identity with { C = Math.Tan(n[0] * Math.PI / 180) },
                ("skewY", 1) => Identity with { B = Math.Tan(n[0] * Math.PI / 180) },
                _ => throw text.Fault(
                    at,
                    $"'{OneLine.Of(name)}' with {n.Count} numbers is no transform: matrix(6), translate(1 or 2), scale(1 or 2), "
                        + $"rotate(1 or 3), skewX(1), skewY(1)"),
            });
        }

        return all;
    }

    private static SvgTransform Rotation(double degrees, double x, double y)
    {
        (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
        return new SvgTransform(cos, sin, -sin, cos, x - (cos * x) + (sin * y), y - (sin * x) - (cos * y));
    }
}
