using System.Xml;

namespace FeltNest.Files.Csv;

/// <summary>Copies the cells of a sheet so that none is lost: the reader of workbooks gives blank where a formula failed or was never
/// worked out. Here such a cell gets a text that says so.</summary>
internal static class WorkbookSheetPart
{
    /// <summary>What a cell holds whose formula was never worked out.</summary>
    public const string NeverWorkedOut = "#NO VALUE";

    private const string Cell = "c";

    /// <summary>Copies a sheet.</summary>
    /// <exception cref="XmlException">It is damaged, or names a document type.</exception>
    public static void Copy(Stream from, Stream to)
    {
        using XmlReader reader = XmlReader.Create(from);
        using XmlWriter writer = XmlWriter.Create(to);
        (bool formula, bool value) = (false, false);
        while (reader.Read())
        {
            if (reader.NodeType == XmlNodeType.EndElement && reader.LocalName == Cell && formula && !value)
            {
                writer.WriteElementString("v", reader.NamespaceURI, NeverWorkedOut);
            }

            if (reader.NodeType == XmlNodeType.Element)
            {
                formula = reader.LocalName == "f" || (formula && reader.LocalName != Cell);
                value = reader.LocalName == "v" || (value && reader.LocalName != Cell);
            }

            Node(reader, writer);
        }
    }

    private static void Node(XmlReader reader, XmlWriter writer)
    {
        switch (reader.NodeType)
        {
            case XmlNodeType.Element:
                writer.WriteStartElement(reader.Prefix, reader.LocalName, reader.NamespaceURI);
                bool empty = reader.IsEmptyElement;
                Attributes(reader, writer, reader.LocalName == Cell);
                if (empty)
                {
                    writer.WriteEndElement();
                }

                break;
            case XmlNodeType.EndElement:
                writer.WriteFullEndElement();
                break;
            case XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace when reader.Depth > 0:
                writer.WriteString(reader.Value);
                break;
            default:
                break;
        }
    }

    // A cell of the type error becomes one of the type text.
    private static void Attributes(XmlReader reader, XmlWriter writer, bool cell)
    {
        while (reader.MoveToNextAttribute())
        {
            string value = cell && reader is { LocalName: "t", Value: "e" } ? "str" : reader.Value;
            writer.WriteAttributeString(reader.Prefix, reader.LocalName, reader.NamespaceURI, value);
        }

        reader.MoveToElement();
    }
}
