using System.Globalization;
using System.Net;
using System.Text;

namespace FeltNest.Report;

/// <summary>A page of parts that need no other file: every heading stays with what follows it when it is printed.</summary>
internal sealed class PageWriter : IFindings
{
    private readonly StringBuilder page = new();
    private bool isInPart;
    private bool isInLines;

    /// <summary>A page with its title.</summary>
    public PageWriter(string title, string style) => page.Append(
        CultureInfo.InvariantCulture,
        $"<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>{Safe(title)}</title><style>{style}</style></head>"
            + $"<body>\n<h1>{Safe(title)}</h1>\n");

    /// <summary>The page's bytes.</summary>
    public byte[] Bytes()
    {
        EndPart();
        page.Append("</body></html>\n");
        return Encoding.UTF8.GetBytes(page.ToString());
    }

    /// <inheritdoc/>
    public void Heading(string words)
    {
        EndPart();
        isInPart = true;
        page.Append(CultureInfo.InvariantCulture, $"<section><h2>{Safe(words)}</h2>\n");
    }

    /// <inheritdoc/>
    public void Line(string name, string value, string remark = "")
    {
        if (!isInLines)
        {
            page.Append("<table>");
            isInLines = true;
        }

        Row(false, [name, value, remark]);
    }

    /// <inheritdoc/>
    public void Note(string words) => Paragraph(words, "note");

    /// <inheritdoc/>
    public void Table(FindingTable table)
    {
        Open(table.Names);
        foreach ((_, string[] cells) in table.Rows)
        {
            Row(false, cells);
        }

        Close();
    }

    /// <summary>A table, its best row marked.</summary>
    public void Table(IReadOnlyList<string> names, IEnumerable<(bool Best, string[] Cells)> rows)
    {
        Open(names);
        foreach ((bool best, string[] cells) in rows)
        {
            Row(best, cells);
        }

        Close();
    }

    /// <summary>Words on their own.</summary>
    public void Paragraph(string words, string kind)
    {
        EndLines();
        page.Append(CultureInfo.InvariantCulture, $"<p class=\"{kind}\">{Safe(words)}</p>\n");
    }

    /// <summary>Sentences below each other.</summary>
    public void List(IEnumerable<string> sentences)
    {
        EndLines();
        page.Append("<ul>");
        foreach (string sentence in sentences)
        {
            page.Append(CultureInfo.InvariantCulture, $"<li>{Safe(sentence)}</li>\n");
        }

        page.Append("</ul>\n");
    }

    /// <summary>A picture (SVG).</summary>
    public void Picture(byte[] svg, string words) => page
        .Append(CultureInfo.InvariantCulture, $"<img alt=\"{Safe(words)}\" src=\"data:image/svg+xml;base64,")
        .Append(Convert.ToBase64String(svg))
        .Append("\">\n");

    /// <summary>Parts from here on may stand side by side.</summary>
    public void SideBySide()
    {
        EndPart();
        page.Append("<div class=\"parts\">\n");
    }

    /// <summary>Ends what stands side by side.</summary>
    public void EndSideBySide()
    {
        EndPart();
        page.Append("</div>\n");
    }

    private void Open(IReadOnlyList<string> names)
    {
        EndLines();
        page.Append("<table><tr>");
        foreach (string name in names)
        {
            page.Append(CultureInfo.InvariantCulture, $"<th>{Safe(name)}</th>");
        }

        page.Append("</tr>\n");
    }

    private void Row(bool best, string[] cells)
    {
        page.Append(best ? "<tr class=\"best\">" : "<tr>");
        foreach (string cell in cells)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td>{Safe(cell)}</td>");
        }

        page.Append("</tr>\n");
    }

    private void Close() => page.Append("</table>\n");

    private void EndLines()
    {
        if (isInLines)
        {
            Close();
            isInLines = false;
        }
    }

    private void EndPart()
    {
        EndLines();
        if (isInPart)
        {
            page.Append("</section>\n");
            isInPart = false;
        }
    }

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
