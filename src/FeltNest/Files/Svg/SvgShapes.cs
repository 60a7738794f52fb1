using System.Xml.Linq;
using FeltNest.Geometry;

namespace FeltNest.Files.Svg;

/// <summary>Draws one shape element of SVG: path, polygon, polyline, line, rect, circle, ellipse.</summary>
internal static class SvgShapes
{
    /// <summary>Names of the elements that can be drawn.</summary>
    public static readonly string[] Names = ["path", "polygon", "polyline", "line", "rect", "circle", "ellipse"];

    /// <summary>Draws the element.</summary>
    /// <param name="file">Named in errors.</param>
    /// <param name="place">The element as errors name it.</param>
    /// <param name="element">The element.</param>
    /// <param name="pen">What draws.</param>
    /// <exception cref="InputException">An attribute that cannot be read.</exception>
    public static void Draw(string file, string place, XElement element, SvgPen pen)
    {
        Attributes given = new() { File = file, Element = place, Shape = element };
        switch (element.Name.LocalName)
        {
            case "path":
                SvgPathData.Draw(given.Cursor("d"), pen);
                break;
            case "polygon" or "polyline":
                Corners(given.Cursor("points"), pen, element.Name.LocalName == "polygon");
                break;
            case "line":
                pen.Move(given.Place("x1", "y1"));
                pen.Line(given.Place("x2", "y2"));
                break;
            case "rect":
                Rectangle(
                    given.Place("x", "y"), given.Size("width"), given.Size("height"), given.Corner("rx", "ry"), given.Corner("ry", "rx"),
                    pen);
                break;
            case "circle":
                Round(given.Place("cx", "cy"), given.Size("r"), given.Size("r"), pen);
                break;
            default:
                Round(given.Place("cx", "cy"), given.Size("rx"), given.Size("ry"), pen);
                break;
        }
    }

    private static void Corners(SvgCursor text, SvgPen pen, bool close)
    {
        pen.Move(new Point2(text.Number(), text.Number()));
        while (!text.AtEnd)
        {
            pen.Line(new Point2(text.Number(), text.Number()));
        }

        if (close)
        {
            pen.Close();
        }
    }

    private static void Round(Point2 centre, double rx, double ry, SvgPen pen)
    {
        Point2 u = new(rx, 0);
        Point2 v = new(0, ry);
        pen.Move(centre + u);
        pen.Ellipse(centre, u, v, 0, Math.PI, centre - u);
        pen.Ellipse(centre, u, v, Math.PI, Math.PI, centre + u);
        pen.Close();
    }

    private static void Rectangle(Point2 low, double width, double height, double rx, double ry, SvgPen pen)
    {
        (rx, ry) = (Math.Clamp(rx, 0, width / 2), Math.Clamp(ry, 0, height / 2));
        Point2 high = low + new Point2(width, height);
        Point2 u = new(rx, 0);
        Point2 v = new(0, ry);
        Point2[] corners = [new(high.X, low.Y), high, new(low.X, high.Y), low];
        Point2[] ahead = [u, v, u * -1, v * -1];
        pen.Move(low + u);
        for (int i = 0; i < corners.Length; i++)
        {
            Point2 next = ahead[(i + 1) % 4];
            pen.Line(corners[i] - ahead[i]);
            if (rx > 0 && ry > 0)
            {
                double from = (i - 1) * Math.PI / 2;
                pen.Ellipse(corners[i] - ahead[i] + next, u, v, from, Math.PI / 2, corners[i] + next);
            }
        }

        pen.Close();
    }

    // The attributes of one element; an attribute that cannot be read is named in the error.
    private sealed record Attributes
    {
        public required string File { get; init; }

        public required string Element { get; init; }

        public required XElement Shape { get; init; }

        public SvgCursor Cursor(string name) =>
            new(
                File, $"{Element} {name}",
                SvgScale.Text(Shape, name) ?? throw new InputException(File, $"{Element} {name}", "is missing"));

        public Point2 Place(string x, string y) => new(Number(x), Number(y));

        public double Size(string name)
        {
            double value = Number(name);
            return value > 0 ? value : throw new InputException(File, $"{Element} {name}", "a number above 0 is wanted");
        }

        // A radius that is not given, or auto, follows the other one.
        public double Corner(string name, string other)
        {
            if (Given(name))
            {
                return Number(name);
            }

            if (Given(other))
            {
                return Number(other);
            }

            return 0;
        }

        private bool Given(string name) => SvgScale.Text(Shape, name) is not (null or "auto");

        private double Number(string name)
        {
            if (SvgScale.Text(Shape, name) is null)
            {
                return 0;
            }

            SvgCursor cursor = Cursor(name);
            double value = cursor.Number();
            string unit = cursor.Word();
            return unit is "" or "px" && cursor.AtEnd
                ? value
                : throw cursor.Fault(0, "a number in user units is wanted, without a unit of its own");
        }
    }
}
