using FeltNest.Files.Csv;
using static FeltNest.Files.Families.FamilyListing;

namespace FeltNest.Files.Families;

/// <summary>Reads the list of the balls of a family (CSV).</summary>
internal static class FamilyReader
{
    /// <summary>Most balls of one list.</summary>
    public const int MostBalls = 30;

    /// <summary>The balls of a file in its order.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<FamilyEntry> Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The balls of a text in its order.</summary>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<FamilyEntry> Read(InputText text)
    {
        HashSet<string> names = [];
        return CsvTable.Read(text, FamilyListing.Listing).Each(row =>
        {
            string name = row.Text(Name);
            if (!names.Add(name))
            {
                throw row.Fault(Name, $"'{name}' stands in the list twice: every ball needs a name of its own");
            }

            if (names.Count > MostBalls)
            {
                throw row.TooMany(Name, $"is one ball too many: at most {MostBalls} make a family");
            }

            return new FamilyEntry
            {
                Name = name,
                File = text.Beside(row.Text(FamilyListing.Ball)),
                BallsPerYear = row.Number(BallsPerYear),
                GapMm = row.OptionalNumber(GapMm),
                EdgeMm = row.OptionalNumber(EdgeMm),
            };
        });
    }
}
