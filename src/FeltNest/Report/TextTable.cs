using System.Globalization;
using System.Text;

namespace FeltNest.Report;

/// <summary>A report for the terminal, at most 80 columns wide: headings, and lines of a name, a value and a remark. Long remarks go on
/// below.</summary>
internal sealed class TextTable : IFindings
{
    private const int Columns = 80;
    private const int NameWidth = 27;
    private const int ValueWidth = 16;

    private readonly StringBuilder text = new();

    /// <summary>A heading with a line under it.</summary>
    public TextTable Heading(string words)
    {
        string shown = words.Length <= Columns ? words : words[..(Columns - 3)] + "...";
        text.Append(text.Length > 0 ? "\n" : string.Empty).Append(shown).Append('\n').Append('-', shown.Length).Append('\n');
        return this;
    }

    /// <summary>A line with a number shown to a fixed count of decimals.</summary>
    public TextTable Line(string name, double? value, string format, string unit, string remark = "") =>
        Line(
            name,
            (value is { } number && double.IsFinite(number) ? number.ToString(format, CultureInfo.InvariantCulture) : "none")
                + (unit.Length > 0 ? " " + unit : string.Empty), remark);

    /// <summary>A line with a text for a value.</summary>
    public TextTable Line(string name, string value, string remark = "")
    {
        string head = $"{name.PadRight(NameWidth)}{value.PadLeft(ValueWidth)}";
        if (remark.Length == 0)
        {
            text.Append(head.TrimEnd()).Append('\n');
            return this;
        }

        // A value that overflows its column pushes the remark to the next line.
        int indent = NameWidth + ValueWidth + 2;
        if (head.Length > indent - 2)
        {
            text.Append(head).Append('\n');
            head = string.Empty;
        }

        foreach (string piece in Wrapped(remark, Columns - indent))
        {
            text.Append(head.PadRight(indent)).Append(piece).Append('\n');
            head = string.Empty;
        }

        return this;
    }

    /// <summary>A line set as it is: its columns are kept.</summary>
    public TextTable Row(string words)
    {
        text.Append(words).Append('\n');
        return this;
    }

    /// <summary>A sentence over the full width.</summary>
    public TextTable Note(string words)
    {
        foreach (string piece in Wrapped(words, Columns))
        {
            text.Append(piece).Append('\n');
        }

        return this;
    }

    /// <inheritdoc/>
    void IFindings.Heading(string words) => Heading(words);

    /// <inheritdoc/>
    void IFindings.Line(string name, string value, string remark) => Line(name, value, remark);

    /// <inheritdoc/>
    void IFindings.Note(string words) => Note(words);

    /// <inheritdoc/>
    void IFindings.Table(FindingTable table)
    {
        Row(table.Head);
        foreach ((string line, _) in table.Rows)
        {
            Row(line);
        }
    }

    /// <inheritdoc/>
    public override string ToString() => text.ToString();

    private static IEnumerable<string> Wrapped(string words, int width)
    {
        StringBuilder line = new();
        foreach (string word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line.ToString();
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : string.Empty).Append(word);
        }

        yield return line.ToString();
    }
}
