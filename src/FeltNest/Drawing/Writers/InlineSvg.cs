using System.Globalization;
using System.Net;
using System.Text;
using FeltNest.Drawing.Lettering;

namespace FeltNest.Drawing.Writers;

/// <summary>Writes many sheets of one kind into one web page so that each is small: text stays text, pens and letters are named once in a
/// style, and marks that all of the sheets share are written once. Text takes the room that its strokes would. Same sheets, same text.
/// </summary>
/// <remarks>For one sheet in a file of its own <see cref="SvgWriter"/> draws text in strokes, which looks the same everywhere and is some
/// twenty times as long.</remarks>
internal sealed class InlineSvg
{
    // Height of the capitals of common sans-serif letters, as a share of the font size.
    private const double Capitals = 0.78;

    // A hundredth of a millimetre is finer than a printer's dot.
    private const int Digits = 2;

    // Shorter words stand as they are: the room of so few letters differs too much from letter to letter.
    private const int LeastFitted = 6;

    private readonly Dictionary<string, string> classes = [];
    private readonly string[][] sheets;
    private readonly HashSet<string> shared;
    private readonly IReadOnlyList<Sheet> drawn;

    /// <summary>Sheets of one page.</summary>
    public InlineSvg(IReadOnlyList<Sheet> sheets)
    {
        drawn = sheets;
        this.sheets = [.. sheets.Select(sheet => Marks(sheet).ToArray())];
        shared = this.sheets.Length < 2
            ? []
            : this.sheets.Skip(1).Aggregate(this.sheets[0].ToHashSet(), (all, own) =>
            {
                all.IntersectWith(own);
                return all;
            });
    }

    /// <summary>The rules of style that its sheets need.</summary>
    public string Style => string.Concat(classes.Select(rule => $".{rule.Value}{{{rule.Key}}}"));

    /// <summary>What its sheets share, to stand in the page once, before all of them.</summary>
    public string Shared => shared.Count == 0
        ? string.Empty
        : $"<svg width=\"0\" height=\"0\" style=\"position:absolute\"><defs><g id=\"same\">"
            + $"{string.Concat(sheets[0].Where(shared.Contains))}</g></defs></svg>\n";

    /// <summary>One of the sheets.</summary>
    /// <param name="index">Its place in the list.</param>
    /// <param name="id">Its id in the page.</param>
    /// <param name="kind">Its class in the page.</param>
    public string Of(int index, string id, string kind)
    {
        Sheet sheet = drawn[index];
        string common = shared.Count == 0 ? string.Empty : "<use href=\"#same\"/>";
        return $"<svg class=\"{kind}\" id=\"{id}\" viewBox=\"0 0 {Number(sheet.WidthMm)} {Number(sheet.HeightMm)}\" role=\"img\"><title>"
            + $"{Safe(sheet.Title)}</title>{common}{string.Concat(sheets[index].Where(mark => !shared.Contains(mark)))}</svg>\n";
    }

    // Lines of one pen that follow each other, and shapes of one colour, are one path.
    private IEnumerable<string> Marks(Sheet sheet)
    {
        StringBuilder path = new();
        string style = string.Empty;
        foreach (Mark mark in sheet.Marks.SelectMany(Flat).OrderBy(mark => mark is TextMark))
        {
            if (mark is TextMark text)
            {
                yield return Text(text, sheet.HeightMm);
                continue;
            }

            PathMark lines = (PathMark)mark;
            string own = StyleOf(lines);
            if (own != style && path.Length > 0)
            {
                yield return Path(style, path);
            }

            style = own;
            path.AppendJoin(string.Empty, lines.Chains.Select(chain => SvgPath.Data(chain, sheet.HeightMm, Digits)));
        }

        if (path.Length > 0)
        {
            yield return Path(style, path);
        }
    }

    private string Path(string style, StringBuilder data)
    {
        string written = $"<path class=\"{ClassOf(style)}\" d=\"{data}\"/>";
        data.Clear();
        return written;
    }

    private string Text(TextMark text, double top)
    {
        string anchor = text.Anchor switch { TextAnchor.Middle => "middle", TextAnchor.End => "end", _ => "start" };
        string room = text.Text.Length < LeastFitted
            ? string.Empty
            : $" textLength=\"{Number(StrokeFont.Width(text.Text, text.HeightMm))}\"";
        string style = $"font-size:{Number(text.HeightMm / Capitals)}px;fill:{text.Colour.Hex};text-anchor:{anchor}";
        return $"<text class=\"{ClassOf(style)}\" x=\"{Number(text.At.X)}\" y=\"{Number(top - text.At.Y)}\"{room}>{Safe(text.Text)}"
            + "</text>";
    }

    private string ClassOf(string style)
    {
        if (!classes.TryGetValue(style, out string? name))
        {
            name = string.Create(CultureInfo.InvariantCulture, $"s{classes.Count}");
            classes.Add(style, name);
        }

        return name;
    }

    private static string StyleOf(PathMark mark)
    {
        string fill = $"fill:{mark.Fill?.Hex ?? "none"}";
        if (mark.Pen is not { } pen)
        {
            return fill;
        }

        string dashes = pen.Dashes.Length > 0 ? $";stroke-dasharray:{string.Join(' ', pen.Dashes.Select(Number))}" : string.Empty;
        return $"{fill};stroke:{pen.Colour.Hex};stroke-width:{Number(pen.WidthMm)}{dashes}";
    }

    private static IEnumerable<Mark> Flat(Mark mark) => mark switch
    {
        GroupMark { Clip: null } group => group.Marks.SelectMany(Flat),
        PathMark or TextMark { Text.Length: > 0, Angle: 0 } => [mark],
        TextMark { Text.Length: 0 } => [],
        _ => throw new InvalidOperationException("only lines, areas, and level text are written into a page"),
    };

    private static string Number(double value) => SvgPath.Number(value, Digits);

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
