namespace FeltNest.Drawing;

/// <summary>A drawing: marks on a sheet of paper, in mm, origin at the lower left corner, y upwards. Every writer draws the same
/// sheet.</summary>
/// <param name="Title">Title, also for readers who cannot see the picture.</param>
/// <param name="Description">What the picture shows, in a sentence or two.</param>
/// <param name="WidthMm">Width of the paper, mm.</param>
/// <param name="HeightMm">Height of the paper, mm.</param>
/// <param name="Symbols">Shapes that marks repeat.</param>
/// <param name="Marks">Marks in the order of drawing.</param>
public sealed record Sheet(
    string Title, string Description, double WidthMm, double HeightMm, IReadOnlyList<Symbol> Symbols, IReadOnlyList<Mark> Marks);
