using System.Text;

namespace FeltNest;

/// <summary>Words of the files for the values of an enumeration: <c>HighAltitude</c> is written <c>high-altitude</c>, <c>Stage3Felt</c>
/// <c>stage-3-felt</c>.</summary>
internal static class EnumWord
{
    /// <summary>The word of a value.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum => Words<T>.OfValue.TryGetValue(value, out string? word) ? word : Spelled(value.ToString());

    /// <summary>All words, in the order of the enumeration.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(Of)];

    /// <summary>The value of a word, or null when there is none; case counts.</summary>
    public static T? Find<T>(string word)
        where T : struct, Enum => Words<T>.Values.TryGetValue(word, out T value) ? value : null;

    private static string Spelled(string name)
    {
        StringBuilder word = new();
        foreach (char c in name)
        {
            if (word.Length > 0 && (char.IsUpper(c) || char.IsDigit(c)))
            {
                word.Append('-');
            }

            word.Append(char.ToLowerInvariant(c));
        }

        return word.ToString();
    }

    // Spelled once: a book asks for the words of every entry.
    private static class Words<T>
        where T : struct, Enum
    {
        public static readonly Dictionary<T, string> OfValue =
            Enum.GetValues<T>().Distinct().ToDictionary(value => value, value => Spelled(value.ToString()));

        public static readonly Dictionary<string, T> Values = OfValue.ToDictionary(pair => pair.Value, pair => pair.Key);
    }
}
