using FeltNest.Geometry;

namespace FeltNest.Die.Make;

/// <summary>Something about a die that a toolmaker or a setter would stumble over.</summary>
/// <param name="Text">What, with numbers, in one sentence.</param>
/// <param name="Place">Where, or null where it is no place.</param>
/// <param name="InDie">True where the place is in the die's frame, false for the part's own.</param>
public sealed record MakeNote(string Text, Point2? Place, bool InDie);
