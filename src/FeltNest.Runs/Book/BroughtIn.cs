using System.Security.Cryptography;
using FeltNest.Book;
using FeltNest.Files;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;

namespace FeltNest.Runs.Book;

/// <summary>Brings a list into the book, whole or not at all.</summary>
internal sealed class BroughtIn
{
    private readonly BookDesk desk;
    private readonly InputText text;
    private readonly bool again;

    /// <summary>A list.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="text">The list.</param>
    /// <param name="again">Whether it is meant though some of it stands in the book: the rest is brought in.</param>
    public BroughtIn(BookDesk desk, InputText text, bool again) => (this.desk, this.text, this.again) = (desk, text, again);

    /// <summary>What it lists: rolls, dies, orders.</summary>
    public required string What { get; init; }

    /// <summary>What columns it has.</summary>
    public required Listing Listing { get; init; }

    /// <summary>The column that names each of its lines.</summary>
    public required TextField NameColumn { get; init; }

    /// <summary>Writes the lines.</summary>
    /// <param name="lines">One entry a line, in their order; the subject's name once.</param>
    /// <param name="changed">The entry for a line that stands already, or null where it is not changed.</param>
    /// <exception cref="InputException">The same list, or a name of it, stands in the book already.</exception>
    public BookSaid Write(IReadOnlyList<BookDraft> lines, Func<BookDraft, object, BookDraft?>? changed = null)
    {
        string hash = Convert.ToHexStringLower(SHA256.HashData(text.Bytes.Span));
        return desk.Store.Write(desk.Hand.OriginOf(text.Name, hash), book =>
        {
            Subject list = new(SubjectKind.List, $"{What} {hash}");
            RefuseTwice(book, list);
            List<BookDraft> written = [];
            List<int> standing = [];
            for (int i = 0; i < lines.Count; i++)
            {
                BookDraft line = lines[i];
                object? there = book.Tables.State(line.Subject);
                BookDraft? draft = there is null ? line : changed?.Invoke(line, there);
                written.AddRange(draft is null ? [] : [draft]);
                standing.AddRange(there is not null && changed is null ? [i] : []);
            }

            RefuseStanding(standing);
            book.Add(BookDraft.Of(EntryKind.ListBroughtIn, list.Kind, list.Name, new ListBody { What = What, Lines = written.Count }));
            written.ForEach(draft => book.Add(draft));
            string left = standing.Count > 0 ? $"; {standing.Count} stand already and stay as they are" : string.Empty;
            return BookSaid.Of($"{written.Count} {What} brought in from {text.Name}{left}");
        });
    }

    private void RefuseTwice(BookWriter book, Subject list)
    {
        if (!again && book.State<ListState>(list.Kind, list.Name) is { } before)
        {
            throw new InputException(
                AskedFor.BroughtInAgain,
                $"{text.Name} was brought in already, as entry {before.Entry} at {before.At} by {before.By}: give this to bring in what "
                    + $"of it "
                    + "is not in the book");
        }
    }

    // Each by its line, as all other faults of a list are.
    private void RefuseStanding(List<int> standing)
    {
        if (standing.Count == 0 || again)
        {
            return;
        }

        IReadOnlyList<CsvRow> rows = CsvTable.Read(text, Listing).Rows;
        ListFaults faults = new(text.Name);
        foreach (CsvRow row in standing.TakeWhile(_ => !faults.IsFull).Select(i => rows[i]))
        {
            faults.Add(row.Line, row.Asked(
                NameColumn,
                $"'{row.Text(NameColumn)}' stands in the book already: take the line out, or bring in the rest alone on purpose",
                AskedFor.BroughtInAgain));
        }

        faults.Require();
    }
}
