using System.Text;
using System.Xml;
using FeltNest.Drawing.Lettering;

namespace FeltNest.Drawing.Writers;

/// <summary>Writes a sheet as SVG true to size: width and height in mm, one user unit a millimetre. Same sheet, same bytes.</summary>
/// <remarks>Text is drawn in strokes, so it looks the same everywhere; each line of text also carries its words as a title, for search and
/// for screen readers.</remarks>
internal static class SvgWriter
{
    // A thousandth of a millimetre is finer than anything that can be cut or printed.
    private const int Digits = 3;

    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>The file's bytes, UTF-8.</summary>
    public static byte[] Write(Sheet sheet)
    {
        using MemoryStream stream = new();
        XmlWriterSettings settings = new() { Encoding = new UTF8Encoding(false), Indent = true, IndentChars = " ", NewLineChars = "\n" };
        using (XmlWriter xml = XmlWriter.Create(stream, settings))
        {
            xml.WriteStartElement("svg", Namespace);
            xml.WriteAttributeString("width", Number(sheet.WidthMm) + "mm");
            xml.WriteAttributeString("height", Number(sheet.HeightMm) + "mm");
            xml.WriteAttributeString("viewBox", $"0 0 {Number(sheet.WidthMm)} {Number(sheet.HeightMm)}");
            xml.WriteAttributeString("role", "img");
            xml.WriteElementString("title", Namespace, Printable(sheet.Title));
            xml.WriteElementString("desc", Namespace, Printable(sheet.Description));
            Frame frame = new(xml, sheet.HeightMm);
            WriteDefinitions(frame, sheet);
            foreach (Mark mark in sheet.Marks)
            {
                Write(frame, mark);
            }

            xml.WriteEndElement();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void WritePicture(Frame frame, PictureMark mark)
    {
        XmlWriter xml = frame.Xml;
        xml.WriteStartElement("image", Namespace);
        xml.WriteAttributeString("x", Number(mark.At.MinX));
        xml.WriteAttributeString("y", Number(frame.Top - mark.At.MaxY));
        xml.WriteAttributeString("width", Number(mark.At.Width));
        xml.WriteAttributeString("height", Number(mark.At.Height));
        xml.WriteAttributeString("preserveAspectRatio", "none");
        xml.WriteAttributeString("href", "data:image/png;base64," + Convert.ToBase64String(PicturePacker.Png(mark.Picture)));
        xml.WriteEndElement();
    }

    private static void WriteDefinitions(Frame frame, Sheet sheet)
    {
        XmlWriter xml = frame.Xml;
        GroupMark[] clipped = [.. Clipped(sheet.Marks)];
        if (sheet.Symbols.Count + clipped.Length == 0)
        {
            return;
        }

        xml.WriteStartElement("defs", Namespace);
        foreach (Symbol symbol in sheet.Symbols)
        {
            xml.WriteStartElement("g", Namespace);
            xml.WriteAttributeString("id", symbol.Id);
            // A symbol has its own origin: its y is turned over about 0, not about the sheet's height.
            foreach (Mark mark in symbol.Marks)
            {
                Write(frame with { Top = 0 }, mark);
            }

            xml.WriteEndElement();
        }

        foreach (GroupMark group in clipped)
        {
            Box box = group.Clip!.Value;
            xml.WriteStartElement("clipPath", Namespace);
            xml.WriteAttributeString("id", ClipId(group));
            xml.WriteStartElement("rect", Namespace);
            xml.WriteAttributeString("x", Number(box.MinX));
            xml.WriteAttributeString("y", Number(frame.Top - box.MaxY));
            xml.WriteAttributeString("width", Number(box.Width));
            xml.WriteAttributeString("height", Number(box.Height));
            xml.WriteEndElement();
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    private static void Write(Frame frame, Mark mark)
    {
        XmlWriter xml = frame.Xml;
        switch (mark)
        {
            case PathMark path:
                WritePath(frame, path, null);
                break;
            case TextMark { Text.Length: > 0 } text:
                WritePath(frame, new PathMark(StrokeFont.Strokes(text), StrokeFont.PenOf(text.HeightMm, text.Colour)), text.Text);
                break;
            case PictureMark picture:
                WritePicture(frame, picture);
                break;
            case CopyMark copy:
                string turn = copy.AngleDeg == 0 ? string.Empty : $" rotate({Number(-copy.AngleDeg)})";
                xml.WriteStartElement("use", Namespace);
                xml.WriteAttributeString("href", "#" + copy.Symbol.Id);
                xml.WriteAttributeString("transform", $"translate({Number(copy.At.X)} {Number(frame.Top - copy.At.Y)}){turn}");
                xml.WriteEndElement();
                break;
            case GroupMark group:
                xml.WriteStartElement("g", Namespace);
                xml.WriteAttributeString("id", group.Id);
                if (group.Clip is not null)
                {
                    xml.WriteAttributeString("clip-path", $"url(#{ClipId(group)})");
                }

                foreach (Mark inner in group.Marks)
                {
                    Write(frame, inner);
                }

                xml.WriteEndElement();
                break;
        }
    }

    private static void WritePath(Frame frame, PathMark path, string? words)
    {
        XmlWriter xml = frame.Xml;
        xml.WriteStartElement("path", Namespace);
        xml.WriteAttributeString("d", string.Join(' ', path.Chains.Select(chain => SvgPath.Data(chain, frame.Top, Digits))));
        xml.WriteAttributeString("fill", path.Fill?.Hex ?? "none");
        if (path.Fill is not null && path.Chains.Count > 1)
        {
            xml.WriteAttributeString("fill-rule", "evenodd");
        }

        if (path.Pen is { } pen)
        {
            xml.WriteAttributeString("stroke", pen.Colour.Hex);
            xml.WriteAttributeString("stroke-width", Number(pen.WidthMm));
            xml.WriteAttributeString("stroke-linecap", pen.Dashes.Length > 0 ? "butt" : "round");
            xml.WriteAttributeString("stroke-linejoin", "round");
            if (pen.Dashes.Length > 0)
            {
                xml.WriteAttributeString("stroke-dasharray", string.Join(' ', pen.Dashes.Select(Number)));
            }
        }

        if (words is not null)
        {
            xml.WriteElementString("title", Namespace, Printable(words));
        }

        xml.WriteEndElement();
    }

    private static IEnumerable<GroupMark> Clipped(IEnumerable<Mark> marks) => marks.OfType<GroupMark>()
        .SelectMany(group => (group.Clip is null ? [] : new[] { group }).Concat(Clipped(group.Marks)));

    private static string ClipId(GroupMark group) => group.Id + "-clip";

    private static string Number(double value) => SvgPath.Number(value, Digits);

    // XML has no place for control characters, and a name may hold any.
    private static string Printable(string text) => string.Concat(text.Where(c => XmlConvert.IsXmlChar(c)));

    private readonly record struct Frame(XmlWriter Xml, double Top);
}
