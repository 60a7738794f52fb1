using System.Globalization;
using System.Net;
using System.Text;

namespace FeltNest.Report;

/// <summary>One run as a page that needs no other file, to be handed over or printed: pictures, tables, warnings, and what is needed to do
/// it again.</summary>
internal sealed record RunReport
{
    /// <summary>The command line of the run.</summary>
    public required string Command { get; init; }

    /// <summary>Name and version of the program.</summary>
    public required string Program { get; init; }

    /// <summary>Names and contents of its pictures (SVG).</summary>
    public required IReadOnlyList<(string Name, byte[] Content)> Pictures { get; init; }

    /// <summary>Its table, as on a terminal.</summary>
    public required string Table { get; init; }

    /// <summary>Its warnings and notes.</summary>
    public required IReadOnlyList<string> Messages { get; init; }

    /// <summary>Names and texts of its input files: figures, their sources and what was assumed.</summary>
    public required IReadOnlyList<(string Name, string Text)> Inputs { get; init; }

    /// <summary>Name of the file.</summary>
    public const string FileName = "report.html";

    private const string Style =
        "body{font:16px/1.5 sans-serif;color:#22302f;background:#fff;max-width:70em;margin:2em auto;padding:0 "
            + "1em}h1{font-size:1.4em}h2{font-size:1.1em;margin-top:2em;border-bottom:1px solid #b9beb5}"
        + "pre{font:13px/1.4 monospace;white-space:pre-wrap;overflow-wrap:anywhere;background:#f6f6f0;padding:.8em}"
        + "img{max-width:100%;border:1px solid #cfd2c8;background:#fff}"
        + "figure{margin:1em 0;break-inside:avoid}figcaption{color:#56635f;font-size:.9em}.warning{color:#8a3b12}@media "
        + "print{body{margin:0;max-width:none}}";

    // Long because it writes a page from top to bottom.
    /// <summary>The page's bytes.</summary>
    public byte[] Html()
    {
        string title = Table.Split('\n', 2)[0] is { Length: > 0 } head ? head : Command;
        StringBuilder page = new();
        page.Append(
            CultureInfo.InvariantCulture,
            $"<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" "
                + $"content=\"width=device-width\"><title>{Safe(title)}</title><style>{Style}</style></head><body>\n<h1>"
                + $"{Safe(title)}</h1>\n");
        if (Messages.Count > 0)
        {
            page.Append("<h2>Warnings and notes</h2>\n<ul class=\"warning\">\n");
            foreach (string message in Messages)
            {
                page.Append(CultureInfo.InvariantCulture, $"<li>{Safe(message)}</li>\n");
            }

            page.Append("</ul>\n");
        }

        foreach ((string name, byte[] content) in Pictures)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"<figure><img alt=\"{Safe(name)}\" src=\"data:image/svg+xml;base64,{Convert.ToBase64String(content)}\"><figcaption>"
                    + $"{Safe(name)}</figcaption></figure>\n");
        }

        page.Append(
            CultureInfo.InvariantCulture,
            $"<h2>Figures</h2>\n<pre>{Safe(Table)}</pre>\n<h2>Done again by</h2>\n<pre>{Safe(Command)}</pre>\n<p>{Safe(Program)}. The "
                + $"same inputs, seed and effort give the same figures.</p>\n");
        if (Inputs.Count > 0)
        {
            page.Append("<h2>Inputs, with their sources and what was assumed</h2>\n");
        }

        foreach ((string name, string text) in Inputs)
        {
            page.Append(CultureInfo.InvariantCulture, $"<h3>{Safe(name)}</h3>\n<pre>{Safe(text)}</pre>\n");
        }

        return Encoding.UTF8.GetBytes(page.Append("</body></html>\n").ToString());
    }

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
