namespace FeltNest.Files;

/// <summary>How currencies are named in files: nothing is known of them but their names.</summary>
public static class CurrencyWord
{
    /// <summary>What is allowed, in words.</summary>
    public const string Allowed = "2 to 8 letters, such as EUR";

    /// <summary>True for a sound name.</summary>
    public static bool IsSound(string word) => word.Length is >= 2 and <= 8 && word.All(char.IsAsciiLetter);
}
