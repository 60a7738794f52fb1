using FeltNest.Layout;

namespace FeltNest.Rolls.Plan;

/// <summary>The question: where on this roll to strike this layout.</summary>
public sealed record RollRequest
{
    /// <summary>Layout whose bands have a common repeat.</summary>
    public required RollLayout Layout { get; init; }

    /// <summary>The roll.</summary>
    public required FeltRoll Roll { get; init; }

    /// <summary>Repeats one strike cuts, 1 or more.</summary>
    public required int RepeatsPerStrike { get; init; }

    /// <summary>How far the roll can be moved to either side under the press, mm.</summary>
    public required double GuidePlayMm { get; init; }

    /// <summary>Where whole cloth begins, mm: nothing is struck before it.</summary>
    public required double FromMm { get; init; }

    /// <summary>True where the last strike may reach past the end of the roll: the press is then loaded off centre.</summary>
    public bool PastEnd { get; init; }
}
