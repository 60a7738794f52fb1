using FeltNest.Geometry;

namespace FeltNest.Die.Board;

/// <summary>Words to engrave.</summary>
/// <param name="Text">The words.</param>
/// <param name="Middle">Middle of the room, mm.</param>
/// <param name="WideMm">Room along, mm.</param>
/// <param name="HighMm">Room across, mm.</param>
public sealed record BoardLabel(string Text, Point2 Middle, double WideMm, double HighMm);
