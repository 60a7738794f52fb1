namespace FeltNest.Files;

/// <summary>Guesses which word was meant by a mistyped one.</summary>
internal static class NearestWord
{
    // Anything longer is no mistyped word of ours, and long to compare.
    private const int LongestSlip = 64;

    /// <summary>"; did you mean 'x'?" for the nearest word when it is near enough to be a slip of the keys, else nothing.</summary>
    public static string Hint(string typed, IEnumerable<string> known)
    {
        if (typed.Length > LongestSlip)
        {
            return string.Empty;
        }

        // A word left unfinished, or one slip in three letters, is still the same word.
        string? best = known.MinBy(word => (IsStart(typed, word) ? 0 : 1, Distance(typed, word)));
        bool near = best is not null && (IsStart(typed, best) || Distance(typed, best) <= Math.Max(1, best.Length / 3));
        return near ? $"; did you mean '{best}'?" : string.Empty;
    }

    /// <summary>"; did you mean 'x'?" for the word that one slip in four letters makes of what was typed, else nothing.</summary>
    public static string Slip(string typed, IEnumerable<string> known)
    {
        string? best = typed.Length > LongestSlip ? null : known.MinBy(word => Distance(typed, word));
        return best is not null && Distance(typed, best) <= Math.Max(1, Math.Min(typed.Length, best.Length) / 4)
            ? $"; did you mean '{best}'?"
            : string.Empty;
    }

    private static bool IsStart(string typed, string word) =>
        typed.Length > 2 && word.StartsWith(typed, StringComparison.OrdinalIgnoreCase);

    // Least number of letters added, dropped or changed, or of neighbours that changed places, between two words, capitals aside.
    private static int Distance(string a, string b)
    {
        a = a.ToLowerInvariant();
        b = b.ToLowerInvariant();
        int[] before = [];
        int[] above = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int[] row = new int[b.Length + 1];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int change = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(change, 1 + Math.Min(above[j], row[j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            (before, above) = (above, row);
        }

        return above[^1];
    }
}
