namespace FeltNest.Die.Order;

/// <summary>What pushes panels and web off the rules.</summary>
public sealed record DieEjection
{
    /// <summary>In words.</summary>
    public required string Material { get; init; }

    /// <summary>Width it needs between two rules, mm: one die maker's page names 2.4.</summary>
    public required double RoomMm { get; init; }

    /// <summary>How far its pieces stand off the faces of the rules, mm, part of that room: rubber that is pressed together grows
    /// sideways (common practice, no source).</summary>
    public required double ClearMm { get; init; }
}
