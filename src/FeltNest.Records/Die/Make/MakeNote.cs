using FeltNest.Geometry;

namespace FeltNest.Die.Make;

/// <summary>Something about a die that a toolmaker or a setter would stumble over.</summary>
/// <param name="Text">What, with numbers, in one sentence.</param>
/// <param name="Place">Where, or null where it is no place.</param>
public sealed record MakeNote(string Text, Point2? Place);
