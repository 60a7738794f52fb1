using FeltNest.Book;
using FeltNest.Files;

namespace FeltNest.Runs.Book;

/// <summary>A desk at the book: the store, and whose hand writes.</summary>
internal sealed class BookDesk(BookStore store, BookHand hand) : IDisposable
{
    /// <summary>The store.</summary>
    public BookStore Store => store;

    /// <summary>Whose hand writes.</summary>
    public BookHand Hand => hand;

    /// <inheritdoc/>
    public void Dispose() => store.Dispose();

    /// <summary>Writes one act by hand.</summary>
    public T Write<T>(Func<BookWriter, T> work) => store.Write(hand.Origin, work);

    /// <summary>The path of a file as the book keeps it: seen from the book's folder, or whole.</summary>
    public string Kept(string path)
    {
        string whole = Path.GetFullPath(path);
        return (store.Folder is { } folder ? Path.GetRelativePath(folder, whole) : whole).Replace('\\', '/');
    }

    /// <summary>What is known of something that must be there.</summary>
    /// <exception cref="InputException">It is not in the book.</exception>
    public static T Known<T>(BookWriter book, SubjectKind kind, string name)
        where T : class => book.State<T>(kind, name)
            ?? throw new InputException(
                $"{EnumWord.Of(kind)} '{OneLine.Of(name)}' is not in the book"
                    + NearestWord.Hint(name, [.. book.States<T>(kind, openOnly: false).Select(s => s.Name)]));
}
