namespace FeltNest.Die.Order;

/// <summary>What pushes panels and web off the rules.</summary>
/// <param name="Material">In words.</param>
/// <param name="RoomMm">Width it needs between two rules, mm: one die maker's page names 2.4.</param>
public sealed record DieEjection(string Material, double RoomMm);
