using System.Globalization;
using System.Text;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Writers;

/// <summary>Lines and arcs in the words of an SVG path, y downward.</summary>
internal static class SvgPath
{
    /// <summary>A chain of a sheet, mm, y upward.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="top">Height of the sheet, mm.</param>
    /// <param name="digits">Digits behind the point.</param>
    public static string Data(Chain chain, double top, int digits)
    {
        StringBuilder data = new();
        IReadOnlyList<ArcVertex> vertices = chain.Vertices;
        data.Append('M').Append(Place(vertices[0].Point));
        int pieces = chain.Closed ? vertices.Count : vertices.Count - 1;
        for (int i = 0; i < pieces; i++)
        {
            ArcVertex from = vertices[i];
            Point2 to = vertices[(i + 1) % vertices.Count].Point;
            if (from.Turn != 0)
            {
                string radius = Number((to - from.Point).Length / (2 * Math.Abs(Math.Sin(from.Turn / 2))), digits);
                data.Append('A').Append(radius).Append(' ').Append(radius).Append(" 0 ")
                    .Append(Math.Abs(from.Turn) > Math.PI ? '1' : '0')
                    .Append(' ')
                    .Append(from.Turn > 0 ? '0' : '1')
                    .Append(' ')
                    .Append(Place(to));
            }
            else if (i < vertices.Count - 1)
            {
                data.Append('L').Append(Place(to));
            }
        }

        return chain.Closed ? data.Append('Z').ToString() : data.ToString();

        string Place(Point2 p) => $"{Number(p.X, digits)} {Number(top - p.Y, digits)}";
    }

    /// <summary>A number with no more digits than asked; adding zero turns -0 into 0.</summary>
    public static string Number(double value, int digits) =>
        (Math.Round(value, digits) + 0.0).ToString(digits == 2 ? "0.##" : "0.###", CultureInfo.InvariantCulture);
}
