using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;

namespace FeltNest.Files.Svg;

/// <summary>Reads the closed loops of an SVG drawing, in mm, as it looks on the screen. Nothing outside the file is ever fetched and
/// nothing in it is run.</summary>
internal sealed class SvgOutline
{
    // Groups nested deeper than this are no drawing of a part.
    private const int MostDepth = 64;

    // Elements that draw nothing themselves, whatever they hold.
    private static readonly string[] Silent = ["defs", "title", "desc", "metadata", "style"];

    private readonly string file;
    private readonly List<OpenChain> runs = [];
    private bool chorded;
    private int chords;

    private SvgOutline(string file) => this.file = file;

    /// <summary>The outline of a file with what was assumed and healed.</summary>
    /// <exception cref="InputException">Not XML, document types, entities, scripts, references to other files, or not one closed loop;
    /// names the element and the place.</exception>
    public static ImportedOutline Read(InputText text)
    {
        List<string> notes = [];
        return DrawnOutline.Of(text.Name, LoopJoiner.Join(text.Name, Runs(text, notes), notes), notes);
    }

    /// <summary>Every loop of a file.</summary>
    /// <exception cref="InputException">As for one loop.</exception>
    public static IReadOnlyList<IReadOnlyList<ArcVertex>> ReadAll(InputText text, List<string> notes) =>
        LoopJoiner.JoinAll(text.Name, Runs(text, notes), notes);

    private static List<OpenChain> Runs(InputText text, List<string> notes)
    {
        string path = text.Name;
        XElement root = Load(text);
        if (root.Name.LocalName != "svg")
        {
            throw new InputException(path, null, $"begins with <{OneLine.Of(root.Name.LocalName)}> where <svg> is wanted");
        }

        double scale = SvgScale.Of(path, root, notes);
        SvgOutline reader = new(path);

        // y runs down in SVG and up here: turned over once, the part looks as it does on the screen.
        reader.Visit(root, new SvgTransform(scale, 0, 0, -scale, 0, 0), 0);
        if (reader.chorded)
        {
            notes.Add(
                string.Create(CultureInfo.InvariantCulture, $"curves that are no circles became chords within {SvgPen.ChordTolerance} mm"));
        }

        return reader.runs;
    }

    private static XElement Load(InputText text)
    {
        string path = text.Name;
        using MemoryStream bytes = new(text.Bytes.ToArray());
        XmlReaderSettings strict = new()
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            MaxCharactersFromEntities = 1,
            CloseInput = false,
        };
        try
        {
            RequireShallow(path, bytes, strict);
            using XmlReader reader = XmlReader.Create(bytes, strict);
            return XDocument.Load(reader, LoadOptions.SetLineInfo).Root!;
        }
        catch (XmlException error)
        {
            string place = $"line {error.LineNumber}, column {error.LinePosition}";
            bool typed = error.Message.Contains("DTD", StringComparison.Ordinal);
            throw new InputException(
                path, null,
                typed ? $"has a document type at {place}: document types and entities are refused" : $"is not sound XML at {place}", error);
        }
    }

    // Before anything is built: the time to build grows with the square of the depth.
    private static void RequireShallow(string path, MemoryStream bytes, XmlReaderSettings strict)
    {
        using XmlReader reader = XmlReader.Create(bytes, strict);
        while (reader.Read())
        {
            if (reader.Depth > MostDepth)
            {
                throw new InputException(
                    path, $"line {((IXmlLineInfo)reader).LineNumber}, <{OneLine.Of(reader.LocalName)}>",
                    $"is nested more than {MostDepth} deep");
            }
        }

        bytes.Position = 0;
    }

    // Long because it has one case for each element that may stand in a drawing.
    private void Visit(XElement element, SvgTransform outer, int depth)
    {
        string name = element.Name.LocalName;
        string place = Place(element);
        RefuseOutside(element, place);
        if (Array.IndexOf(Silent, name) >= 0
            || SvgScale.Text(element, "display") == "none"
            || (element.Name.NamespaceName.Length > 0 && element.Name.Namespace != element.Document!.Root!.Name.Namespace))
        {
            return;
        }

        SvgTransform map = SvgScale.Text(element, "transform") is { } text
            ? outer.After(SvgTransform.Parse(new SvgCursor(file, $"{place} transform", text)))
            : outer;
        if (SvgScale.Text(element, "style")?.Contains("transform", StringComparison.Ordinal) == true)
        {
            throw new InputException(file, $"{place} style", "moves the shape by a style: write it as a transform attribute");
        }

        if (Array.IndexOf(SvgShapes.Names, name) >= 0)
        {
            SvgPen pen = new(map);
            SvgShapes.Draw(file, place, element, pen);
            runs.AddRange(pen.Runs);
            chorded |= pen.Chorded;
            chords += pen.Chords;
            if (chords > SvgPen.MostChords)
            {
                throw new InputException(
                    file, place, $"is where the curves of the drawing come to more than {SvgPen.MostChords} chords: is the scale right?");
            }
        }
        else if (name is "g" or "a" || depth == 0)
        {
            foreach (XElement inner in element.Elements())
            {
                Visit(inner, map, depth + 1);
            }
        }
        else
        {
            throw new InputException(
                file, place,
                $"cannot be part of an outline: leave only {string.Join(", ", SvgShapes.Names)} and groups of them in the file");
        }
    }

    private void RefuseOutside(XElement element, string place)
    {
        if (element.Name.LocalName == "script"
            || element.Attributes().Any(a => a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)))
        {
            throw new InputException(file, place, "holds a script: scripts are refused");
        }

        foreach (XElement each in Array.IndexOf(Silent, element.Name.LocalName) >= 0 ? element.DescendantsAndSelf() : [element])
        {
            bool linked = each.Attributes().Any(a => a.Name.LocalName is "href" or "src" && !a.Value.TrimStart().StartsWith('#'));
            string texts = each.HasElements ? string.Empty : each.Value;
            bool fetched = texts.Contains("@import", StringComparison.OrdinalIgnoreCase)
                || each.Attributes().Select(a => a.Value).Append(each.Name.LocalName == "style" ? texts : string.Empty).Any(PointsOutside);
            if (linked || fetched || each.Name.LocalName == "script")
            {
                throw new InputException(
                    file, Place(each),
                    each.Name.LocalName == "script"
                        ? "holds a script: scripts are refused"
                        : "refers to something outside the file: nothing is fetched, such files are refused");
            }
        }
    }

    // url(...) is sound only when it names a place of this same file.
    private static bool PointsOutside(string text)
    {
        int at = text.IndexOf("url(", StringComparison.OrdinalIgnoreCase);
        return at >= 0 && !text[(at + 4)..].TrimStart(' ', '\'', '"').StartsWith('#');
    }

    private static string Place(XElement element)
    {
        string id = SvgScale.Text(element, "id") is { } named ? $" id '{OneLine.Of(named)}'" : string.Empty;
        return $"line {((IXmlLineInfo)element).LineNumber}, <{OneLine.Of(element.Name.LocalName)}>{id}";
    }
}
