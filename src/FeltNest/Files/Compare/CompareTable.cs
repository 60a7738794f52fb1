using FeltNest.Cost.Compare;

namespace FeltNest.Files.Compare;

/// <summary>Writes the rows of a comparison as CSV.</summary>
internal static class CompareTable
{
    /// <summary>The file's bytes: a line of names, then one line a row in the order given.</summary>
    public static byte[] Csv(Comparison comparison) => CompareListing.Columns.Csv(comparison.Rows);
}
