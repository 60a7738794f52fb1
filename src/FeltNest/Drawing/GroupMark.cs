namespace FeltNest.Drawing;

/// <summary>Marks that belong together.</summary>
/// <param name="Id">Name, unlike any other on the sheet.</param>
/// <param name="Marks">The marks.</param>
/// <param name="Clip">Rectangle outside which nothing of the group is drawn, or null.</param>
internal sealed record GroupMark(string Id, IReadOnlyList<Mark> Marks, Box? Clip = null) : Mark;
