using System.Text;
using System.Text.Json;

namespace FeltNest.Files.Json;

/// <summary>Says where and why a text is not JSON, in our own words: line, column and the field being read.</summary>
internal static class JsonFault
{
    /// <summary>The error to show for a text the parser refused.</summary>
    public static InputException Describe(string file, ReadOnlyMemory<byte> text, JsonException error)
    {
        (string path, string? twice) = Walk(text.Span);
        if (twice is not null)
        {
            return new InputException(file, twice, "is given twice", error);
        }

        long line = error.LineNumber ?? 0;
        long column = error.BytePositionInLine ?? 0;
        string place = $"line {line + 1}, column {column + 1}";
        return new InputException(
            file, path.Length == 0 ? null : path, $"is not valid JSON at {place}: {Reason(text.Span, line, column)}", error);
    }

    // Long because it is one walk over the tokens of a text.
    // Reads as far as the text is sound; comes back with the path reached and, when a field stands twice in one object, that field.
    private static (string Path, string? Twice) Walk(ReadOnlySpan<byte> text)
    {
        List<(string? Name, int Index, HashSet<string> Seen)> stack = [];
        Utf8JsonReader reader = new(text, new JsonReaderOptions { MaxDepth = 64 });
        try
        {
            while (reader.Read())
            {
                if (reader.TokenType == JsonTokenType.PropertyName && stack.Count > 0)
                {
                    string name = reader.GetString() ?? string.Empty;
                    stack[^1] = stack[^1] with { Name = name };
                    if (!stack[^1].Seen.Add(name))
                    {
                        return (PathOf(stack), PathOf(stack));
                    }
                }
                else if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
                {
                    stack.RemoveAt(stack.Count - 1);
                }
                else
                {
                    if (stack.Count > 0 && stack[^1].Name is null)
                    {
                        stack[^1] = stack[^1] with { Index = stack[^1].Index + 1 };
                    }

                    if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
                    {
                        stack.Add((null, -1, []));
                    }
                }
            }
        }
        catch (Exception stopped) when (stopped is JsonException or InvalidOperationException)
        {
            // The place is what was wanted; a text that is no text ends the walk, too.
        }

        return (PathOf(stack), null);
    }

    private static string PathOf(List<(string? Name, int Index, HashSet<string> Seen)> stack)
    {
        StringBuilder path = new();
        foreach ((string? name, int index, _) in stack)
        {
            if (name is not null)
            {
                path.Append(path.Length > 0 ? "." : string.Empty).Append(name);
            }
            else if (index >= 0)
            {
                path.Append('[').Append(index).Append(']');
            }
        }

        return OneLine.Of(path.ToString());
    }

    private static string Reason(ReadOnlySpan<byte> text, long line, long column)
    {
        int start = 0;
        for (long k = 0; k < line && start < text.Length; k++)
        {
            int end = text[start..].IndexOf((byte)'\n');
            start = end < 0 ? text.Length : start + end + 1;
        }

        int at = (int)Math.Min(text.Length, start + column);
        string rest = Encoding.UTF8.GetString(text[at..Math.Min(text.Length, at + 12)]);
        ReadOnlySpan<byte> before = text[..at].TrimEnd(" \t\r\n"u8);
        return rest switch
        {
            "" => "the text ends too early",
            ['N' or 'n', 'a', ..] or ['I' or 'i', 'n', ..] or ['-', 'I', ..] => "a number must be finite; NaN and Infinity are not allowed",
            ['}' or ']', ..] when before is [.., (byte)','] => "a comma stands before the closing bracket",
            ['/', ..] => "comments are not allowed",
            ['+', ..] => "a number must not begin with +",
            _ => $"unexpected '{OneLine.Of(rest.Split('\n')[0])}'",
        };
    }
}
