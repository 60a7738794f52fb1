namespace FeltNest.Cost.Offers;

/// <summary>The words by which files name the unit of a price.</summary>
internal static class PriceUnits
{
    /// <summary>All words, in the order of the enumeration.</summary>
    public static IReadOnlyList<string> Words { get; } = ["m", "m2", "kg"];

    /// <summary>The word of a unit.</summary>
    public static string WordOf(PriceUnit unit) => Words[(int)unit];

    /// <summary>The unit of a word, or null when there is none.</summary>
    public static PriceUnit? Find(string word) => Words.ToList().IndexOf(word) is >= 0 and int at ? (PriceUnit)at : null;
}
