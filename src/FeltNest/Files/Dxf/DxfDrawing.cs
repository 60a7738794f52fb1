using System.Globalization;
using System.Text;
using FeltNest.Geometry;

namespace FeltNest.Files.Dxf;

/// <summary>Reads an ASCII DXF file: the unit of its header and the entities of its drawing.</summary>
/// <param name="Unit">$INSUNITS of the header, or null where it says none.</param>
/// <param name="Entities">Entities in order; vertices of old polylines are entities of their own.</param>
internal sealed record DxfDrawing(int? Unit, IReadOnlyList<DxfEntity> Entities)
{
    /// <summary>Corners of the drawing as its header states them, or null where it does not.</summary>
    public (Point2 Low, Point2 High)? Extents { get; private init; }

    // Long because it goes through the sections of a drawing once, in their order.
    /// <summary>The drawing of a file.</summary>
    /// <exception cref="InputException">Binary, not in pairs of code and value, or without entities.</exception>
    public static DxfDrawing Read(InputText text)
    {
        (string path, ReadOnlyMemory<byte> bytes) = (text.Name, text.Bytes);
        if (bytes.Span.Contains((byte)0))
        {
            throw new InputException(path, null, "is a binary file: save the drawing as ASCII DXF");
        }

        List<DxfGroup> groups = Groups(path, Encoding.Latin1.GetString(bytes.Span));
        int? unit = null;
        List<DxfEntity> entities = [];
        bool found = false;
        Dictionary<string, Point2> corners = [];
        string section = string.Empty;
        for (int i = 0; i < groups.Count; i++)
        {
            DxfGroup group = groups[i];
            bool more = i + 1 < groups.Count;
            if (group is { Code: 0, Text: "SECTION" } && more && groups[i + 1].Code == 2)
            {
                section = groups[++i].Text;
                found |= section == "ENTITIES";
            }
            else if (group is { Code: 0, Text: "ENDSEC" or "EOF" })
            {
                section = string.Empty;
            }
            else if (section == "HEADER" && group is { Code: 9, Text: "$INSUNITS" } && more)
            {
                group = groups[++i];
                unit = int.TryParse(group.Text, NumberStyles.Integer, CultureInfo.InvariantCulture, out int code)
                    ? code
                    : throw new InputException(path, $"line {group.Line}, $INSUNITS", $"'{OneLine.Of(group.Text)}' is not a whole number");
            }
            else if (section == "HEADER" && group is { Code: 9, Text: "$EXTMIN" or "$EXTMAX" } && i + 2 < groups.Count)
            {
                corners[group.Text] = new Point2(Loose(groups[i + 1].Text), Loose(groups[i + 2].Text));
            }
            else if (section == "ENTITIES" && group.Code == 0)
            {
                int end = i + 1;
                while (end < groups.Count && groups[end].Code != 0)
                {
                    end++;
                }

                entities.Add(new DxfEntity
                {
                    File = path,
                    Kind = OneLine.Of(group.Text),
                    Line = group.Line,
                    Groups = groups[(i + 1)..end],
                });
                i = end - 1;
            }
        }

        return found
            ? new DxfDrawing(unit, entities)
            {
                Extents = corners.TryGetValue("$EXTMIN", out Point2 low) && corners.TryGetValue("$EXTMAX", out Point2 high)
                    ? (low, high)
                    : null,
            }
            : throw new InputException(path, null, "has no ENTITIES section: is it a DXF drawing?");
    }

    // What is no number holds nothing: no drawing is refused for its extents.
    private static double Loose(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : double.NaN;

    private static List<DxfGroup> Groups(string path, string text)
    {
        const NumberStyles whole = NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite | NumberStyles.AllowLeadingSign;
        List<DxfGroup> groups = [];
        using StringReader lines = new(text);
        for (int number = 1; lines.ReadLine() is { } code && !(string.IsNullOrWhiteSpace(code) && lines.Peek() < 0); number += 2)
        {
            if (!int.TryParse(code, whole, CultureInfo.InvariantCulture, out int parsed))
            {
                throw new InputException(path, $"line {number}", $"'{OneLine.Of(code)}' where a DXF group code, a whole number, is wanted");
            }

            string value = lines.ReadLine() ?? throw new InputException(path, $"line {number}", "the file ends after a group code");
            groups.Add(new DxfGroup(parsed, value.Trim(), number + 1));
        }

        return groups;
    }
}
