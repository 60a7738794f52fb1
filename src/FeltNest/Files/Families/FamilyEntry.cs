namespace FeltNest.Files.Families;

/// <summary>One line of a list of the balls of a family.</summary>
/// <param name="Name">Name of the ball.</param>
/// <param name="File">Its ball specification or outline.</param>
/// <param name="BallsPerYear">Good balls made in a year.</param>
/// <param name="GapMm">Its own gap, mm, or null.</param>
/// <param name="EdgeMm">Its own edge trim each side, mm, or null.</param>
internal sealed record FamilyEntry(string Name, string File, double BallsPerYear, double? GapMm, double? EdgeMm);
