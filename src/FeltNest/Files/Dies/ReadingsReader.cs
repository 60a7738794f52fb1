using System.Globalization;
using FeltNest.Die.Proof;
using FeltNest.Files.Csv;

namespace FeltNest.Files.Dies;

/// <summary>Reads the first-article readings of a die: CSV with the columns date, strikes, cavity, ply, offMm, worstMm.</summary>
public static class ReadingsReader
{
    private static readonly string[] Columns = ["date", "strikes", "cavity", "ply", "offMm", "worstMm"];
    private static readonly string[] Plies = ["single", "top", "bottom"];

    /// <summary>The readings of a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="cavities">Cavities of the die.</param>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<DieReading> Read(string path, int cavities) => [.. CsvTable.Read(path, Columns, []).Rows.Select(row =>
    {
        string date = row.Text("date");
        if (!DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
        {
            throw row.Fault("date", $"'{date}' is not a date: write 2026-03-31");
        }

        return new DieReading(
            date, (int)Whole(row, "strikes", 0, 1_000_000_000), (int)Whole(row, "cavity", 1, cavities), row.Word("ply", Plies),
            row.Number("offMm", -50, 50, "mm"), row.Number("worstMm", 0, 50, "mm"));
    })];

    private static double Whole(CsvRow row, string column, double low, double high) =>
        row.Number(column, low, high, string.Empty) is var value && value == Math.Floor(value)
        ? value : throw row.Fault(column, FormattableString.Invariant($"{value} is not a whole number"));
}
