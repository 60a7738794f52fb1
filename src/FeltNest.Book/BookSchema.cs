namespace FeltNest.Book;

/// <summary>The tables of a book, version by version. A step is never changed once books of its version stand in shops.</summary>
internal static class BookSchema
{
    /// <summary>Version that this program writes.</summary>
    public const int Version = 2;

    /// <summary>Marks a SQLite file as a book: "FELT".</summary>
    public const int ApplicationId = 0x46454C54;

    /// <summary>Version 1: entries alone.</summary>
    public const string Entries = """
        CREATE TABLE entry (
            number BIGINT NOT NULL PRIMARY KEY,
            act BIGINT NOT NULL,
            kind TEXT NOT NULL,
            subject TEXT NOT NULL,
            name TEXT NOT NULL,
            at TEXT NOT NULL,
            by_whom TEXT NOT NULL,
            source TEXT,
            hash TEXT,
            body TEXT NOT NULL,
            corrects BIGINT,
            why TEXT);
        """;

    /// <summary>Version 2: which entries are about what, and the present figures kept beside.</summary>
    public const string Figures = """
        CREATE INDEX entry_act ON entry (act);
        CREATE INDEX entry_kind ON entry (kind, number);
        CREATE INDEX entry_corrects ON entry (corrects);
        CREATE TABLE touch (
            subject TEXT NOT NULL,
            name TEXT NOT NULL,
            entry BIGINT NOT NULL,
            PRIMARY KEY (subject, name, entry));
        CREATE INDEX touch_entry ON touch (entry);
        CREATE TABLE kept (
            subject TEXT NOT NULL,
            name TEXT NOT NULL,
            open INTEGER NOT NULL,
            rank BIGINT NOT NULL,
            state TEXT NOT NULL,
            PRIMARY KEY (subject, name));
        CREATE INDEX kept_open ON kept (subject, open, rank);
        CREATE INDEX kept_rank ON kept (subject, rank);
        """;
}
