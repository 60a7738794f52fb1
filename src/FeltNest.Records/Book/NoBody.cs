namespace FeltNest.Book;

/// <summary>The body of an entry that says all by its kind.</summary>
internal sealed record NoBody;
