using FeltNest.Die.Make;

namespace FeltNest.Die.Check;

/// <summary>What a die file says of the rule's body and of places where the rule of one cavity stands near to itself.</summary>
internal sealed record StatedOwnRule
{
    /// <summary>Thickness of the body, mm.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Body on the waste's side of the edge, mm.</summary>
    public required double BodyInWasteMm { get; init; }

    /// <summary>Width that ejection needs between two rules, mm.</summary>
    public required double RoomMm { get; init; }

    /// <summary>Rules no further apart than this are close, mm.</summary>
    public required double CloseMm { get; init; }

    /// <summary>The places.</summary>
    public required IReadOnlyList<NarrowPlace> Narrow { get; init; }
}
