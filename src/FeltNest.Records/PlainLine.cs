using System.Globalization;
using System.Text;

namespace FeltNest;

/// <summary>Makes one line of any text, safe to show: what a hostile input holds cannot break the line, move the cursor or turn the writing
/// round.</summary>
internal static class PlainLine
{
    // Signs without a shape that some writing needs: soft hyphen, non-joiner, joiner.
    private static readonly int[] Harmless = [0xAD, 0x200C, 0x200D];

    /// <summary>The text with line breaks, control characters and marks of direction as blanks, and halves of characters as the sign for a
    /// lost one.</summary>
    public static string Of(string text)
    {
        if (!text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            return text;
        }

        StringBuilder line = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            line.Append(IsPlain(rune) ? rune.ToString() : " ");
        }

        return line.ToString();
    }

    private static bool IsPlain(Rune rune) => rune.Value is >= ' ' and <= '~' || Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => false,
        UnicodeCategory.Format => Array.IndexOf(Harmless, rune.Value) >= 0,
        _ => true,
    };
}
