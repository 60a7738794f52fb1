using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Layout;

namespace FeltNest.Runs;

/// <summary>What is to be compared: widths, or a list of offers.</summary>
internal sealed record CompareAsk
{
    /// <summary>What is laid.</summary>
    public required LaidPart Part { get; init; }

    /// <summary>The question to the layout engine; its width does not matter.</summary>
    public required LayoutRequest Lay { get; init; }

    /// <summary>Roll widths, mm, where no offers are given.</summary>
    public IReadOnlyList<double> WidthsMm { get; init; } = [];

    /// <summary>True for many widths that are laid in parallel rows from one set of tables.</summary>
    public bool Scanned { get; init; }

    /// <summary>File of the offers, or null.</summary>
    public string? OffersFile { get; init; }

    /// <summary>What was noticed while lists were read.</summary>
    public IReadOnlyList<string> ListNotes { get; init; } = [];

    /// <summary>Offers, or null.</summary>
    public IReadOnlyList<FeltOffer>? Offers { get; init; }

    /// <summary>File of costs, or null.</summary>
    public string? CostsFile { get; init; }

    /// <summary>Costs where no file is given, or null.</summary>
    public CostInputs? Costs { get; init; }

    /// <summary>Good balls that the felt is bought for, or null for those of a year in the costs file.</summary>
    public double? Balls { get; init; }

    /// <summary>File of a die's life, or null.</summary>
    public string? LifeFile { get; init; }

    /// <summary>A die that is there already, as a layout or a drawing, or null.</summary>
    public string? KeptDieFile { get; init; }

    /// <summary>Feed of a drawn die, mm, or null.</summary>
    public double? KeptFeedMm { get; init; }
}
