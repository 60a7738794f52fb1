using FeltNest.Layout;

namespace FeltNest.Die;

/// <summary>The different parts that one die cuts, and the letters that tell them apart on sheets and in names of files.</summary>
internal static class CutParts
{
    /// <summary>Parts that a band of a layout holds, as places in the layout's list, in its order; none for a band that is not there. Every
    /// strike cuts all of them.</summary>
    public static IReadOnlyList<int> Of(RollLayout layout, int band) => band < 0 || band >= layout.Bands.Count
        ? [] : [.. layout.Bands[band].Repeat.Panels.Select(p => p.Part).Distinct().Order()];

    /// <summary>The letter of the part that stands at a place among all that are cut: a, b ... z, aa ...; empty for a single part, which
    /// needs none.</summary>
    public static string Letter(int place, int count)
    {
        string letters = string.Empty;
        for (int left = place + 1; count > 1 && left > 0; left = (left - 1) / 26)
        {
            letters = (char)('a' + ((left - 1) % 26)) + letters;
        }

        return letters;
    }

    /// <summary>A name with the part's letter behind it, as files are named: cavity, or cavity-a.</summary>
    public static string Named(string name, string letter) => letter.Length == 0 ? name : $"{name}-{letter}";
}
