namespace FeltNest.Drawing;

/// <summary>A shape that is drawn many times, in its own frame.</summary>
/// <param name="Id">Name, unlike any other on the sheet.</param>
/// <param name="Marks">Its marks, mm.</param>
internal sealed record Symbol(string Id, IReadOnlyList<Mark> Marks);
