using System.Globalization;
using FeltNest.Files;

namespace FeltNest.Runs.Book;

/// <summary>Rejected panels by reason, as one text: <c>edge:3, hole:2</c>.</summary>
internal static class RejectsText
{
    /// <summary>The counts of a text, the reasons in the order of the alphabet.</summary>
    /// <exception cref="InputException">A part without a reason or a count, or a reason twice.</exception>
    public static IReadOnlyDictionary<string, int> Read(string text)
    {
        SortedDictionary<string, int> counts = new(StringComparer.Ordinal);
        foreach (string part in text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            int at = part.LastIndexOf(':');
            string reason = at > 0 ? part[..at].Trim() : string.Empty;
            bool counted = int.TryParse(part[(at + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out int count);
            if (reason.Length == 0 || !counted || !counts.TryAdd(reason, count))
            {
                throw new InputException(
                    $"'{OneLine.Of(part)}' is no reason with its count: write rejects as edge:3, hole:2, each reason once");
            }
        }

        return counts;
    }
}
