using System.Globalization;
using FeltNest.Die.Proof;
using FeltNest.Files.Csv;
using static FeltNest.Files.Dies.ReadingsListing;

namespace FeltNest.Files.Dies;

/// <summary>Reads the first-article readings of a die: CSV with the columns date, strikes, cavity, ply, offMm, worstMm.</summary>
internal static class ReadingsReader
{
    /// <summary>The readings of a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="cavities">Cavities of the die.</param>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<DieReading> Read(string path, int cavities) => Read(InputText.OfFile(path), cavities);

    /// <summary>The readings of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="cavities">Cavities of the die.</param>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<DieReading> Read(InputText text, int cavities) =>
        [.. CsvTable.Read(text, Listing).Rows.Select(row => Reading(row, cavities))];

    private static DieReading Reading(CsvRow row, int cavities)
    {
        string date = row.Text(Date);
        return DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
            ? new DieReading
            {
                Date = date,
                Strikes = row.Whole(Strikes),
                Cavity = row.Whole(Cavity, cavities),
                Ply = row.Word(Ply),
                OffMm = row.Number(OffMm),
                WorstMm = row.Number(WorstMm),
            }
            : throw row.Fault(Date, $"'{date}' is not a date: write 2026-03-31");
    }
}
