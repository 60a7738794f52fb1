using FeltNest.Cost.Offers;

namespace FeltNest.Cost.Usage;

/// <summary>What one roll really gave, as the cutting ticket brings it back. What is null was not recorded, on no roll of the
/// list.</summary>
/// <param name="Roll">Name of the roll.</param>
/// <param name="Metres">Metres drawn from it and not returned.</param>
/// <param name="GoodPanels">Panels that passed inspection, with and without a partner.</param>
/// <param name="WidthMm">Width as measured, mm.</param>
/// <param name="EndsM">Of the metres, those lost at the roll's ends and in remnants, m.</param>
/// <param name="FaultPanels">Panels lost to faults of the cloth.</param>
/// <param name="RejectedPanels">Panels rejected after cutting.</param>
/// <param name="UnpairedPanels">Of the good panels, those left without a partner.</param>
/// <param name="Price">Price paid.</param>
/// <param name="SignedBy">Date, operator and supervisor as written, without those left blank.</param>
public sealed record ActualRoll(
    string Roll, double Metres, int GoodPanels, double? WidthMm, double? EndsM, int? FaultPanels, int? RejectedPanels, int? UnpairedPanels,
    FeltPrice? Price,
    IReadOnlyList<string> SignedBy);
