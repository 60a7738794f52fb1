using System.Text.Json;

namespace FeltNest.Files.Json;

/// <summary>Finds texts in JSON that are no texts: halves of characters and bytes that are not UTF-8. The parser takes them and fails when
/// they are asked for.</summary>
internal static class JsonText
{
    /// <summary>Walks through a whole file.</summary>
    /// <exception cref="InputException">Names the line of a text that cannot be read.</exception>
    /// <exception cref="JsonException">The file is not JSON.</exception>
    public static void RequireSound(string path, ReadOnlySpan<byte> bytes, int mostDepth)
    {
        Utf8JsonReader reader = new(bytes, new JsonReaderOptions { MaxDepth = mostDepth });
        while (reader.Read())
        {
            if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName && !IsSound(ref reader))
            {
                int line = 1 + bytes[..(int)reader.TokenStartIndex].Count((byte)'\n');
                throw new InputException(
                    path, $"line {line}",
                    "holds a text that is not sound Unicode: save the file as UTF-8, and write \\u only for whole characters");
            }
        }
    }

    private static bool IsSound(ref Utf8JsonReader reader)
    {
        try
        {
            reader.GetString();
            return true;
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }
}
