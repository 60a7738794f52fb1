using System.Text;

namespace FeltNest.Files.Csv;

/// <summary>Turns the bytes of a list into text: UTF-8, UTF-16 with its mark, else Windows-1252, which holds Latin-1.</summary>
internal static class ListEncoding
{
    private const string Wanted = "save it as CSV UTF-8";

    /// <summary>The text.</summary>
    /// <exception cref="InputException">It is no text.</exception>
    public static string TextOf(InputText text)
    {
        ReadOnlySpan<byte> bytes = text.Bytes.Span;
        if (bytes is [0xFF, 0xFE, 0, 0, ..] or [0, 0, 0xFE, 0xFF, ..])
        {
            throw new InputException(text.Name, null, $"is UTF-32 text: {Wanted}");
        }

        if (Marked(bytes) is { } marked)
        {
            return Decoded(marked, bytes[2..])
                ?? throw new InputException(text.Name, null, $"begins as UTF-16 text and is none: {Wanted}");
        }

        if (bytes.Contains((byte)0))
        {
            throw new InputException(text.Name, null, LooksWide(bytes)
                ? $"looks like UTF-16 text without its mark (FF FE or FE FF): {Wanted}"
                : $"is no text, it holds a zero byte: {Wanted}");
        }

        return Decoded(new UTF8Encoding(false, throwOnInvalidBytes: true), bytes) ?? Western(text);
    }

    private static UnicodeEncoding? Marked(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0xFF, 0xFE, ..] => new UnicodeEncoding(bigEndian: false, byteOrderMark: false, throwOnInvalidBytes: true),
        [0xFE, 0xFF, ..] => new UnicodeEncoding(bigEndian: true, byteOrderMark: false, throwOnInvalidBytes: true),
        _ => null,
    };

    private static string? Decoded(Encoding encoding, ReadOnlySpan<byte> bytes)
    {
        try
        {
            return encoding.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    // Letters of the west have a zero in every other byte there.
    private static bool LooksWide(ReadOnlySpan<byte> bytes)
    {
        int[] zeros = [0, 0];
        for (int i = 0; i < bytes.Length; i++)
        {
            zeros[i % 2] += bytes[i] == 0 ? 1 : 0;
        }

        return zeros.Max() > bytes.Length / 4 && zeros.Min() < zeros.Max() / 8;
    }

    // Nothing says that a text is Windows-1252, so that it was taken for it is told; where nobody hears that, it is refused.
    private static string Western(InputText text)
    {
        string western = CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(text.Bytes.Span);
        if (text.Lists is not { } lists || western.Any(c => char.IsControl(c) && c is not ('\t' or '\r' or '\n')))
        {
            throw new InputException(text.Name, null, $"is not UTF-8 text: {Wanted}");
        }

        lists.Note($"{text.Name}: is not UTF-8, read as Windows-1252 (Latin-1): look at the names with accents");
        return western;
    }
}
