namespace FeltNest.Die.Order;

/// <summary>What pushes panels and web off the rules.</summary>
/// <param name="Material">In words.</param>
/// <param name="RoomMm">Width it needs between two rules, mm: one die maker's page names 2.4.</param>
/// <param name="ClearMm">How far its pieces stand off the faces of the rules, mm, part of that room: rubber that is pressed together grows
/// sideways (common practice, no source).</param>
public sealed record DieEjection(string Material, double RoomMm, double ClearMm);
