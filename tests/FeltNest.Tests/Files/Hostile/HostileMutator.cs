using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace FeltNest.Tests.Files.Hostile;

/// <summary>Spoils sound files byte by byte and by their structure, the same way for the same number.</summary>
internal sealed partial class HostileMutator(int number, IReadOnlyList<byte[]> sound)
{
    // Longest file made: long enough for runs of one thing, short enough to read in no time.
    private const int Longest = 200_000;

    // Stands where a text goes that no writer of JSON would write.
    private const string Placeholder = "987654321987";

    private static readonly string[] Numbers =
    [
        "0", "-0", "-1", "1e-320", "1e-9", "1e9", "1e15", "1e28", "1e29", "1e308", "1e309", "-1e308", "NaN", "Infinity", "-Infinity",
        "0x10", "1,5", "1.500,25", "2147483647", "2147483648",
        "-2147483649", "9223372036854775808", "79228162514264337593543950336", "0.1", "0.30000000000000004", "100000", "100000.1",
        "359.9999999", "360", "1e", "+1", "\u0661", "1_000", "", " ",
    ];

    private static readonly string[] Texts =
    [
        "\"\"", "\" \"", "\"\\ud800\"", "\"a\\nb\"", "\"\\u001b[31m\"", "\"\\u0085\"", "\"\\u2028\"", "\"\\u202e\"", "\"\\u0000\"",
        "\"../../x\"", "\"CON\"", "\"1,5\"", "null", "true", "[]", "{}", "[[]]", "[null]",
        "[{}]", "[1,2]", "[1e308,1e308]", "[[[[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]]]", "{\"\\ud800\":1}", "{\"a\":1,\"a\":2}",
        "\"i\\u0307\"", "\"\u0130\"",
    ];

    private static readonly string[] Pieces =
    [
        "\r\n", "\r", "\n", "\0", "\u001b[2J", "\"", "'", ",", ";", "\t", "<!DOCTYPE a [<!ENTITY b \"c\">]>", "&b;", "&#x85;", "&#x1b;",
        "<g>", "</g>", "<![CDATA[", "<script/>", "url(http://localhost/)", "A 0 0 0 0 0 0 0",
        "M 0 0 z", "C", "e", "-", ".", "  0\nLINE\n", " 42\n1e308\n", "  0\nENDSEC\n", "70\n-1\n", "\uFEFF", "{", "}", "[", "]", ":", "\\u",
        "\\ud83d", "//", "/*", "\u0131", "\ud83d\ude00",
    ];

    private readonly Random random = new(number);

    /// <summary>A spoiled file.</summary>
    public byte[] Next()
    {
        byte[] bytes = One(sound);
        for (int step = 1 + random.Next(4); step > 0; step--)
        {
            bytes = random.Next(3) switch
            {
                0 => Bytes(bytes),
                1 => Encoding.UTF8.GetBytes(Text(Encoding.UTF8.GetString(bytes))),
                _ => bytes is [(byte)'{', ..] ? Structure(bytes) : Encoding.UTF8.GetBytes(Text(Encoding.UTF8.GetString(bytes))),
            };
        }

        return bytes.Length <= Longest ? bytes : bytes[..Longest];
    }

    private byte[] Bytes(byte[] bytes)
    {
        if (bytes.Length == 0)
        {
            return [(byte)random.Next(256)];
        }

        int at = random.Next(bytes.Length);
        int end = Math.Min(bytes.Length, at + 1 + random.Next(1 << random.Next(10)));
        switch (random.Next(7))
        {
            case 0:
                byte[] turned = [.. bytes];
                turned[at] ^= (byte)(1 << random.Next(8));
                return turned;
            case 1:
                return [.. bytes[..at], (byte)random.Next(256), .. bytes[at..]];
            case 2:
                return [.. bytes[..at], .. bytes[end..]];
            case 3:
                return bytes[..at];
            case 4:
                byte[] run = bytes[at..end];
                return
                [
                    .. bytes[..at],
                    .. Enumerable.Repeat(run, Math.Min(1 + random.Next(2000), Longest / run.Length)).SelectMany(part => part),
                    .. bytes[at..],
                ];
            case 5:
                byte[] other = One(sound);
                int from = random.Next(other.Length);
                return [.. bytes[..at], .. other[from..Math.Min(other.Length, from + 1 + random.Next(400))], .. bytes[end..]];
            default:
                return [0xEF, 0xBB, 0xBF, .. bytes];
        }
    }

    private string Text(string text)
    {
        switch (random.Next(6))
        {
            case 0 or 1:
                MatchCollection numbers = Number().Matches(text);
                return numbers.Count == 0 ? text : Put(text, One(numbers), One(Numbers));
            case 2:
                MatchCollection quoted = Quoted().Matches(text);
                return quoted.Count == 0 ? text : Put(text, One(quoted), $"\"{(random.Next(2) == 0 ? One(Pieces) : One(Numbers))}\"");
            case 3:
                List<string> lines = [.. text.Split('\n')];
                int line = random.Next(lines.Count);
                int other = random.Next(lines.Count);
                string moved = lines[line];
                if (random.Next(2) == 0)
                {
                    lines.RemoveAt(line);
                }

                lines.Insert(Math.Min(other, lines.Count), moved);
                return string.Join('\n', lines);
            case 4:
                return text.ReplaceLineEndings("\r\n");
            default:
                int at = random.Next(text.Length + 1);
                return text[..at] + string.Concat(Enumerable.Repeat(One(Pieces), random.Next(4) == 0 ? random.Next(3000) : 1)) + text[at..];
        }
    }

    private byte[] Structure(byte[] bytes)
    {
        JsonNode? root;
        try
        {
            root = JsonNode.Parse(bytes);
        }
        catch (Exception error) when (error is System.Text.Json.JsonException or InvalidOperationException or ArgumentException)
        {
            return Bytes(bytes);
        }

        List<JsonNode> all = [];
        Gather(root!, all);
        if (all.Count == 0)
        {
            return Bytes(bytes);
        }

        JsonNode chosen = One(all);
        string raw = random.Next(2) == 0 ? One(Texts) : One(Numbers);
        switch (chosen.Parent)
        {
            case JsonObject holder when random.Next(4) == 0:
                holder.Remove(chosen.GetPropertyName());
                break;
            case JsonObject holder:
                holder[chosen.GetPropertyName()] = JsonNode.Parse(Placeholder);
                break;
            case JsonArray list when random.Next(2) == 0:
                for (int copies = random.Next(3) == 0 ? random.Next(300) : 1; copies > 0; copies--)
                {
                    list.Insert(random.Next(list.Count + 1), chosen.DeepClone());
                }

                break;
            case JsonArray list:
                list[chosen.GetElementIndex()] = JsonNode.Parse(Placeholder);
                break;
        }

        try
        {
            return Encoding.UTF8.GetBytes(root!.ToJsonString().Replace(Placeholder, raw, StringComparison.Ordinal));
        }
        catch (InvalidOperationException)
        {
            // It holds half a character already.
            return Bytes(bytes);
        }
    }

    // Every value below the root; of a name given twice JsonNode says so by an exception, and then nothing below it is taken.
    private static void Gather(JsonNode node, List<JsonNode> all)
    {
        IEnumerable<JsonNode?> inner = [];
        try
        {
            inner = node is JsonObject item ? [.. item.Select(field => field.Value)] : node is JsonArray list ? [.. list] : [];
        }
        catch (Exception error) when (error is ArgumentException or InvalidOperationException)
        {
            return;
        }

        foreach (JsonNode child in inner.OfType<JsonNode>())
        {
            all.Add(child);
            Gather(child, all);
        }
    }

    private static string Put(string text, Match place, string instead) =>
        text[..place.Index] + instead + text[(place.Index + place.Length)..];

    private T One<T>(IReadOnlyList<T> list) => list[random.Next(list.Count)];

    [GeneratedRegex(@"-?\d+(\.\d+)?(e-?\d+)?")]
    private static partial Regex Number();

    [GeneratedRegex("\"[^\"\n]*\"")]
    private static partial Regex Quoted();

    /// <summary>The number of the file, for messages.</summary>
    public override string ToString() => number.ToString(CultureInfo.InvariantCulture);
}
