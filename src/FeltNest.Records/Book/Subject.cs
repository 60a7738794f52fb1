namespace FeltNest.Book;

/// <summary>Something an entry is about.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Name">Its name; the number of a ticket or a plan as a text.</param>
internal readonly record struct Subject(SubjectKind Kind, string Name);
