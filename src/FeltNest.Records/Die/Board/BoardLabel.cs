using FeltNest.Geometry;

namespace FeltNest.Die.Board;

/// <summary>Words to engrave.</summary>
public sealed record BoardLabel
{
    /// <summary>The words.</summary>
    public required string Text { get; init; }

    /// <summary>Middle of the room, mm.</summary>
    public required Point2 Middle { get; init; }

    /// <summary>Room along, mm.</summary>
    public required double WideMm { get; init; }

    /// <summary>Room across, mm.</summary>
    public required double HighMm { get; init; }
}
