using System.Globalization;

namespace FeltNest.Files.Svg;

/// <summary>Reads the small languages inside SVG attributes: numbers, flags and words, with the place of every error.</summary>
/// <param name="file">File named in errors.</param>
/// <param name="place">Element and attribute named in errors.</param>
/// <param name="text">The attribute's value.</param>
internal sealed class SvgCursor(string file, string place, string text)
{
    private int at;

    /// <summary>Place of the next character that is no separator, from 0.</summary>
    public int At
    {
        get
        {
            Skip();
            return at;
        }
    }

    /// <summary>Whether only separators are left.</summary>
    public bool AtEnd => At >= text.Length;

    /// <summary>The next character, not taken.</summary>
    public char Next => AtEnd ? '\0' : text[at];

    /// <summary>Whether a number comes next.</summary>
    public bool NumberFollows => Next is '+' or '-' or '.' or (>= '0' and <= '9');

    /// <summary>An error at a place of the text.</summary>
    public InputException Fault(int position, string problem) => new(file, $"{place}, character {position + 1}", problem);

    /// <summary>Takes one character, separators before it left out.</summary>
    public char Character() => AtEnd ? throw Fault(text.Length, "the text ends too early") : text[at++];

    /// <summary>Takes a character if it is the one asked for.</summary>
    public bool Take(char wanted)
    {
        bool there = Next == wanted;
        at += there ? 1 : 0;
        return there;
    }

    /// <summary>Takes a character that has to be there.</summary>
    public void Expect(char wanted)
    {
        if (!Take(wanted))
        {
            throw Fault(At, $"{Found} where '{wanted}' is wanted");
        }
    }

    /// <summary>Takes a run of letters.</summary>
    public string Word()
    {
        int start = At;
        while (at < text.Length && char.IsAsciiLetter(text[at]))
        {
            at++;
        }

        return text[start..at];
    }

    /// <summary>Takes a flag of an arc: one digit, 0 or 1, which may stand directly before the next number.</summary>
    public bool Flag()
    {
        int start = At;
        return Character() switch
        {
            '0' => false,
            '1' => true,
            char other => throw Fault(start, $"'{other}' where a flag 0 or 1 is wanted"),
        };
    }

    /// <summary>Takes a number by the grammar of the standard: sign, digits, point, exponent; it ends where the next cannot belong to
    /// it.</summary>
    public double Number()
    {
        int start = At;
        int from = at;
        if (at < text.Length && text[at] is '+' or '-')
        {
            at++;
        }

        int digits = Digits();
        if (at < text.Length && text[at] == '.')
        {
            at++;
            digits += Digits();
        }

        if (digits == 0)
        {
            at = start;
            throw Fault(start, $"{Found} where a number is wanted");
        }

        int mark = at;
        if (at < text.Length && text[at] is 'e' or 'E')
        {
            at++;
            if (at < text.Length && text[at] is '+' or '-')
            {
                at++;
            }

            at = Digits() == 0 ? mark : at;
        }

        double value = double.Parse(text.AsSpan(from, at - from), NumberStyles.Float, CultureInfo.InvariantCulture);
        return double.IsFinite(value) ? value : throw Fault(start, $"{OneLine.Of(text[from..at])} is too large");
    }

    private string Found => AtEnd ? "the text ends" : $"'{text[at]}'";

    private int Digits()
    {
        int start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at - start;
    }

    private void Skip()
    {
        while (at < text.Length && text[at] is ' ' or '\t' or '\r' or '\n' or '\f' or ',')
        {
            at++;
        }
    }
}
