using System.Text.RegularExpressions;

namespace FeltNest.Files;

/// <summary>How currencies are named in files: nothing is known of them but their names.</summary>
internal static class CurrencyWord
{
    /// <summary>What it must look like, as a pattern of schemas.</summary>
    public const string Pattern = "^[A-Za-z]{2,8}$";

    /// <summary>How long it may be, in words.</summary>
    public const string Range = "2 to 8 letters";

    /// <summary>What is allowed, in words.</summary>
    public const string Allowed = Range + ", such as EUR";

    /// <summary>True for a sound name.</summary>
    public static bool IsSound(string word) =>
        Regex.Match(word, Pattern) is { Success: true } match && match.Length == word.Length;
}
