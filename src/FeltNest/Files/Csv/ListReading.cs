namespace FeltNest.Files.Csv;

/// <summary>How the lists of one question are read, and what was noticed while they were. Without it nobody hears a note, so whatever would
/// be noted is refused.</summary>
internal sealed class ListReading
{
    private readonly List<string> notes = [];

    /// <summary>Order of days that are not written year first; null where that was not said.</summary>
    public DayOrder? Days { get; init; }

    /// <summary>Sheets of workbooks by the name of the list; under the empty name the one for every other list.</summary>
    public IReadOnlyDictionary<string, string> Sheets { get; init; } = new Dictionary<string, string>();

    /// <summary>Whether numbers that are asked about are meant.</summary>
    public bool Insisted { get; init; }

    /// <summary>What was noticed, each once, in order.</summary>
    public IReadOnlyList<string> Notes => notes;

    /// <summary>The text of a list's file, to be read this way.</summary>
    /// <exception cref="InputException">Missing, a folder, not readable, empty or too large.</exception>
    public InputText Open(string path) => InputText.OfFile(path) with { Lists = this };

    /// <summary>Name of the sheet that holds a list, or null for the first one.</summary>
    public string? SheetOf(string list) => Sheets.GetValueOrDefault(list) ?? Sheets.GetValueOrDefault(string.Empty);

    /// <summary>Notes something.</summary>
    public void Note(string note)
    {
        if (!notes.Contains(note))
        {
            notes.Add(note);
        }
    }
}
