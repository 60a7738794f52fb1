using System.Globalization;
using System.Xml.Linq;

namespace FeltNest.Files.Svg;

/// <summary>Finds how many millimetres a user unit of an SVG drawing is, from width, height and viewBox.</summary>
/// <remarks>Follows W3C, <i>Scalable Vector Graphics (SVG) 2</i>, chapter 8: a length without a unit is in CSS pixels, 96 to the inch; the
/// picture is scaled evenly so that it fits both ways.</remarks>
internal static class SvgScale
{
    private const double PerPixel = 25.4 / 96;

    // Width and height that differ in scale by more than this share are no rounding: the drawing would be squeezed.
    private const double Squeeze = 0.01;

    private static readonly (string Unit, double Millimetres)[] Units =
        [("mm", 1), ("cm", 10), ("in", 25.4), ("pt", 25.4 / 72), ("pc", 25.4 / 6), ("Q", 0.25), ("px", PerPixel), ("", PerPixel)];

    // Long because it weighs width, height and view box of a drawing in one chain of cases.
    /// <summary>Millimetres a user unit; how that was found is added to the notes.</summary>
    /// <exception cref="InputException">A length or viewBox that cannot be read, or width and height that contradict each
    /// other.</exception>
    public static double Of(string file, XElement root, List<string> notes)
    {
        (double Mm, bool Given)? width = Length(file, root, "width");
        (double Mm, bool Given)? height = Length(file, root, "height");
        if (Text(root, "viewBox") is not { } text)
        {
            notes.Add(
                string.Create(
                    CultureInfo.InvariantCulture, $"no viewBox: a user unit is a CSS pixel, 96 to the inch ({PerPixel:0.######} mm)"));
            return PerPixel;
        }

        SvgCursor cursor = new(file, "<svg> viewBox", text);
        _ = (cursor.Number(), cursor.Number());
        double wide = cursor.Number();
        double high = cursor.Number();
        if (!(wide > 0) || !(high > 0) || !cursor.AtEnd)
        {
            throw new InputException(file, "<svg> viewBox", $"'{OneLine.Of(text)}' is not allowed: four numbers, width and height above 0");
        }

        if (width is null && height is null)
        {
            notes.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"no width and height: a user unit is taken as a CSS pixel, 96 to the inch ({PerPixel:0.######} mm)"));
            return PerPixel;
        }

        double across = width?.Mm / wide ?? height!.Value.Mm / high;
        double up = height?.Mm / high ?? across;
        if (Math.Abs(across - up) > Squeeze * Math.Max(across, up))
        {
            throw new InputException(file, "<svg>", string.Create(
                CultureInfo.InvariantCulture,
                $"width gives {across:0.######} mm a unit of the viewBox, height {up:0.######}: make them agree"));
        }

        double scale = Math.Min(across, up);
        string assumed =
            (width ?? height)!.Value.Given ? string.Empty : "; width and height have no unit of length: CSS pixels, 96 to the inch";
        notes.Add(string.Create(CultureInfo.InvariantCulture, $"a user unit is {scale:0.######} mm by width, height and viewBox{assumed}"));
        return scale;
    }

    /// <summary>The value of an attribute without a namespace, or null.</summary>
    public static string? Text(XElement element, string name) => element.Attribute(name)?.Value;

    private static (double Mm, bool Given)? Length(string file, XElement root, string name)
    {
        string? text = Text(root, name)?.Trim();
        if (text is null || text.EndsWith('%') || text == "auto")
        {
            return null;
        }

        SvgCursor cursor = new(file, $"<svg> {name}", text);
        double value = cursor.Number();
        string unit = cursor.Word();
        int found = Array.FindIndex(Units, u => u.Unit == unit);
        if (found < 0 || !cursor.AtEnd || !(value > 0))
        {
            throw new InputException(
                file, $"<svg> {name}", $"'{OneLine.Of(text)}' is not allowed: a length above 0 in mm, cm, in, pt, pc, Q or px");
        }

        return (value * Units[found].Millimetres, unit is not ("" or "px"));
    }
}
