namespace FeltNest.Drawing;

/// <summary>A drawing: marks on a sheet of paper, in mm, origin at the lower left corner, y upwards. Every writer draws the same
/// sheet.</summary>
internal sealed record Sheet
{
    /// <summary>Title, also for readers who cannot see the picture.</summary>
    public required string Title { get; init; }

    /// <summary>What the picture shows, in a sentence or two.</summary>
    public required string Description { get; init; }

    /// <summary>Width of the paper, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Height of the paper, mm.</summary>
    public required double HeightMm { get; init; }

    /// <summary>Shapes that marks repeat.</summary>
    public required IReadOnlyList<Symbol> Symbols { get; init; }

    /// <summary>Marks in the order of drawing.</summary>
    public required IReadOnlyList<Mark> Marks { get; init; }
}
