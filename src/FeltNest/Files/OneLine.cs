namespace FeltNest.Files;

/// <summary>Keeps a message on one line and of bearable length, whatever text of the input it quotes.</summary>
internal static class OneLine
{
    // Longest piece of input quoted back, in characters.
    private const int Longest = 160;

    /// <summary>The text with line breaks and control characters as blanks, cut where it is too long.</summary>
    public static string Of(string text)
    {
        string flat = PlainLine.Of(text.Length <= 4 * Longest ? text : text[..(4 * Longest)]).Trim();
        if (flat.Length <= Longest)
        {
            return flat;
        }

        // A pair of characters that make one sign is not parted.
        int kept = char.IsHighSurrogate(flat[Longest - 1]) ? Longest - 1 : Longest;
        return flat[..kept] + "...";
    }
}
