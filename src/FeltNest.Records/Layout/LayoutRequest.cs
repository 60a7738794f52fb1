using FeltNest.Layout.Limits;

namespace FeltNest.Layout;

/// <summary>One question to the layout engine.</summary>
public sealed record LayoutRequest
{
    /// <summary>The part to lay.</summary>
    public required LayoutPart Part { get; init; }

    /// <summary>Width of the roll, mm.</summary>
    public required double RollWidthMm { get; init; }

    /// <summary>Edge trims.</summary>
    public required EdgeTrims Trims { get; init; }

    /// <summary>Least distance between any two cut edges, mm; 0 is a common cut.</summary>
    public required double GapMm { get; init; }

    /// <summary>What the shop allows.</summary>
    public required LayoutRules Rules { get; init; }

    /// <summary>Counted work, 1 to 1000.</summary>
    public required int Effort { get; init; }

    /// <summary>Seed of the random part of the search.</summary>
    public required int Seed { get; init; }

    /// <summary>A second part that shares the width, or null.</summary>
    public SecondPart? Second { get; init; }

    /// <summary>All parts, the first one first.</summary>
    public IReadOnlyList<LayoutPart> Parts => Second is null ? [Part] : [Part, Second.Part];

    /// <summary>Roll width less both edge trims, mm.</summary>
    public double UsableWidthMm => RollWidthMm - Trims.TotalMm;

    /// <summary>Lower and upper side of the usable width, from the lower selvedge, mm.</summary>
    public (double Low, double High) Usable => (Trims.LowerMm, RollWidthMm - Trims.UpperMm);
}
