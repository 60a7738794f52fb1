using FeltNest.Files.Fields;

namespace FeltNest.Files.Csv;

/// <summary>Finds the columns of a list by the names in its first line. Capitals, blanks, lines and brackets in a name do not count:
/// <c>Length (m)</c> is <c>lengthM</c>.</summary>
internal static class ColumnNames
{
    // Letters of a name left unfinished, or with more behind it, that still make it a slip of the other.
    private const int FewLetters = 3;

    // Anything longer is no name of a column.
    private const int Longest = 200;

    /// <summary>The known name that a written one is, or null.</summary>
    public static string? Find(IReadOnlyList<string> known, string written)
    {
        if (known.Contains(written) || written.Length > Longest)
        {
            return known.Contains(written) ? written : null;
        }

        string letters = Letters(written);
        return known.FirstOrDefault(name => name.Equals(letters, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Place of each column that a line of names holds. Names that are no column of the list are passed over with a
    /// note.</summary>
    /// <exception cref="InputException">A column twice, missing, or under a name that looks like a slip: all of them.</exception>
    public static Dictionary<string, int> Places(InputText text, Listing listing, ListLine head)
    {
        IReadOnlyList<string> known = listing.Columns.Names;
        string place = $"line {head.Number}";
        Dictionary<string, int> places = [];
        List<string> others = [];
        List<InputException> faults = [];
        foreach ((int at, string cell) in head.Cells.Index())
        {
            if (Find(known, cell) is not { } name)
            {
                others.AddRange(cell.Length > 0 ? [cell] : []);
            }
            else if (!places.TryAdd(name, at))
            {
                faults.Add(new InputException(text.Name, place, $"the column '{OneLine.Of(cell)}' stands there twice"));
            }
        }

        string[] absent = [.. known.Where(name => !places.ContainsKey(name))];
        faults.AddRange(others.Select(other => Strange(text, place, other, absent, known)).OfType<InputException>());
        faults.AddRange(listing.Required.Where(absent.Contains).Select(name => new InputException(
            text.Name, place, $"the column {name} is missing; wanted: {string.Join(", ", listing.Required)}")));
        if (faults.Count > 0)
        {
            throw faults[0].With(faults[1..]);
        }

        Passed(text, others);
        return places;
    }

    // A name that may not be passed over, or null.
    private static InputException? Strange(InputText text, string place, string other, string[] absent, IReadOnlyList<string> known)
    {
        string hint = Hint(other, absent);
        return text.Lists is null || hint.Length > 0
            ? new InputException(
                text.Name, place,
                $"the column '{OneLine.Of(other)}' is not known{hint}; known: {string.Join(", ", known)}{Way(text, hint)}")
            : null;
    }

    private static string Way(InputText text, string hint) =>
        text.Lists is not null && hint.Length > 0 ? "; a column that is meant to be passed over needs another name" : string.Empty;

    // One note for all of them.
    private static void Passed(InputText text, List<string> others)
    {
        if (others.Count > 0)
        {
            text.Lists!.Note(
                $"{text.Name}: passed over, as the list has no such column: {string.Join(", ", others.Select(name => OneLine.Of(name)))}");
        }
    }

    private static string Hint(string written, string[] absent)
    {
        if (written.Length > Longest)
        {
            return string.Empty;
        }

        string letters = Letters(written);
        string? unfinished = Array.Find(absent, name => Begins(letters, name) || Begins(name, letters));
        return unfinished is null ? NearestWord.Slip(letters, absent) : $"; did you mean '{unfinished}'?";
    }

    private static bool Begins(string start, string whole) =>
        start.Length >= FewLetters && whole.StartsWith(start, StringComparison.OrdinalIgnoreCase);

    private static string Letters(string name) => string.Concat(name.Where(char.IsLetterOrDigit));
}
