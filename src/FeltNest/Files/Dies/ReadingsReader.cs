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
        Risen(text.Name, CsvTable.Read(text, Listing).Each(row => (Reading(row, cavities), row.Line)));

    // A die is never struck back: a later day has no fewer strikes.
    private static DieReading[] Risen(string file, IReadOnlyList<(DieReading Reading, int Line)> rows)
    {
        int most = 0;
        DieReading? before = null;
        foreach (IGrouping<string, (DieReading Reading, int Line)> day in rows.GroupBy(r => r.Reading.Date)
            .OrderBy(d => d.Key, StringComparer.Ordinal))
        {
            if (before is not null && day.FirstOrDefault(r => r.Reading.Strikes < most) is { Reading: { } low, Line: var line })
            {
                throw new InputException(
                    file, $"line {line}, {Strikes.Name}",
                    $"{low.Strikes} on {low.Date} is below the {most} of {before.Date}: strikes only rise; begin a new list when a die is "
                        + "ruled again");
            }

            before = day.MaxBy(r => r.Reading.Strikes).Reading;
            most = before.Strikes;
        }

        return [.. rows.Select(r => r.Reading)];
    }

    private static DieReading Reading(CsvRow row, int cavities) => new()
    {
        Date = InvariantText.Invariant($"{row.Day(Date):yyyy-MM-dd}"),
        Strikes = row.Whole(Strikes),
        Cavity = row.Whole(Cavity, cavities),
        Ply = row.Word(Ply),
        OffMm = row.Number(OffMm),
        WorstMm = row.Number(WorstMm),
    };
}
