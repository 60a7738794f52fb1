namespace FeltNest.Panel.Proven;

/// <summary>One value a measured outline was asked for.</summary>
internal sealed record ProvenValue
{
    /// <summary>In words.</summary>
    public required string Name { get; init; }

    /// <summary>Field of the ball file it belongs to.</summary>
    public required string Field { get; init; }

    /// <summary>Value found, in the field's unit.</summary>
    public required double Value { get; init; }

    /// <summary>Unit; empty for a plain ratio.</summary>
    public required string Unit { get; init; }

    /// <summary>How far it can be moved either way, the others following, before the outline changes by <see
    /// cref="ProvenFit.TellableMm"/> (rms): outlines that near cannot be told apart.</summary>
    public required double Spread { get; init; }

    /// <summary>The end of its range at which it stands, in words; null where it stands inside.</summary>
    public required string? AtBound { get; init; }
}
