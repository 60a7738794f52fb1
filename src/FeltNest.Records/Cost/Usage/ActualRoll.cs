using FeltNest.Cost.Offers;

namespace FeltNest.Cost.Usage;

/// <summary>What one roll really gave, as the cutting ticket brings it back. What is null was not recorded, on no roll of the
/// list.</summary>
internal sealed record ActualRoll
{
    /// <summary>Name of the roll.</summary>
    public required string Roll { get; init; }

    /// <summary>Metres drawn from it and not returned.</summary>
    public required double Metres { get; init; }

    /// <summary>Panels that passed inspection, with and without a partner.</summary>
    public required int GoodPanels { get; init; }

    /// <summary>Width as measured, mm.</summary>
    public required double? WidthMm { get; init; }

    /// <summary>Of the metres, those lost at the roll's ends and in remnants, m.</summary>
    public required double? EndsM { get; init; }

    /// <summary>Panels lost to faults of the cloth.</summary>
    public required int? FaultPanels { get; init; }

    /// <summary>Panels rejected after cutting.</summary>
    public required int? RejectedPanels { get; init; }

    /// <summary>Of the good panels, those left without a partner.</summary>
    public required int? UnpairedPanels { get; init; }

    /// <summary>Price paid.</summary>
    public required FeltPrice? Price { get; init; }

    /// <summary>Date, operator and supervisor as written, without those left blank.</summary>
    public required IReadOnlyList<string> SignedBy { get; init; }
}
